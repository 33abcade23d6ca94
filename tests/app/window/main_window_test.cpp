#include "app/window/main_window.h"

#include <QComboBox>
#include <QDockWidget>
#include <QDropEvent>
#include <QLabel>
#include <QMimeData>
#include <QScreen>
#include <QSlider>
#include <QToolButton>

#include "app/window/file_controller.h"
#include "app/window/hint_strip.h"
#include "app/window/starters.h"
#include "core/check/check.h"
#include "core/file/chart_file.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

TEST_F(WindowTest, SaysWhereTheKeyboardIs) {
    draw(0, 3, "yo");
    view().moveCursor({0, 3});
    EXPECT_EQ(find<QLabel>("statusCell").text(),
              "Row 1, right side  ·  column 3  ·  yarn over (takes 0, makes 1)");
    EXPECT_EQ(find<QLabel>("statusCount").text(), "In all, the row takes 7, makes 8");
}

TEST_F(WindowTest, ZoomsWithSliderAndKeys) {
    view().zoomTo(20);
    EXPECT_EQ(find<QSlider>("zoomSlider").value(), 20);
    find<QSlider>("zoomSlider").setValue(30);
    EXPECT_EQ(view().cellSize(), 30);
    trigger(CommandId::ZoomIn);
    EXPECT_GT(view().cellSize(), 30);
    trigger(CommandId::ZoomUsual);
    EXPECT_EQ(view().cellSize(), 24);
    view().zoomTo(ViewState::kSmallestCell);
    trigger(CommandId::ZoomIn);
    EXPECT_GT(view().cellSize(), ViewState::kSmallestCell);
}

TEST_F(WindowTest, ChoosesStitchesByNumber) {
    draw(0, 1, "yo");
    draw(0, 2, "yo");
    draw(0, 3, "ssk");
    QTest::qWait(1);  // the list is made anew when the edits are over
    key(Qt::Key_2);
    EXPECT_EQ(view().stitch(), "yo");
    key(Qt::Key_3);
    EXPECT_EQ(view().stitch(), "ssk");
    key(Qt::Key_1);
    EXPECT_EQ(view().stitch(), "k");
}

TEST_F(WindowTest, FollowsTheSizeChosenInTheToolbar) {
    Chart chart = *chartOf(firstStarter());
    window_->showChart(chart, {});
    auto& chooser = find<QComboBox>("sizeChooser");
    ASSERT_EQ(chooser.count(), 4);
    chooser.setCurrentIndex(2);
    EXPECT_EQ(view().size(), "Medium");
    view().chooseSize({});
    EXPECT_EQ(chooser.currentIndex(), 0);
}

TEST_F(WindowTest, SwitchesBetweenStartPageAndChart) {
    window_->showStartPage(true);
    EXPECT_FALSE(find<QDockWidget>("checksDock").isVisible());
    auto& starter = find<QAbstractButton>("starter-arrow-sock");
    EXPECT_TRUE(starter.isVisible());
    QTest::mouseClick(&starter, Qt::LeftButton);
    EXPECT_FALSE(window_->showsStartPage());
    EXPECT_EQ(chart().worked, Worked::InTheRound);
    EXPECT_TRUE(find<QDockWidget>("checksDock").isVisible());
}

TEST_F(WindowTest, OpensFilesThatAreDroppedOnIt) {
    ASSERT_TRUE(saveChart(blankChart(5, 4), fileIn("small.lacewright").toStdString()));
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(fileIn("small.lacewright"))});
    QDragEnterEvent enter(QPoint(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(window_.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(window_.get(), &drop);
    EXPECT_EQ(chart().width, 5);
}

TEST_F(WindowTest, RemembersItsSizeAndPanels) {
    window_->resize(1000, 640);
    find<QDockWidget>("stitchesDock").hide();
    EXPECT_TRUE(window_->close());
    MainWindow again(prompts_, fileIn("unsaved"));
    again.show();
    EXPECT_EQ(again.size(), QSize(1000, 640));
    EXPECT_TRUE(again.findChild<QDockWidget*>("stitchesDock")->isHidden());
}

TEST_F(WindowTest, FitsTheScreenWhenFirstOpened) {
    QSettings().clear();
    const MainWindow fresh(prompts_, folder_.filePath("others"));
    const QSize room = fresh.screen()->availableSize();
    EXPECT_LT(fresh.height(), room.height());
    EXPECT_LT(fresh.width(), room.width());
    EXPECT_GT(fresh.height(), 600);
}

TEST_F(WindowTest, IsUsableInASmallWindow) {
    window_->resize(900, 600);
    QTest::qWait(1);
    EXPECT_EQ(window_->size(), QSize(900, 600));
    EXPECT_GT(chartView().width(), 250);
}

TEST_F(WindowTest, PutsTheHintAwayForGood) {
    auto& hint = find<HintStrip>("hintStrip");
    EXPECT_TRUE(hint.isVisible());
    QTest::mouseClick(&find<QToolButton>("closeHint"), Qt::LeftButton);
    EXPECT_FALSE(hint.isVisible());
    EXPECT_FALSE(HintStrip::isWanted());
}

TEST_F(WindowTest, NamesEveryPlaceTheKeyboardCanReach) {
    for (const QWidget* widget : window_->findChildren<QWidget*>()) {
        const bool field = widget->inherits("QLineEdit") || widget->inherits("QSlider") ||
                           widget->inherits("QComboBox") || widget->inherits("QAbstractItemView");
        if (!field || !(widget->focusPolicy() & Qt::TabFocus) || !widget->isVisible()) continue;
        EXPECT_FALSE(widget->accessibleName().isEmpty())
            << widget->objectName().toStdString() << " " << widget->metaObject()->className();
    }
    EXPECT_FALSE(find<QSlider>("zoomSlider").accessibleName().isEmpty());
}

TEST(Starters, AreProvenSaveTheOneWithASlip) {
    int faulty = 0;
    for (const Starter& starter : starters()) {
        const Result<Chart> chart = chartOf(starter);
        ASSERT_TRUE(chart.has_value()) << starter.file;
        const bool slip = QString(starter.file).endsWith("slip");
        EXPECT_EQ(check(*chart).hasFault(), slip) << starter.file;
        faulty += slip ? 1 : 0;
    }
    EXPECT_EQ(faulty, 1);
    EXPECT_EQ(starters().size(), 4U);
}

}  // namespace
}  // namespace lacewright::app
