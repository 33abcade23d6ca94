#include "app/canvas/drawing.h"

#include <gtest/gtest.h>

#include "app/canvas/drag_edits.h"
#include "app/canvas/gestures.h"
#include "tests/support/charts.h"

namespace lacewright::app {
namespace {

using lacewright::test::chartOf;

Chart threeRows() {
    return chartOf({"k*4", "k*4", "k*4"});
}

TEST(WorkedAfter, GoesLeftOnRightSideRowsAndRightOnWrongSideRows) {
    const Chart chart = threeRows();
    EXPECT_EQ(workedAfter(chart, {0, 1}, 1), (Cell{0, 2}));
    EXPECT_EQ(workedAfter(chart, {1, 4}, 1), (Cell{1, 3}));
}

TEST(WorkedAfter, TurnsAtTheEndOfEachRowAndEndsWithTheLast) {
    const Chart chart = threeRows();
    EXPECT_EQ(workedAfter(chart, {0, 4}, 1), (Cell{1, 4}));
    EXPECT_EQ(workedAfter(chart, {1, 1}, 1), (Cell{2, 1}));
    EXPECT_EQ(workedAfter(chart, {2, 4}, 1), std::nullopt);
}

TEST(WorkedAfter, BeginsEveryRoundAtTheRight) {
    Chart chart = threeRows();
    chart.worked = Worked::InTheRound;
    EXPECT_EQ(workedAfter(chart, {0, 4}, 1), (Cell{1, 1}));
}

TEST(WorkedAfter, PassesAllCellsOfAWideStitch) {
    EXPECT_EQ(workedAfter(threeRows(), {0, 1}, 3), (Cell{0, 4}));
    EXPECT_EQ(workedAfter(threeRows(), {1, 2}, 3), (Cell{1, 1}));
}

TEST(WorkedBefore, UndoesWorkedAfterOnEveryCell) {
    const Chart chart = threeRows();
    int steps = 0;
    for (std::optional<Cell> cell = Cell{0, 1}; cell; ++steps) {
        const auto next = workedAfter(chart, *cell, 1);
        if (next) {
            EXPECT_EQ(workedBefore(chart, *next), *cell);
        }
        cell = next;
    }
    EXPECT_EQ(steps, 12);
    EXPECT_EQ(workedBefore(chart, {0, 1}), std::nullopt);
}

TEST(PlaceFor, KeepsWideStitchesInsideTheChart) {
    EXPECT_EQ(placeFor(threeRows(), {0, 4}, 3), (Cell{0, 2}));
    EXPECT_EQ(placeFor(threeRows(), {0, -1}, 3), (Cell{0, 1}));
    EXPECT_EQ(placeFor(threeRows(), {0, 2}, 1), (Cell{0, 2}));
}

TEST(CellsBetween, LeavesNoGap) {
    for (int row = -4; row <= 4; ++row) {
        for (int column = -4; column <= 4; ++column) {
            Cell at{10, 10};
            const Cell to{10 + row, 10 + column};
            for (const Cell cell : cellsBetween(at, to)) {
                ASSERT_LE(std::abs(cell.row - at.row), 1);
                ASSERT_LE(std::abs(cell.column - at.column), 1);
                ASSERT_FALSE(cell == at);
                at = cell;
            }
            ASSERT_EQ(at, to);
        }
    }
}

TEST(Straightened, LiesLevelUprightOrSlanting) {
    EXPECT_EQ(straightened({5, 5}, {6, 12}), (Cell{5, 12}));
    EXPECT_EQ(straightened({5, 5}, {12, 4}), (Cell{12, 5}));
    EXPECT_EQ(straightened({5, 5}, {9, 2}), (Cell{8, 2}));
    EXPECT_EQ(straightened({5, 5}, {5, 5}), (Cell{5, 5}));
}

class DragEdits : public ::testing::Test {
 protected:
    DragEdits() : chart(blankChart(20, 10)) {
        Repeat repeat;
        repeat.name = "A";
        repeat.right = 3;
        repeat.left = 8;
        repeat.lastRow = 9;
        chart.repeats.push_back(repeat);
        Size size;
        size.name = "M";
        size.reach = {2, 12};
        size.times["A"] = 2;
        chart = *addSize(chart, size);
    }
    Chart chart;
};

TEST_F(DragEdits, MoveTheEdgesOfARepeat) {
    EXPECT_EQ(moveRepeatEdge(chart, "A", BoxSide::Right, 4)->repeats[0].right, 5);
    EXPECT_EQ(moveRepeatEdge(chart, "A", BoxSide::Left, 10)->repeats[0].left, 10);
    EXPECT_EQ(moveRepeatEdge(chart, "A", BoxSide::Top, 4)->repeats[0].lastRow, 4);
    EXPECT_EQ(moveRepeatEdge(chart, "A", BoxSide::Bottom, 1)->repeats[0].firstRow, 2);
}

TEST_F(DragEdits, ShiftAnEdgeOnOneRowAlone) {
    const Result<Chart> edited = moveRepeatEdge(chart, "A", BoxSide::Right, 3, 5);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->repeats[0].on(5), (Box{4, 8}));
    EXPECT_EQ(edited->repeats[0].on(4), (Box{3, 8}));
    const Result<Chart> back = moveRepeatEdge(*edited, "A", BoxSide::Right, 2, 5);
    ASSERT_TRUE(back);
    EXPECT_TRUE(back->repeats[0].jogs.empty());
}

TEST_F(DragEdits, ForgetShiftsOfRowsTheRepeatNoLongerCovers) {
    const Chart jogged = *moveRepeatEdge(chart, "A", BoxSide::Right, 3, 7);
    const Result<Chart> edited = moveRepeatEdge(jogged, "A", BoxSide::Top, 5);
    ASSERT_TRUE(edited);
    EXPECT_TRUE(edited->repeats[0].jogs.empty());
}

TEST_F(DragEdits, RefuseARepeatTurnedInsideOut) {
    EXPECT_FALSE(moveRepeatEdge(chart, "A", BoxSide::Right, 12));
    EXPECT_FALSE(moveRepeatEdge(chart, "B", BoxSide::Right, 4));
}

TEST_F(DragEdits, MoveTheMarksOfASize) {
    EXPECT_EQ(moveSizeMark(chart, "M", Edge::Start, 0)->sizes[0].reach, (Reach{1, 12}));
    EXPECT_EQ(moveSizeMark(chart, "M", Edge::End, 15)->sizes[0].reach, (Reach{2, 15}));
    EXPECT_FALSE(moveSizeMark(chart, "M", Edge::Start, 13));
}

TEST(CleanColumn, IsWhereNoSizeOfThePointIsCutBadly) {
    Chart chart = blankChart(6, 1);
    lacewright::test::withSize(chart, "S", 2, 6, 1);
    lacewright::test::withSize(chart, "M", 1, 2, 1);
    const Point point{"P", 2, {}};
    // Starting at column c needs line c - 1, ending there line c.
    const std::vector<bool> clean = {true, false, true, true, false, true, true};
    EXPECT_EQ(cleanColumn(chart, point, clean, 4), 3);
    EXPECT_EQ(cleanColumn(chart, point, clean, 5), 6);
    EXPECT_EQ(cleanColumn(chart, Point{"Q", 4, {}}, clean, 4), 4) << "no size uses it";
}

TEST_F(DragEdits, MoveAPointWithTheSizesThatUseIt) {
    const Point* start = chart.pointAt(2);
    ASSERT_NE(start, nullptr);
    const Result<Chart> edited = movePoint(chart, start->name, 4);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->findPoint(start->name)->column, 4);
    EXPECT_EQ(edited->sizes[0].reach, (Reach{4, 12}));
    EXPECT_FALSE(movePoint(chart, start->name, 13)) << "the size would end before it starts";
}

}  // namespace
}  // namespace lacewright::app
