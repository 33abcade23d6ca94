#include <QAccessible>

#include "app/canvas/cell_description.h"
#include "tests/app/canvas/chart_view_fixture.h"

namespace lacewright::app {
namespace {

using lacewright::test::chartOf;

TEST_F(ChartViewTest, DrawsTheChosenStitchWhereItIsClicked) {
    show(blankChart(8, 6));
    view_.chooseStitch(QStringLiteral("k2tog"));
    QTest::mouseClick(chartView_.viewport(), Qt::LeftButton, {}, at({2, 3}));
    EXPECT_EQ(stitchAt(2, 3), "k2tog");
    EXPECT_EQ(view_.cursor(), (Cell{2, 3}));
}

TEST_F(ChartViewTest, DrawsAStrokeWithoutGapsAsOneUndoStep) {
    show(blankChart(12, 6));
    drag({1, 2}, {4, 9});
    EXPECT_EQ(stitchAt(1, 2), "yo");
    EXPECT_EQ(stitchAt(4, 9), "yo");
    int drawn = 0;
    for (int column = 1; column <= 12; ++column) {
        for (int row = 0; row < 6; ++row) drawn += stitchAt(row, column) == "yo" ? 1 : 0;
    }
    EXPECT_EQ(drawn, 8);
    EXPECT_EQ(document_.undoStack().count(), 1);
    document_.undoStack().undo();
    EXPECT_EQ(document_.chart(), blankChart(12, 6));
}

TEST_F(ChartViewTest, KeepsAStrokeStraightWithShift) {
    show(blankChart(12, 6));
    drag({1, 2}, {2, 9}, Qt::ShiftModifier);
    for (int column = 2; column <= 9; ++column) EXPECT_EQ(stitchAt(1, column), "yo") << column;
    EXPECT_EQ(stitchAt(2, 9), "k");
}

TEST_F(ChartViewTest, TakesAStrokeBackWithEscape) {
    show(blankChart(12, 6));
    press({1, 2});
    moveTo(at({1, 8}));
    EXPECT_EQ(stitchAt(1, 6), "yo");
    key(Qt::Key_Escape);
    release(at({1, 8}));
    EXPECT_EQ(document_.chart(), blankChart(12, 6));
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(ChartViewTest, DrawsWideStitchesOnceUnderTheStroke) {
    show(blankChart(8, 2));
    view_.chooseStitch(QStringLiteral("c22l"));
    drag({0, 1}, {0, 4});
    EXPECT_EQ(stitchAt(0, 1), "c22l");
    EXPECT_EQ(stitchAt(0, 5), "k");
    QTest::mouseClick(chartView_.viewport(), Qt::LeftButton, {}, at({1, 8}));
    EXPECT_EQ(stitchAt(1, 5), "c22l") << "moved inside the chart";
}

TEST_F(ChartViewTest, PicksTheStitchUnderTheRightButton) {
    show(chartOf({"k k s2kp k"}));
    QTest::mouseClick(chartView_.viewport(), Qt::RightButton, {}, at({0, 2}));
    EXPECT_EQ(view_.stitch(), QStringLiteral("s2kp"));
    QTest::mouseClick(chartView_.viewport(), Qt::LeftButton, Qt::AltModifier, at({0, 1}));
    EXPECT_EQ(view_.stitch(), QStringLiteral("k"));
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(ChartViewTest, SelectsByDraggingWithTheToolOrWithControl) {
    show(blankChart(12, 6));
    drag({1, 2}, {3, 7}, Qt::ControlModifier);
    EXPECT_EQ(view_.selection(), (CellArea{1, 3, 2, 7}));
    QSignalSpy changes(&chartView_, &ChartView::toolChanged);
    chartView_.setTool(ChartView::Tool::Select);
    EXPECT_EQ(changes.count(), 1);
    drag({4, 9}, {2, 5});
    EXPECT_EQ(view_.selection(), (CellArea{2, 4, 5, 9}));
    EXPECT_EQ(document_.undoStack().count(), 0);
    key(Qt::Key_Escape);
    EXPECT_FALSE(view_.hasSelection());
}

TEST_F(ChartViewTest, SelectsARowOrAColumnByItsNumber) {
    show(blankChart(12, 6));
    const ViewScene scene = chartView_.scene();
    const QPoint beside(scene.layout.right.center().x(), at({3, 1}).y());
    QTest::mouseClick(chartView_.viewport(), Qt::LeftButton, {}, beside);
    EXPECT_EQ(view_.selection(), (CellArea{3, 3, 1, 12}));
    const QPoint below(at({0, 5}).x(), footLayout(scene).numbers.center().y());
    QTest::mouseClick(chartView_.viewport(), Qt::LeftButton, {}, below);
    EXPECT_EQ(view_.selection(), (CellArea{0, 5, 5, 5}));
}

TEST_F(ChartViewTest, DragsTheEdgesOfARepeatWithTheSelectTool) {
    Chart chart = blankChart(12, 8);
    lacewright::test::withRepeat(chart, "A", 3, 8);
    show(chart);
    chartView_.setTool(ChartView::Tool::Select);
    const QRect cell = chartView_.cellRect({4, 8});
    const QPoint edge(cell.left(), cell.center().y());
    dragPoint(edge, edge - QPoint(2 * 20, 0));
    EXPECT_EQ(document_.chart().repeats[0].left, 10);
    EXPECT_EQ(document_.undoStack().count(), 1);
    const QRect top = chartView_.cellRect({7, 5});
    dragPoint(QPoint(top.center().x(), top.top()), QPoint(top.center().x(), top.top() + 3 * 20));
    EXPECT_EQ(document_.chart().repeats[0].lastRow, 4);
}

TEST_F(ChartViewTest, LeavesRepeatsAloneWithTheDrawTool) {
    Chart chart = blankChart(12, 8);
    lacewright::test::withRepeat(chart, "A", 3, 8);
    show(chart);
    const QRect cell = chartView_.cellRect({4, 8});
    QTest::mouseClick(chartView_.viewport(), Qt::LeftButton, {},
                      QPoint(cell.left() + 1, cell.center().y()));
    EXPECT_EQ(stitchAt(4, 8), "yo");
    EXPECT_EQ(document_.chart().repeats[0].left, 8);
}

TEST_F(ChartViewTest, DragsTheMarksOfASizeWithAPreview) {
    Chart chart = blankChart(20, 6);
    lacewright::test::withSize(chart, "Small", 3, 15, 1);
    show(chart);
    const QPoint mark = markOf(0, Edge::End);
    QTest::mousePress(chartView_.viewport(), Qt::LeftButton, {}, mark);
    moveTo(mark + QPoint(3 * 20, 0));
    EXPECT_EQ(chartView_.shownChart().sizes[0].reach, (Reach{3, 12}));
    EXPECT_EQ(document_.chart().sizes[0].reach, (Reach{3, 15})) << "only shown so far";
    release(mark + QPoint(3 * 20, 0));
    EXPECT_EQ(document_.chart().sizes[0].reach, (Reach{3, 12}));
    EXPECT_EQ(document_.undoStack().count(), 1);
}

// Pairs stand in columns 4 and 5, 8 and 9: lines 4 and 8 part them.
Chart pairedChart() {
    Chart chart = blankChart(12, 4);
    const auto put = [&chart](int column, const char* stitch) {
        chart = *drawStitch(chart, 1, column, *chart.stitches->find(stitch));
    };
    put(4, "yo");
    put(5, "k2tog");
    put(8, "ssk");
    put(9, "yo");
    Size size;
    size.name = "M";
    size.reach = {2, 11};
    return *addSize(chart, size);
}

TEST_F(ChartViewTest, SnapsTheMarksOfASizeToWhereNothingIsParted) {
    show(pairedChart());
    const QPoint mark = markOf(0, Edge::Start);
    dragPoint(mark, mark - QPoint(3 * 20, 0));
    EXPECT_EQ(document_.chart().sizes[0].reach.start, 4) << "line 4 would part, 3 is the nearest";
    const QPoint now = markOf(0, Edge::Start);
    QTest::mousePress(chartView_.viewport(), Qt::LeftButton, {}, now);
    moveTo(now - QPoint(20, 0), Qt::ControlModifier);
    release(now - QPoint(20, 0));
    EXPECT_EQ(document_.chart().sizes[0].reach.start, 5) << "with Ctrl any column";
    const int steps = document_.undoStack().count();
    const QPoint unclean = markOf(0, Edge::Start);
    QTest::mouseClick(chartView_.viewport(), Qt::LeftButton, {}, unclean);
    EXPECT_EQ(document_.undoStack().count(), steps) << "a click alone moves nothing";
}

TEST_F(ChartViewTest, DragsTheEdgesOfTheChosenSizeOnTheGrid) {
    show(pairedChart());
    chartView_.setTool(ChartView::Tool::Select);
    const QRect cell = chartView_.cellRect({2, 11});
    const QPoint edge(cell.left(), cell.center().y());
    dragPoint(edge, edge + QPoint(3 * 20, 0));
    EXPECT_EQ(document_.chart().sizes[0].reach.end, 11) << "no size is chosen";
    view_.chooseSize("M");
    dragPoint(edge, edge + QPoint(3 * 20, 0));
    EXPECT_EQ(document_.chart().sizes[0].reach, (Reach{2, 7}));
    EXPECT_EQ(document_.undoStack().count(), 1);
}

TEST_F(ChartViewTest, DragsTheEdgeOfARowsOwnReachOnTheGrid) {
    Chart chart = pairedChart();
    Size size = chart.sizes[0];
    size.changes = {{2, 3, {1, 12}, {}}};
    show(*changeSize(chart, "M", size));
    chartView_.setTool(ChartView::Tool::Select);
    view_.chooseSize("M");
    const QRect cell = chartView_.cellRect({3, 12});
    const QPoint edge(cell.left(), cell.center().y());
    dragPoint(edge, edge + QPoint(2 * 20, 0));
    EXPECT_EQ(document_.chart().sizes[0].reach, (Reach{2, 11}));
    EXPECT_EQ(document_.chart().sizes[0].changes[0].reach, (Reach{1, 10}));
}

TEST_F(ChartViewTest, TellsWhichPointIsDoubleClicked) {
    show(pairedChart());
    const ViewScene scene = chartView_.scene();
    QSignalSpy chosen(&chartView_, &ChartView::pointChosen);
    const QPoint point(chartView_.cellRect({0, 2}).center().x(),
                       footLayout(scene).points.center().y());
    QTest::mouseDClick(chartView_.viewport(), Qt::LeftButton, {}, point);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QStringLiteral("A"));
}

TEST_F(ChartViewTest, GivesUpADragWithEscape) {
    Chart chart = blankChart(20, 6);
    lacewright::test::withSize(chart, "Small", 3, 15, 1);
    show(chart);
    const QPoint mark = markOf(0, Edge::Start);
    QTest::mousePress(chartView_.viewport(), Qt::LeftButton, {}, mark);
    moveTo(mark - QPoint(4 * 20, 0));
    EXPECT_EQ(chartView_.shownChart().sizes[0].reach, (Reach{7, 15}));
    key(Qt::Key_Escape);
    EXPECT_EQ(chartView_.shownChart().sizes[0].reach, (Reach{3, 15}));
    release(mark);
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(ChartViewTest, ChoosesASizeByDoubleClickOnItsLane) {
    Chart chart = blankChart(20, 6);
    lacewright::test::withSize(chart, "Small", 3, 15, 1);
    lacewright::test::withSize(chart, "Large", 1, 20, 1);
    show(chart);
    const QPoint lane = (markOf(1, Edge::Start) + markOf(1, Edge::End)) / 2;
    QTest::mouseDClick(chartView_.viewport(), Qt::LeftButton, {}, lane);
    EXPECT_EQ(view_.size(), QStringLiteral("Large"));
    QTest::mouseDClick(chartView_.viewport(), Qt::LeftButton, {}, lane);
    EXPECT_TRUE(view_.size().isEmpty());
}

TEST_F(ChartViewTest, ZoomsAboutThePointer) {
    show(blankChart(200, 150));
    const QPoint pointer = chartView_.scene().layout.grid.center();
    const auto before = chartView_.cellAt(pointer);
    ASSERT_TRUE(before);
    QWheelEvent wheel(pointer, chartView_.viewport()->mapToGlobal(pointer), {}, QPoint(0, 120),
                      Qt::NoButton, Qt::ControlModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(chartView_.viewport(), &wheel);
    EXPECT_GT(view_.cellSize(), 20);
    EXPECT_EQ(chartView_.cellAt(pointer), before);
}

TEST_F(ChartViewTest, FitsTheWholeChartIntoTheView) {
    show(blankChart(60, 80));
    chartView_.zoomToFit();
    const ViewScene scene = chartView_.scene();
    EXPECT_EQ(scene.layout.scrollRange, QSize(0, 0));
    view_.zoomTo(view_.cellSize() + 1);
    EXPECT_NE(chartView_.scene().layout.scrollRange, QSize(0, 0));
}

TEST_F(ChartViewTest, MovesTheCursorTheWayTheArrowsPoint) {
    show(blankChart(12, 8));
    view_.moveCursor({3, 5});
    key(Qt::Key_Left);
    EXPECT_EQ(view_.cursor(), (Cell{3, 6}));
    key(Qt::Key_Up);
    EXPECT_EQ(view_.cursor(), (Cell{4, 6}));
    key(Qt::Key_Right, Qt::ShiftModifier);
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(view_.selection(), (CellArea{3, 4, 5, 6}));
    key(Qt::Key_Home);
    EXPECT_EQ(view_.cursor(), (Cell{3, 12}));
    key(Qt::Key_End, Qt::ControlModifier);
    EXPECT_EQ(view_.cursor(), (Cell{0, 1}));
}

TEST_F(ChartViewTest, KeepsTheCursorInSight) {
    show(blankChart(200, 150));
    view_.moveCursor({0, 1});
    for (int i = 0; i < 5; ++i) key(Qt::Key_PageUp);
    const QRect grid = chartView_.scene().layout.grid;
    EXPECT_TRUE(grid.contains(chartView_.cellRect(view_.cursor())));
    view_.reveal({140, 190});
    EXPECT_TRUE(grid.contains(chartView_.cellRect({140, 190})));
}

// A whole chart from an empty one without the mouse: right-side rows typed leftwards, wrong-side
// rows rightwards, one row after the other.
TEST_F(ChartViewTest, LetsAWholeChartBeTypedInTheOrderOfWork) {
    show(blankChart(5, 3));
    view_.moveCursor({0, 1});
    type("ko^ok");
    type("pkkkp");
    type("/okok");
    const Chart typed = chartOf({"k yo s2kp yo k", "p k k k p", "k yo k yo k2tog"});
    EXPECT_EQ(document_.chart().rows, typed.rows);
}

TEST_F(ChartViewTest, DrawsTheChosenStitchWithSpaceAndGoesOn) {
    show(blankChart(6, 2));
    view_.chooseStitch(QStringLiteral("c22l"));
    view_.moveCursor({0, 1});
    key(Qt::Key_Space);
    EXPECT_EQ(stitchAt(0, 1), "c22l");
    EXPECT_EQ(view_.cursor(), (Cell{0, 5}));
    view_.moveCursor({1, 6});
    key(Qt::Key_Return);
    EXPECT_EQ(stitchAt(1, 3), "c22l");
    EXPECT_EQ(view_.cursor(), (Cell{1, 2}));
}

TEST_F(ChartViewTest, FillsTheSelectionAndClearsIt) {
    show(blankChart(6, 4));
    view_.select({1, 2, 2, 4});
    type("p");
    for (int row : {1, 2}) {
        for (int column : {2, 3, 4}) EXPECT_EQ(stitchAt(row, column), "p");
    }
    EXPECT_EQ(stitchAt(1, 5), "k");
    key(Qt::Key_Delete, Qt::ShiftModifier);
    EXPECT_EQ(stitchAt(2, 3), "no-stitch");
    key(Qt::Key_Delete);
    EXPECT_EQ(document_.chart(), blankChart(6, 4));
    EXPECT_EQ(document_.undoStack().count(), 3);
}

TEST_F(ChartViewTest, TakesTheLastStitchBackWithBackspace) {
    show(blankChart(4, 2));
    view_.moveCursor({0, 4});
    type("o");
    EXPECT_EQ(view_.cursor(), (Cell{1, 4}));
    key(Qt::Key_Backspace);
    EXPECT_EQ(view_.cursor(), (Cell{0, 4}));
    EXPECT_EQ(stitchAt(0, 4), "k");
}

TEST_F(ChartViewTest, TellsTheCellUnderThePointer) {
    show(blankChart(8, 6));
    QSignalSpy hovered(&chartView_, &ChartView::cellHovered);
    QSignalSpy left(&chartView_, &ChartView::hoverLeft);
    QTest::mouseMove(chartView_.viewport(), at({2, 3}));
    QTest::mouseMove(chartView_.viewport(), at({2, 4}));
    ASSERT_GE(hovered.count(), 1);
    EXPECT_EQ(hovered.last().front().value<Cell>(), (Cell{2, 4}));
    QTest::mouseMove(chartView_.viewport(), QPoint(2, 2));
    EXPECT_EQ(left.count(), 1);
}

TEST_F(ChartViewTest, DescribesACellByPlaceStitchAndSide) {
    show(chartOf({"k yo k2tog k", "k*4"}));
    const Report& report = document_.report();
    const QString text = describeCell(document_.chart(), report, {0, 2});
    EXPECT_TRUE(text.startsWith(QStringLiteral("Row 1, column 2: knit 2 together")));
    EXPECT_TRUE(text.contains(QStringLiteral("Takes 2, makes 1")));
    EXPECT_TRUE(text.contains(QStringLiteral("Right side: k2tog")));
    EXPECT_TRUE(
        describeCell(document_.chart(), report, {1, 1}).contains(QStringLiteral("Wrong side: p")));
}

TEST_F(ChartViewTest, IsATableToAssistiveSoftware) {
    show(chartOf({"k yo k2tog k", "k k k ssk"}));
    view_.moveCursor({0, 3});
    QAccessibleInterface* table = QAccessible::queryAccessibleInterface(&chartView_);
    ASSERT_NE(table, nullptr);
    ASSERT_NE(table->tableInterface(), nullptr);
    EXPECT_EQ(table->tableInterface()->rowCount(), 2);
    EXPECT_EQ(table->tableInterface()->columnCount(), 4);
    QAccessibleInterface* upperRight = table->tableInterface()->cellAt(0, 3);
    ASSERT_NE(upperRight, nullptr);
    EXPECT_EQ(upperRight->text(QAccessible::Name),
              QStringLiteral("Row 2, column 1: slip, slip, knit"));
    EXPECT_EQ(table->indexOfChild(upperRight), 3);
    QAccessibleInterface* cursor = table->tableInterface()->cellAt(1, 1);
    EXPECT_TRUE(cursor->state().selected);
    EXPECT_EQ(cursor->text(QAccessible::Name), QStringLiteral("Row 1, column 3: yarn over"));
    EXPECT_EQ(table->tableInterface()->cellAt(2, 0), nullptr);
}

}  // namespace
}  // namespace lacewright::app
