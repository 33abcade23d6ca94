#include <gtest/gtest.h>

#include <climits>

#include "core/chart/edits.h"
#include "tests/support/drawn_rows.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::drawn;

// Twelve columns, eight rows; A over columns 4..6, jogged one to the left on row 2, B over 8..9 in
// rows 4..7; size M from 3 to 9 at points A and B, narrower in rows 5..6, working a stitch plain.
Chart framed() {
    Chart chart = blankChart(12, 8);
    chart.repeats.push_back({"A", 4, 6, 1, 5, {{2, {1, 1, {}}}}, {}});
    chart.repeats.push_back({"B", 8, 9, 4, 7, {}, {}});
    chart.rowRepeat = RowRepeat{2, 5, 0, {}};
    chart.points = {{"A", 3, {}}, {"B", 9, {}}};
    Size size;
    size.name = "M";
    size.reach = {3, 9};
    size.changes = {{5, 6, {4, 8}, {}}};
    size.times = {{"A", 2}, {"B", 3}};
    size.substitutions = {{3, 5, Edge::End, "p", {}}};
    chart.sizes.push_back(size);
    return chart;
}

TEST(InsertColumns, PutsKnitBeforeAColumnAndCutsWideStitches) {
    const Chart chart = chartOf({"c22r c11l", "p p p p p p"});
    EXPECT_EQ(drawn(*insertColumns(chart, 1, 1), 0), "c22r c11l k");
    EXPECT_EQ(drawn(*insertColumns(chart, 2, 1), 0), "c22r k k k");
    EXPECT_EQ(drawn(*insertColumns(chart, 3, 2), 0), "c22r k k c11l");
    EXPECT_EQ(drawn(*insertColumns(chart, 7, 1), 0), "k c22r c11l");
    const auto inside = insertColumns(chart, 5, 1);
    ASSERT_TRUE(inside);
    EXPECT_EQ(drawn(*inside, 0), "k k k k k c11l");
    EXPECT_EQ(drawn(*inside, 1), "p p k p p p p");
    EXPECT_EQ(inside->width, 7);
}

TEST(InsertColumns, InsideABoxWidensItAndAtItsRightEdgeMovesIt) {
    const auto inside = insertColumns(framed(), 5, 2);
    ASSERT_TRUE(inside);
    EXPECT_EQ(inside->repeats[0].on(1), (Box{4, 8}));
    EXPECT_EQ(inside->repeats[0].on(2), (Box{7, 9}));  // was 5..7: its right edge moves it
    EXPECT_EQ(inside->repeats[1].on(4), (Box{10, 11}));
    const auto atEdge = insertColumns(framed(), 4, 1);
    EXPECT_EQ(atEdge->repeats[0].on(1), (Box{5, 7}));
    EXPECT_EQ(insertColumns(framed(), 7, 1)->repeats[0].on(1), (Box{4, 6}));
}

TEST(InsertColumns, MovesPointsSizesAndSubstitutionsAlong) {
    const auto edited = insertColumns(framed(), 4, 2);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->points, (std::vector<Point>{{"A", 3, {}}, {"B", 11, {}}}));
    const Size& size = edited->sizes[0];
    EXPECT_EQ(size.reach, (Reach{3, 11}));
    EXPECT_EQ(size.changes[0].reach, (Reach{6, 10}));
    EXPECT_EQ(size.substitutions[0].column, 7);
    EXPECT_EQ(insertColumns(framed(), 3, 1)->points[0].column, 4);
    EXPECT_EQ(insertColumns(framed(), 10, 1)->sizes[0].reach, (Reach{3, 9}));
}

TEST(InsertColumns, DropsTheSubstitutionOfAStitchItCuts) {
    Chart chart = chartOf({"k c11r"});
    Size size;
    size.name = "M";
    size.reach = {1, 3};
    size.substitutions = {{0, 1, Edge::Start, "c11l", {}}};
    chart.sizes.push_back(size);
    EXPECT_TRUE(insertColumns(chart, 2, 1)->sizes[0].substitutions.empty());
    EXPECT_EQ(insertColumns(chart, 1, 1)->sizes[0].substitutions[0].column, 2);
}

TEST(InsertColumns, KeepsRowsSharedThatWereShared) {
    const auto edited = insertColumns(blankChart(5, 3), 2, 1);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->rows[0], edited->rows[2]);
}

TEST(RemoveColumns, TurnsWideStitchesThatLoseACellIntoKnit) {
    const Chart chart = chartOf({"p c22r c11l"});
    EXPECT_EQ(drawn(*removeColumns(chart, 1, 1), 0), "p c22r k");
    EXPECT_EQ(drawn(*removeColumns(chart, 1, 2), 0), "p c22r");
    EXPECT_EQ(drawn(*removeColumns(chart, 4, 1), 0), "p k k k c11l");
    EXPECT_EQ(drawn(*removeColumns(chart, 2, 3), 0), "p k k k");
    EXPECT_EQ(drawn(*removeColumns(chart, 7, 1), 0), "c22r c11l");
}

TEST(RemoveColumns, NarrowsABoxAndDropsOneWithoutColumns) {
    const auto narrowed = removeColumns(framed(), 6, 2);
    ASSERT_TRUE(narrowed);
    EXPECT_EQ(narrowed->repeats[0].on(1), (Box{4, 5}));
    EXPECT_EQ(narrowed->repeats[0].on(2), (Box{5, 5}));
    EXPECT_EQ(narrowed->repeats[1].on(4), (Box{6, 7}));
    const auto gone = removeColumns(framed(), 4, 3);
    ASSERT_TRUE(gone);
    ASSERT_EQ(gone->repeats.size(), 1U);
    EXPECT_EQ(gone->sizes[0].times, (std::map<std::string, int>{{"B", 3}}));
    EXPECT_TRUE(gone->sizes[0].substitutions.empty());
}

TEST(RemoveColumns, DropsAJogThatHasNoColumnLeft) {
    Chart chart = blankChart(10, 2);
    chart.repeats.push_back({"A", 3, 4, 0, 1, {{1, {4, 4, {}}}}, {}});
    const auto edited = removeColumns(chart, 7, 2);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->repeats[0].on(1), (Box{3, 4}));
}

TEST(RemoveColumns, RefusesWhenRepeatsWouldOverlap) {
    Chart chart = blankChart(10, 2);
    chart.repeats.push_back({"A", 3, 4, 0, 1, {{1, {5, 5, {}}}}, {}});
    chart.repeats.push_back({"B", 3, 4, 1, 1, {}, {}});
    ASSERT_FALSE(frameProblem(chart));
    EXPECT_EQ(removeColumns(chart, 8, 2).error().message, "Repeats B and A overlap on row 2.");
}

TEST(RemoveColumns, MovesTheEdgeOfASizeInwardAndItsPointWithIt) {
    const auto right = removeColumns(framed(), 2, 2);
    ASSERT_TRUE(right);
    EXPECT_EQ(right->sizes[0].reach, (Reach{2, 7}));
    EXPECT_EQ(right->points, (std::vector<Point>{{"A", 2, {}}, {"B", 7, {}}}));
    const auto left = removeColumns(framed(), 9, 3);
    EXPECT_EQ(left->sizes[0].reach, (Reach{3, 8}));
    EXPECT_EQ(left->sizes[0].changes[0].reach, (Reach{4, 8}));
    EXPECT_EQ(left->points[1].column, 8);
}

TEST(RemoveColumns, DropsASizeWithoutColumnsAndItsLetters) {
    Chart chart = framed();
    const auto added = addSize(chart, [] {
        Size size;
        size.name = "S";
        size.reach = {11, 12};
        return size;
    }());
    ASSERT_TRUE(added);
    ASSERT_EQ(added->points.size(), 4U);
    const auto edited = removeColumns(*added, 11, 2);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->sizes, chart.sizes);
    EXPECT_EQ(edited->points, chart.points);
}

TEST(Columns, RefuseWhatIsNotThere) {
    const Chart chart = framed();
    for (const auto& [first, count] :
         {std::pair{0, 1}, {13, 1}, {1, 13}, {12, 2}, {INT_MIN, 1}, {2, INT_MAX}}) {
        EXPECT_EQ(removeColumns(chart, first, count).error().message,
                  "This place lies outside the chart.");
    }
    EXPECT_EQ(removeColumns(chart, 1, 12).error().message, "A chart keeps at least one column.");
    EXPECT_EQ(removeColumns(chart, 1, -1).error().message,
              "How many rows or columns must not be negative.");
    EXPECT_EQ(insertColumns(chart, 14, 1).error().message, "This place lies outside the chart.");
    EXPECT_EQ(insertColumns(chart, 1, -1).error().message,
              "How many rows or columns must not be negative.");
    EXPECT_EQ(insertColumns(chart, 1, INT_MAX).error().message,
              "A chart has at most 4000 columns, 4000 rows and 4000000 cells.");
    EXPECT_EQ(*insertColumns(chart, 3, 0), chart);
    EXPECT_EQ(*removeColumns(chart, 3, 0), chart);
}

TEST(InsertRows, GrowsSpansFromWithinAndMovesThoseAbove) {
    const auto edited = insertRows(framed(), 4, 2);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->height(), 10);
    EXPECT_EQ(edited->repeats[0].firstRow, 1);
    EXPECT_EQ(edited->repeats[0].lastRow, 7);
    EXPECT_TRUE(edited->repeats[0].jogs.contains(2));
    EXPECT_EQ(edited->repeats[1].firstRow, 6);
    EXPECT_EQ(edited->rowRepeat, (RowRepeat{2, 7, 0, {}}));
    EXPECT_EQ(edited->sizes[0].changes[0].firstRow, 7);
    EXPECT_EQ(edited->sizes[0].substitutions[0].row, 3);
    const auto below = insertRows(framed(), 1, 1);
    EXPECT_EQ(below->repeats[0].firstRow, 2);
    EXPECT_TRUE(below->repeats[0].jogs.contains(3));
    EXPECT_EQ(below->sizes[0].substitutions[0].row, 4);
}

TEST(InsertRows, AreKnitAndLeaveTheOthersAsTheyWere) {
    const Chart chart = chartOf({"p p", "yo yo"});
    const auto edited = insertRows(chart, 1, 1);
    ASSERT_TRUE(edited);
    EXPECT_EQ(drawn(*edited, 1), "k k");
    EXPECT_EQ(edited->rows[0], chart.rows[0]);
    EXPECT_EQ(edited->rows[2], chart.rows[1]);
    EXPECT_EQ(drawn(*insertRows(chart, 2, 1), 2), "k k");
}

TEST(RemoveRows, ShrinksSpansAndDropsWhatHasNoRowLeft) {
    const auto edited = removeRows(framed(), 4, 4);
    ASSERT_TRUE(edited);
    ASSERT_EQ(edited->repeats.size(), 1U);
    EXPECT_EQ(edited->repeats[0].lastRow, 3);
    EXPECT_EQ(edited->rowRepeat, (RowRepeat{2, 3, 0, {}}));
    EXPECT_EQ(edited->sizes[0].times, (std::map<std::string, int>{{"A", 2}}));
    EXPECT_TRUE(edited->sizes[0].changes.empty());
    EXPECT_EQ(edited->sizes[0].substitutions.size(), 1U);
    const auto middle = removeRows(framed(), 2, 4);
    EXPECT_FALSE(middle->rowRepeat);
    EXPECT_TRUE(middle->repeats[0].jogs.empty());
    EXPECT_TRUE(middle->sizes[0].substitutions.empty());
}

TEST(Rows, RefuseWhatIsNotThere) {
    const Chart chart = framed();
    for (const auto& [first, count] :
         {std::pair{-1, 1}, {8, 1}, {0, 9}, {INT_MAX, 1}, {1, INT_MAX}}) {
        EXPECT_EQ(removeRows(chart, first, count).error().message,
                  "This place lies outside the chart.");
    }
    EXPECT_EQ(removeRows(chart, 0, 8).error().message, "A chart keeps at least one row.");
    EXPECT_EQ(insertRows(chart, 9, 1).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(insertRows(chart, 0, kMaxRows - 7).error().message,
              "A chart has at most 4000 columns, 4000 rows and 4000000 cells.");
    EXPECT_EQ(*insertRows(chart, 3, 0), chart);
    EXPECT_EQ(*removeRows(chart, 3, 0), chart);
}

}  // namespace
}  // namespace lacewright
