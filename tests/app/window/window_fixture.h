#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "app/canvas/chart_view.h"
#include "app/window/main_window.h"
#include "tests/app/window/scripted_prompts.h"

namespace lacewright::app {

// A window on a chart of 8 x 6 plain knit stitches, shown and ready for keys, with settings, files
// and unsaved work in a folder of the test.
class WindowTest : public testing::Test {
 protected:
    void SetUp() override {
        QSettings().clear();
        window_ = std::make_unique<MainWindow>(prompts_, folder_.filePath("unsaved"));
        window_->showChart(blankChart(8, 6), {});
        window_->resize(1100, 700);
        window_->show();
        window_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        chartView().setFocus();
    }

    QString fileIn(const char* name) const { return folder_.filePath(QString::fromLatin1(name)); }
    Document& document() { return window_->document(); }
    ViewState& view() { return window_->view(); }
    const Chart& chart() { return document().chart(); }
    QAction& action(CommandId id) { return window_->actions()[id]; }
    void trigger(CommandId id) {
        ASSERT_TRUE(action(id).isEnabled()) << action(id).objectName().toStdString();
        action(id).trigger();
    }
    void key(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(&chartView(), static_cast<Qt::Key>(key), modifiers);
    }
    ChartView& chartView() { return find<ChartView>("chart"); }
    template <class Widget>
    Widget& find(const char* name) {
        auto* widget = window_->findChild<Widget*>(QString::fromLatin1(name));
        if (!widget) throw std::runtime_error(std::string("no widget ") + name);
        return *widget;
    }
    std::string stitchAt(int row, int column) {
        return (*chart().stitches)[chart().row(row).at(column)].id;
    }
    void draw(int row, int column, const char* stitch) {
        const auto index = chart().stitches->find(stitch);
        ASSERT_TRUE(index.has_value());
        ASSERT_TRUE(document().apply("Draw", drawStitch(chart(), row, column, *index)));
    }

    QTemporaryDir folder_;
    ScriptedPrompts prompts_;
    std::unique_ptr<MainWindow> window_;
};

}  // namespace lacewright::app
