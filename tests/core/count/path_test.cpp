#include "core/count/path.h"

#include <gtest/gtest.h>

#include "core/count/tally.h"

namespace lacewright {
namespace {

// Columns 1..12 with the box A over 4..8.
Chart boxed() {
    Chart chart = blankChart(12, 4);
    chart.repeats.push_back({"A", 4, 8, 0, 3, {}, {}});
    return chart;
}

Size sized(int start, int end) {
    Size size;
    size.name = "M";
    size.reach = {start, end};
    return size;
}

std::vector<std::pair<int, int>> columnsOf(const Path& path) {
    std::vector<std::pair<int, int>> runs;
    for (const Segment& s : path) runs.emplace_back(s.first, s.last);
    return runs;
}

using Runs = std::vector<std::pair<int, int>>;

TEST(Path, WithoutASizeIsTheWholeWidth) {
    const Path path = pathOn(boxed(), 0, nullptr);
    EXPECT_EQ(columnsOf(path), (Runs{{1, 3}, {4, 8}, {9, 12}}));
    EXPECT_TRUE(path[1].isBox());
    EXPECT_EQ(path[1].repeat, 0);
}

TEST(Path, StartBeforeTheBoxWorksTheColumnsUpToIt) {
    const Size size = sized(2, 10);
    EXPECT_EQ(columnsOf(pathOn(boxed(), 0, &size)), (Runs{{2, 3}, {4, 8}, {9, 10}}));
}

TEST(Path, StartInsideTheBoxWorksItsRestOnceBeforeTheFullPasses) {
    const Size size = sized(6, 9);
    const Path path = pathOn(boxed(), 0, &size);
    EXPECT_EQ(columnsOf(path), (Runs{{6, 8}, {4, 8}, {9, 9}}));
    EXPECT_EQ(path[0].part, Segment::Part::StartOfSize);
}

TEST(Path, StartAtTheRightEdgeBeginsWithTheBoxItself) {
    const Size size = sized(4, 8);
    EXPECT_EQ(columnsOf(pathOn(boxed(), 0, &size)), (Runs{{4, 8}}));
}

TEST(Path, EndInsideTheBoxWorksItsFirstPartOnceAfterTheFullPasses) {
    const Size size = sized(1, 6);
    const Path path = pathOn(boxed(), 0, &size);
    EXPECT_EQ(columnsOf(path), (Runs{{1, 3}, {4, 8}, {4, 6}}));
    EXPECT_EQ(path[2].part, Segment::Part::EndOfSize);
}

TEST(Path, LeavesOutABoxThatTheSizeDoesNotReach) {
    const Size right = sized(1, 3);
    EXPECT_EQ(columnsOf(pathOn(boxed(), 0, &right)), (Runs{{1, 3}}));
    const Size left = sized(9, 12);
    EXPECT_EQ(columnsOf(pathOn(boxed(), 0, &left)), (Runs{{9, 12}}));
}

TEST(Path, SeveralBoxesAreWorkedOneAfterTheOtherFromTheRight) {
    Chart chart = blankChart(12, 2);
    chart.repeats.push_back({"B", 7, 9, 0, 1, {}, {}});
    chart.repeats.push_back({"A", 2, 4, 0, 1, {}, {}});
    const Path path = pathOn(chart, 0, nullptr);
    EXPECT_EQ(columnsOf(path), (Runs{{1, 1}, {2, 4}, {5, 6}, {7, 9}, {10, 12}}));
    EXPECT_EQ(path[1].repeat, 1);
    EXPECT_EQ(path[3].repeat, 0);
}

TEST(Path, AJogShiftsTheBoxOnItsRowAlone) {
    Chart chart = boxed();
    chart.repeats[0].jogs[2] = {1, 1};
    EXPECT_EQ(columnsOf(pathOn(chart, 2, nullptr)), (Runs{{1, 4}, {5, 9}, {10, 12}}));
    EXPECT_EQ(columnsOf(pathOn(chart, 3, nullptr)), (Runs{{1, 3}, {4, 8}, {9, 12}}));
    const auto bands = pathBands(chart, nullptr);
    ASSERT_EQ(bands.size(), 3U);
    EXPECT_EQ(bands[0].lastRow, 1);
    EXPECT_EQ(bands[1].firstRow, 2);
    EXPECT_EQ(bands[1].lastRow, 2);
}

// "Work A to E, then repeat B to E 6 more times" is seven passes of the box.
TEST(Path, UnrollsEveryPassInWorkingOrder) {
    const Size size = sized(7, 9);
    const auto cells = unrolled(pathOn(boxed(), 0, &size), {2});
    std::vector<int> columns;
    for (const WorkedCell& cell : cells) columns.push_back(cell.column);
    EXPECT_EQ(columns, (std::vector<int>{7, 8, 4, 5, 6, 7, 8, 4, 5, 6, 7, 8, 9}));
}

TEST(Tally, OfASizeFillsInItsTimes) {
    const Chart chart = boxed();
    Size size = sized(2, 10);
    size.times["A"] = 3;
    const Path path = pathOn(chart, 0, &size);
    const RowForms forms = formsOf(chart, 0, size, path, timesOf(chart, size));
    EXPECT_EQ(forms.takes, AffineForm(2 + 3 * 5 + 2));
    const RowForms open = formsOf(chart.row(0), path);
    EXPECT_EQ(open.takes.constant(), 4);
    EXPECT_EQ(open.takes.coefficient(0), 5);
}

TEST(Tally, ASubstitutionReplacesOneWorkedCell) {
    Chart chart = boxed();
    Size size = sized(6, 10);
    size.times["A"] = 2;
    size.substitutions.push_back({0, 7, Edge::Start, "yo"});
    const Path path = pathOn(chart, 0, &size);
    const RowForms forms = formsOf(chart, 0, size, path, timesOf(chart, size));
    EXPECT_EQ(forms.takes, AffineForm(3 + 10 + 2 - 1));
    EXPECT_EQ(forms.makes, AffineForm(15));
}

}  // namespace
}  // namespace lacewright
