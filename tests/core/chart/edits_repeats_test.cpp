#include <gtest/gtest.h>

#include "core/chart/edits.h"

namespace lacewright {
namespace {

Repeat box(const std::string& name, int right, int left, int firstRow, int lastRow) {
    return {name, right, left, firstRow, lastRow, {}, {}};
}

Size sized(const std::string& name, int start, int end) {
    Size size;
    size.name = name;
    size.reach = {start, end};
    return size;
}

TEST(AddRepeat, ChoosesTheFirstFreeLetter) {
    Chart chart = blankChart(10, 4);
    chart = *addRepeat(chart, box("", 1, 2, 0, 3));
    chart = *addRepeat(chart, box("C", 3, 4, 0, 3));
    chart = *addRepeat(chart, box("", 5, 6, 0, 3));
    chart = *addRepeat(chart, box("", 7, 8, 0, 3));
    ASSERT_EQ(chart.repeats.size(), 4U);
    EXPECT_EQ(chart.repeats[0].name, "A");
    EXPECT_EQ(chart.repeats[2].name, "B");
    EXPECT_EQ(chart.repeats[3].name, "D");
}

TEST(AddRepeat, IsWorkedOnceByEverySize) {
    Chart chart = blankChart(10, 4);
    chart.sizes = {sized("S", 1, 10), sized("M", 1, 10)};
    const auto edited = addRepeat(chart, box("", 3, 4, 0, 3));
    ASSERT_TRUE(edited);
    for (const Size& size : edited->sizes) {
        EXPECT_EQ(size.times, (std::map<std::string, int>{{"A", 1}}));
    }
}

TEST(AddRepeat, MayShareColumnsOnOtherRowsOnly) {
    const Chart chart = *addRepeat(blankChart(10, 6), box("A", 3, 6, 0, 2));
    EXPECT_TRUE(addRepeat(chart, box("B", 3, 6, 3, 5)));
    EXPECT_TRUE(addRepeat(chart, box("B", 7, 8, 0, 5)));
    EXPECT_EQ(addRepeat(chart, box("B", 6, 8, 2, 5)).error().message,
              "Repeats A and B overlap on row 3.");
    Repeat jogged = box("B", 7, 8, 0, 5);
    jogged.jogs[1].right = -1;
    EXPECT_EQ(addRepeat(chart, jogged).error().message, "Repeats A and B overlap on row 2.");
    jogged.jogs[1].right = 1;
    EXPECT_TRUE(addRepeat(chart, jogged));
}

TEST(ChangeRepeat, SeesOverlapOnJoggedAndPlainRowsAlike) {
    Chart chart = blankChart(12, 5);
    chart.repeats = {box("A", 5, 8, 0, 4), box("B", 10, 12, 0, 4)};
    const auto refusalOf = [&](const Repeat& repeat) {
        const auto edited = changeRepeat(chart, "B", repeat);
        return edited ? std::string() : edited.error().message;
    };
    Repeat repeat = box("B", 1, 4, 0, 4);
    for (int row = 0; row < 5; ++row) repeat.jogs[row] = {0, -1, {}};
    EXPECT_EQ(refusalOf(repeat), "");
    repeat.jogs[4] = {0, 1, {}};
    EXPECT_EQ(refusalOf(repeat), "Repeats A and B overlap on row 5.");
    repeat.jogs = {{3, {0, 1, {}}}};
    EXPECT_EQ(refusalOf(repeat), "Repeats A and B overlap on row 4.");
    repeat.left = 5;
    EXPECT_EQ(refusalOf(repeat), "Repeats A and B overlap on row 1.");
    repeat.jogs = {{0, {0, -1, {}}}};
    EXPECT_EQ(refusalOf(repeat), "Repeats A and B overlap on row 2.");
    chart.uncharted = Uncharted::Purl;
    EXPECT_EQ(refusalOf(repeat), "Repeats A and B overlap on row 3.");
}

TEST(Repeats, ThatOverlapInAFileCanBeTakenApart) {
    Chart chart = blankChart(12, 5);
    chart.repeats = {box("A", 1, 8, 0, 4), box("B", 6, 9, 0, 4)};
    EXPECT_TRUE(insertRows(chart, 0, 1));
    EXPECT_TRUE(removeColumns(chart, 12, 1));
    EXPECT_TRUE(removeRepeat(chart, "A"));
    EXPECT_FALSE(changeRepeat(chart, "A", box("A", 1, 6, 0, 4)));
    EXPECT_TRUE(changeRepeat(chart, "A", box("A", 1, 5, 0, 4)));
}

TEST(AddRepeat, RefusesWhatIsOutsideOrNamedTwice) {
    const Chart chart = *addRepeat(blankChart(10, 4), box("A", 3, 4, 0, 3));
    EXPECT_EQ(addRepeat(chart, box("A", 6, 7, 0, 3)).error().message, "Two repeats are named A.");
    EXPECT_EQ(addRepeat(chart, box("B", 9, 11, 0, 3)).error().message,
              "Repeat B has columns 9 to 11, which is no box in a chart of 10.");
    EXPECT_EQ(addRepeat(chart, box("B", 7, 6, 0, 3)).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(addRepeat(chart, box("B", 6, 7, 0, 4)).error().message,
              "Repeat B must cover rows of the chart, from its first upward.");
    Repeat jogged = box("B", 6, 9, 0, 2);
    jogged.jogs[3].left = 1;
    EXPECT_EQ(addRepeat(chart, jogged).error().message,
              "Repeat B jogs on a row it does not cover.");
    jogged.jogs = {{1, {0, 2, {}}}};
    EXPECT_EQ(addRepeat(chart, jogged).error().message,
              "Repeat B jogs out of the chart or to nothing on row 2.");
    jogged.jogs = {{1, {3, -1, {}}}};
    EXPECT_FALSE(addRepeat(chart, jogged));
}

TEST(AddRepeat, RefusesMoreThanAChartHolds) {
    Chart chart = blankChart(2 * kMaxRepeats + 2, 1);
    for (int i = 0; i < kMaxRepeats; ++i) {
        auto more = addRepeat(chart, box("", 2 * i + 1, 2 * i + 2, 0, 0));
        ASSERT_TRUE(more);
        chart = *std::move(more);
    }
    EXPECT_EQ(chart.repeats[26].name, "A2");
    EXPECT_EQ(addRepeat(chart, box("", chart.width, chart.width, 0, 0)).error().message,
              "A chart holds at most 64 repeats.");
}

TEST(ChangeRepeat, RenamesInTheTimesOfEverySize) {
    Chart chart = blankChart(10, 4);
    chart.repeats = {box("A", 1, 2, 0, 3), box("B", 3, 4, 0, 3)};
    Size size = sized("S", 1, 10);
    size.times = {{"A", 5}, {"B", 7}};
    chart.sizes = {size, sized("M", 1, 10)};
    const auto edited = changeRepeat(chart, "A", box("Leaf", 1, 2, 1, 3));
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->repeats[0].name, "Leaf");
    EXPECT_EQ(edited->repeats[0].firstRow, 1);
    EXPECT_EQ(edited->sizes[0].times, (std::map<std::string, int>{{"B", 7}, {"Leaf", 5}}));
    EXPECT_TRUE(edited->sizes[1].times.empty());
    chart.sizes[1].times = {{"Leaf", 9}};  // in vain: no repeat has that name yet
    EXPECT_EQ(changeRepeat(chart, "A", box("Leaf", 1, 2, 1, 3))->sizes[0].times.at("Leaf"), 5);
    EXPECT_EQ(changeRepeat(chart, "A", box("", 1, 2, 0, 2))->repeats[0].name, "A");
    EXPECT_EQ(changeRepeat(chart, "A", box("B", 1, 2, 0, 3)).error().message,
              "Two repeats are named B.");
    EXPECT_EQ(changeRepeat(chart, "C", box("C", 1, 2, 0, 3)).error().message,
              "The chart has no repeat C.");
    EXPECT_EQ(*changeRepeat(chart, "A", chart.repeats[0]), chart);
}

TEST(RemoveRepeat, DropsItsTimes) {
    Chart chart = blankChart(10, 4);
    chart.repeats = {box("A", 1, 2, 0, 3), box("B", 3, 4, 0, 3)};
    chart.sizes = {sized("S", 1, 10)};
    chart.sizes[0].times = {{"A", 5}, {"B", 7}};
    const auto edited = removeRepeat(chart, "A");
    ASSERT_TRUE(edited);
    ASSERT_EQ(edited->repeats.size(), 1U);
    EXPECT_EQ(edited->sizes[0].times, (std::map<std::string, int>{{"B", 7}}));
    EXPECT_EQ(removeRepeat(chart, "X").error().code, ErrorCode::NotFound);
}

TEST(SetRowRepeat, MustLieInTheChart) {
    const Chart chart = blankChart(3, 4);
    EXPECT_EQ(setRowRepeat(chart, RowRepeat{1, 3, 2, {}})->rowRepeat, (RowRepeat{1, 3, 2, {}}));
    EXPECT_EQ(*setRowRepeat(*setRowRepeat(chart, RowRepeat{}), std::nullopt), chart);
    for (const RowRepeat& outside :
         {RowRepeat{1, 4, 0, {}}, RowRepeat{-1, 2, 0, {}}, RowRepeat{3, 2, 0, {}}}) {
        EXPECT_EQ(setRowRepeat(chart, outside).error().message,
                  "The row repeat must cover rows of the chart, from its first upward.");
    }
}

}  // namespace
}  // namespace lacewright
