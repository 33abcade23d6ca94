#include <QScreen>
#include <algorithm>

#include "core/chart/edits.h"
#include "tests/app/canvas/chart_view_fixture.h"

namespace lacewright::app {
namespace {

using lacewright::test::chartOf;

TEST_F(ChartViewTest, DrawsColumnOneAtTheRightAndRowOneAtTheBottom) {
    show(chartOf({"k k k bobble", "k*4", "bobble k k k"}));
    view_.moveCursor({1, 2});
    EXPECT_EQ(colourIn({0, 1}, 10, 10), lightColours().glyph);
    EXPECT_EQ(colourIn({2, 4}, 10, 10), lightColours().glyph);
    EXPECT_EQ(colourIn({0, 4}, 10, 10), lightColours().ground);
    EXPECT_GT(chartView_.cellRect({0, 1}).left(), chartView_.cellRect({0, 2}).left());
    EXPECT_GT(chartView_.cellRect({0, 1}).top(), chartView_.cellRect({1, 1}).top());
}

TEST_F(ChartViewTest, ShowsNoGridLineInsideAWideStitch) {
    show(chartOf({"k k gather3 k", "k*6"}));
    view_.moveCursor({1, 6});
    EXPECT_EQ(colourIn({0, 1}, 0, 3), lightColours().gridFine);
    // Cells 2 to 4 are one stitch: its left edge has the line, those inside have none.
    EXPECT_EQ(colourIn({0, 4}, 0, 3), lightColours().gridFine);
    EXPECT_EQ(colourIn({0, 3}, 0, 2), lightColours().ground);
    EXPECT_EQ(colourIn({0, 2}, 0, 2), lightColours().ground);
}

TEST_F(ChartViewTest, DrawsHeavierLinesEveryFiveAndTenCells) {
    show(blankChart(12, 12));
    view_.moveCursor({0, 1});
    EXPECT_EQ(colourIn({2, 5}, 0, 10), lightColours().gridFive);
    EXPECT_EQ(colourIn({2, 10}, 0, 10), lightColours().gridTen);
    EXPECT_EQ(colourIn({2, 4}, 0, 10), lightColours().gridFine);
    EXPECT_EQ(colourIn({4, 3}, 10, 0), lightColours().gridFive);
    EXPECT_EQ(colourIn({9, 3}, 10, 0), lightColours().gridTen);
}

TEST_F(ChartViewTest, ShadesTheChosenSizeAndDimsTheRest) {
    Chart chart = blankChart(10, 4);
    lacewright::test::withSize(chart, "Small", 3, 7, 1);
    show(chart);
    view_.chooseSize(QStringLiteral("Small"));
    view_.moveCursor({3, 10});
    EXPECT_EQ(colourIn({1, 5}, 10, 10), lightColours().groundInside);
    EXPECT_EQ(colourIn({1, 9}, 10, 10), lightColours().groundOutside);
    EXPECT_EQ(colourIn({1, 2}, 10, 10), lightColours().groundOutside);
    EXPECT_EQ(colourIn({1, 7}, 0, 10), lightColours().size) << "its left edge";
}

TEST_F(ChartViewTest, OutlinesRepeatsWithTheirJogs) {
    Chart chart = blankChart(12, 6);
    Repeat& repeat = lacewright::test::withRepeat(chart, "A", 3, 8).repeats.front();
    repeat.jogs[2].right = 1;
    repeat.jogs[2].left = 1;
    show(chart);
    view_.moveCursor({5, 12});
    EXPECT_EQ(colourIn({1, 8}, 0, 10), lightColours().repeat);
    EXPECT_EQ(colourIn({2, 8}, 0, 10), lightColours().gridFine);
    EXPECT_EQ(colourIn({2, 9}, 0, 10), lightColours().repeat);
    EXPECT_EQ(colourIn({2, 3}, 0, 10), lightColours().repeat);
    EXPECT_EQ(colourIn({1, 2}, 0, 10), lightColours().repeat);
}

TEST_F(ChartViewTest, MarksTheCellsAndTheRowThatAFaultNames) {
    Chart chart = blankChart(6, 3);
    chart.castOn = CastOn{0, 6};
    // A stitch that reaches outside the chart cannot be drawn by hand; a row that lost a part can.
    std::vector<StitchIndex> cells = chart.row(1).cells();
    cells[2] = kCovered;
    chart.rows.replace(1, makeRow(cells, *chart.stitches));
    show(chart);
    const auto findings = findingsOfRow(document_.report(), 2);
    const auto named = std::ranges::find_if(findings, [](const Finding& finding) {
        return finding.severity == Severity::Fault && !finding.columns.empty();
    });
    ASSERT_NE(named, findings.end());
    const Cell guilty{1, named->columns.front()};
    view_.moveCursor({0, 6});
    EXPECT_EQ(colourIn(guilty, 4, 10), lightColours().groundGuilty);

    const ViewScene scene = chartView_.scene();
    const int y = chartView_.cellRect(guilty).center().y();
    const QImage image = chartView_.viewport()->grab().toImage();
    bool hasSign = false;
    for (int x = scene.layout.right.left(); x <= scene.layout.right.right(); ++x) {
        hasSign |= image.pixelColor(x, y) == lightColours().fault;
    }
    EXPECT_TRUE(hasSign);
}

TEST_F(ChartViewTest, ShowsAnOverviewWhenCellsAreTooSmallForGlyphs) {
    show(chartOf({"k k k yo", "k*4"}));
    view_.zoomTo(ViewState::kSmallestCell);
    view_.moveCursor({1, 4});
    EXPECT_EQ(colourIn({0, 1}, 2, 2), lightColours().hole);
    EXPECT_EQ(colourIn({0, 3}, 2, 2), lightColours().ground);
    document_.apply("Draw", drawStitch(document_.chart(), 0, 3, *builtInStitches()->find("yo")));
    settle();
    EXPECT_EQ(colourIn({0, 3}, 2, 2), lightColours().hole);
}

TEST_F(ChartViewTest, FollowsADarkPalette) {
    show(blankChart(6, 3));
    QPalette dark = chartView_.palette();
    dark.setColor(QPalette::Base, QColor(0x222222));
    chartView_.setPalette(dark);
    view_.moveCursor({0, 6});
    EXPECT_EQ(colourIn({1, 2}, 10, 10), darkColours().ground);
}

TEST_F(ChartViewTest, RepaintsOnlyTheCellsThatAnEditChanged) {
    show(blankChart(30, 20));
    const long long before = chartView_.renderer().paintedCells();
    document_.apply("Draw", drawStitch(document_.chart(), 10, 7, *builtInStitches()->find("p")));
    settle();
    const long long painted = chartView_.renderer().paintedCells() - before;
    EXPECT_EQ(painted, 1);
}

TEST_F(ChartViewTest, RepaintsFewCellsWhenTheCursorMoves) {
    show(blankChart(30, 20));
    const long long before = chartView_.renderer().paintedCells();
    view_.moveCursor({12, 20});
    settle();
    EXPECT_LE(chartView_.renderer().paintedCells() - before, 4 * 9);
}

TEST_F(ChartViewTest, RepaintsOnlyWhatScrollingBringsIntoSight) {
    show(blankChart(300, 200));
    chartView_.verticalScrollBar()->setValue(1000);
    settle();
    const long long before = chartView_.renderer().paintedCells();
    chartView_.verticalScrollBar()->setValue(1020);
    settle();
    const long long painted = chartView_.renderer().paintedCells() - before;
    const int across = chartView_.scene().layout.grid.width() / 20 + 2;
    EXPECT_GE(painted, 1);
    EXPECT_LE(painted, 2 * across);
}

// Whatever is repainted in parts looks as if it were painted at once.
TEST_F(ChartViewTest, LooksTheSameAfterPartialRepaintsAsAfterAFullOne) {
    Chart chart = blankChart(40, 60);
    lacewright::test::withRepeat(chart, "A", 3, 12);
    lacewright::test::withSize(chart, "Small", 2, 30, 2);
    show(chart);
    view_.chooseSize(QStringLiteral("Small"));
    const auto onScreen = [this] {
        return chartView_.screen()->grabWindow(chartView_.winId()).toImage();
    };
    type("ko/p");
    chartView_.verticalScrollBar()->setValue(chartView_.verticalScrollBar()->value() - 47);
    chartView_.horizontalScrollBar()->setValue(chartView_.horizontalScrollBar()->value() + 33);
    view_.select({4, 9, 5, 14});
    settle();
    const QImage inParts = onScreen();
    ASSERT_FALSE(inParts.isNull());
    chartView_.viewport()->update();
    settle();
    EXPECT_EQ(inParts, onScreen());
}

}  // namespace
}  // namespace lacewright::app
