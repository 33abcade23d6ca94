#include "tests/core/sheet/sheet_probe.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::frameOf;
using test::panel;
using test::Placed;
using test::placedGlyphs;
using test::Rectangle;
using test::runsOf;
using test::textsOf;

Page pageOf(const Chart& chart, const SheetOptions& options = {}) {
    return layOut(chart, options).pages.front();
}

TEST(Layout, EveryGlyphStandsInItsCellAndKnitIsEmpty) {
    const Sheet sheet = layOut(chartOf({"k yo k2tog", "ssk k k", "c11r k"}), {});
    EXPECT_EQ(placedGlyphs(sheet, sheet.pages.front()),
              (Placed{{"yo", 1, 2}, {"k2tog", 1, 1}, {"ssk", 2, 3}, {"c11r", 3, 3}}));
}

TEST(Layout, TheFrameIsAsLargeAsTheCells) {
    const Rectangle frame = frameOf(pageOf(panel()));
    EXPECT_EQ(frame.right - frame.left, 12 * kCellUnits);
    EXPECT_EQ(frame.bottom - frame.top, 4 * kCellUnits);
}

// A number stands at the side where its row begins, rounds all at the right: knitpurlhunter.com on
// reading charts; C. Carter (2011).
struct NumberSide {
    int number = 0;
    bool right = false;
    bool operator==(const NumberSide&) const = default;
};
std::vector<NumberSide> numberSides(const Chart& chart) {
    std::vector<NumberSide> sides;
    const Page page = pageOf(chart);
    const Rectangle frame = frameOf(page);
    int below = frame.bottom;
    for (const Text& text : textsOf(page, Role::RowNumber)) {
        const bool right = text.at.x > frame.right;
        EXPECT_TRUE(right || text.at.x < frame.left);
        EXPECT_EQ(text.anchor, right ? Anchor::Start : Anchor::End);
        EXPECT_TRUE(text.at.y < below && text.at.y > below - kCellUnits) << text.text;
        below -= kCellUnits;
        sides.push_back({std::stoi(text.text), right});
    }
    return sides;
}

TEST(RowNumbers, FlatRowsAlternateBetweenTheSides) {
    EXPECT_EQ(numberSides(chartOf({"k k", "k k", "k k"})),
              (std::vector<NumberSide>{{1, true}, {2, false}, {3, true}}));
    Chart wrongFirst = chartOf({"k k", "k k"});
    wrongFirst.firstSide = Side::Wrong;
    EXPECT_EQ(numberSides(wrongFirst), (std::vector<NumberSide>{{1, false}, {2, true}}));
}

TEST(RowNumbers, RoundsAndRightSideChartsHaveThemAllAtTheRight) {
    Chart round = chartOf({"k k", "k k"});
    round.worked = Worked::InTheRound;
    EXPECT_EQ(numberSides(round), (std::vector<NumberSide>{{1, true}, {2, true}}));
    Chart odd = chartOf({"k k", "k k", "k k"});
    odd.uncharted = Uncharted::AsTheyPresent;
    EXPECT_EQ(numberSides(odd), (std::vector<NumberSide>{{1, true}, {3, true}, {5, true}}));
}

TEST(Grid, NoLineCrossesASymbolOfSeveralCells) {
    const Page page = pageOf(chartOf({"k k k k k k", "k c22r k"}));
    const Rectangle frame = frameOf(page);
    const auto covered = [&](int column, int row) {  // is the right edge of the column drawn?
        const int x = frame.right - (column - 1) * kCellUnits;
        const int top = frame.bottom - (row + 1) * kCellUnits;
        for (const Role role : {Role::Grid, Role::HeavyGrid}) {
            for (const auto& run : runsOf(page, role)) {
                const Rectangle line = test::boundsOf(run);
                if (line.left == x && line.right == x && line.top <= top &&
                    line.bottom >= top + kCellUnits) {
                    return true;
                }
            }
        }
        return false;
    };
    for (int column = 2; column <= 6; ++column) {
        EXPECT_TRUE(covered(column, 0)) << column;
        EXPECT_EQ(covered(column, 1), column == 2 || column == 6) << column;
    }
}

TEST(Grid, HeavyLinesStandAfterEveryFifthColumnAndRow) {
    SheetOptions options;
    const Page page = pageOf(blankChart(12, 7), options);
    const Rectangle frame = frameOf(page);
    std::vector<int> columns;
    std::vector<int> rows;
    for (const auto& run : runsOf(page, Role::HeavyGrid)) {
        const Rectangle line = test::boundsOf(run);
        if (line.left == line.right) columns.push_back((frame.right - line.left) / kCellUnits);
        if (line.top == line.bottom) rows.push_back((frame.bottom - line.top) / kCellUnits);
    }
    EXPECT_EQ(columns, (std::vector<int>{5, 10}));
    EXPECT_EQ(rows, (std::vector<int>{5}));
    EXPECT_EQ(runsOf(page, Role::Grid).size(), 9U + 5U);
}

TEST(Grounds, CellsWithoutStitchAreGreyInRuns) {
    const Page page = pageOf(chartOf({"k no-stitch no-stitch k no-stitch"}));
    const Rectangle frame = frameOf(page);
    const auto runs = runsOf(page, Role::NoStitch);
    ASSERT_GE(runs.size(), 2U);  // and one in the legend
    EXPECT_EQ(test::boundsOf(runs[0]),
              (Rectangle{frame.right - 20, frame.top, frame.right, frame.bottom}));
    EXPECT_EQ(test::boundsOf(runs[1]),
              (Rectangle{frame.right - 80, frame.top, frame.right - 40, frame.bottom}));
}

TEST(Repeats, TheOutlineStepsWhereTheRepeatJogs) {
    const Page page = pageOf(panel());
    const Rectangle frame = frameOf(page);
    const auto x = [&](int column) { return frame.right - (column - 1) * kCellUnits; };
    const auto y = [&](int rows) { return frame.bottom - rows * kCellUnits; };
    const auto runs = runsOf(page, Role::Repeat);
    ASSERT_EQ(runs.size(), 4U);
    // The right edge in front of column 4, one column to the left on the second row.
    EXPECT_EQ(
        runs[0],
        (std::vector<Spot>{
            {x(4), y(0)}, {x(4), y(1)}, {x(5), y(1)}, {x(5), y(2)}, {x(4), y(2)}, {x(4), y(3)}}));
    EXPECT_EQ(runs[1], (std::vector<Spot>{{x(10), y(0)},
                                          {x(10), y(1)},
                                          {x(11), y(1)},
                                          {x(11), y(2)},
                                          {x(10), y(2)},
                                          {x(10), y(3)}}));
    EXPECT_EQ(runs[2], (std::vector<Spot>{{x(10), y(0)}, {x(4), y(0)}}));
    EXPECT_EQ(runs[3], (std::vector<Spot>{{x(10), y(3)}, {x(4), y(3)}}));
}

TEST(Layout, IsAPureFunction) {
    SheetOptions options;
    options.size = "large";
    options.paper = kA4;
    EXPECT_EQ(layOut(panel(), options), layOut(panel(), options));
}

}  // namespace
}  // namespace lacewright
