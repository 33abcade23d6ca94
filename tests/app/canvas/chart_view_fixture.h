#pragma once

#include <gtest/gtest.h>

#include <QImage>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <utility>

#include "app/canvas/chart_view.h"
#include "app/canvas/foot_layout.h"
#include "tests/support/charts.h"

namespace lacewright::app {

// A chart on screen, driven with real events.
class ChartViewTest : public ::testing::Test {
 protected:
    ChartViewTest() : view_(document_), chartView_(document_, view_) {
        chartView_.resize(900, 640);
        view_.zoomTo(20);
    }
    void show(Chart chart) {
        document_.replaceWith(std::move(chart), {});
        chartView_.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&chartView_));
        chartView_.setFocus();
        settle();
    }
    // Lets all repaints that are asked for happen.
    void settle() { QCoreApplication::processEvents(); }

    QPoint at(Cell cell) const { return chartView_.cellRect(cell).center(); }
    void press(Cell cell, Qt::KeyboardModifiers modifiers = {}) {
        QTest::mousePress(chartView_.viewport(), Qt::LeftButton, modifiers, at(cell));
    }
    void moveTo(QPoint point, Qt::KeyboardModifiers modifiers = {}) {
        QMouseEvent move(QEvent::MouseMove, point, chartView_.viewport()->mapToGlobal(point),
                         Qt::NoButton, Qt::LeftButton, modifiers);
        QCoreApplication::sendEvent(chartView_.viewport(), &move);
    }
    void release(QPoint point) {
        QTest::mouseRelease(chartView_.viewport(), Qt::LeftButton, {}, point);
    }
    void drag(Cell from, Cell to, Qt::KeyboardModifiers modifiers = {}) {
        press(from, modifiers);
        moveTo(at(to), modifiers);
        release(at(to));
    }
    void dragPoint(QPoint from, QPoint to) {
        QTest::mousePress(chartView_.viewport(), Qt::LeftButton, {}, from);
        moveTo(to);
        release(to);
    }
    void type(const char* keys) { QTest::keyClicks(&chartView_, QString::fromLatin1(keys)); }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&chartView_, key, modifiers);
    }

    std::string stitchAt(int row, int column) const {
        const StitchIndex stitch = document_.chart().row(row).at(column);
        return stitch == kCovered ? "" : (*document_.chart().stitches)[stitch].id;
    }
    // A colour on screen, `right` and `down` device-independent pixels from a cell's corner.
    QColor colourIn(Cell cell, int right, int down) {
        const QImage image = chartView_.viewport()->grab().toImage();
        return image.pixelColor(chartView_.cellRect(cell).topLeft() + QPoint(right, down));
    }
    QPoint markOf(int size, Edge edge) const {
        const ViewScene scene = chartView_.scene();
        const SpanOfSize span =
            spanOf(scene, scene.chart.sizes[static_cast<std::size_t>(size)].reach);
        return {edge == Edge::Start ? span.start : span.end,
                footLayout(scene).lane(size).center().y()};
    }

    Document document_;
    ViewState view_;
    ChartView chartView_;
};

}  // namespace lacewright::app
