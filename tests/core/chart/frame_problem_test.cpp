#include <gtest/gtest.h>

#include "core/chart/edits.h"

namespace lacewright {
namespace {

std::string problemOf(const Chart& chart) {
    const auto problem = frameProblem(chart);
    return problem ? problem->message : "";
}

TEST(FrameProblem, FindsNothingInABlankChart) {
    EXPECT_EQ(problemOf(blankChart(1, 1)), "");
    EXPECT_EQ(problemOf(blankChart(1000, 1000)), "");
}

TEST(FrameProblem, NamesAChartThatIsEmptyOrTooLarge) {
    EXPECT_EQ(problemOf(Chart{}), "A chart has at least one row and one column.");
    EXPECT_EQ(problemOf(blankChart(kMaxWidth + 1, 1)),
              "A chart has at most 4000 columns, 4000 rows and 4000000 cells.");
    EXPECT_NE(problemOf(blankChart(4000, 1001)), "");
}

TEST(FrameProblem, NamesPointsOutsideOrNamedTwice) {
    Chart chart = blankChart(5, 2);
    chart.points = {{"A", 6, {}}};
    EXPECT_EQ(problemOf(chart), "Point A stands outside the chart.");
    chart.points = {{"A", 5, {}}, {"A", 4, {}}};
    EXPECT_EQ(problemOf(chart), "Two points are named A.");
    chart.points = {{"", 5, {}}};
    EXPECT_EQ(problemOf(chart), "Every point needs a name.");
    chart.points.assign(kMaxPoints + 1, {"A", 5, {}});
    EXPECT_EQ(problemOf(chart), "A chart holds at most 256 points.");
}

TEST(FrameProblem, CountsTimesWithinTheirLimit) {
    Chart chart = blankChart(5, 2);
    chart.repeats = {{"A", 1, 5, 0, 1, {}, {}}};
    Size size;
    size.name = "M";
    size.reach = {1, 5};
    size.times = {{"A", kMaxTimes}};
    chart.sizes = {size};
    EXPECT_EQ(problemOf(chart), "");
    chart.sizes[0].times["A"] = -1;
    EXPECT_EQ(problemOf(chart), "Size M must work repeat A 0 to 100000 times.");
}

}  // namespace
}  // namespace lacewright
