#include "core/check/clean_edges.h"

#include "core/check/companions.h"
#include "tests/support/random_charts.h"

namespace lacewright {
namespace {

using test::chartOf;

TEST(CleanLines, AreThoseThatNoPairCrosses) {
    const Chart chart = chartOf({"k k2tog yo k yo ssk", "k*6"});
    EXPECT_EQ(cleanLines(chart), (std::vector<bool>{true, false, true, true, false, true, true}));
    EXPECT_EQ(cleanLines(blankChart(3, 2)), std::vector<bool>(4, true));
}

TEST(CleanLines, LetEveryRowObject) {
    const Chart chart = chartOf({"k k yo k2tog", "yo k2tog k k"});
    EXPECT_EQ(cleanLines(chart), (std::vector<bool>{true, false, true, false, true}));
}

TEST(CleanLines, SpareWhatTheSizeWorksOtherwise) {
    const Chart chart = chartOf({"k k yo k2tog", "k*4"});
    Size size;
    size.substitutions = {{0, 2, Edge::Start, "k", {}}};
    EXPECT_EQ(cleanLines(chart, size, Edge::Start), (std::vector<bool>(5, true)));
    EXPECT_EQ(cleanLines(chart, size, Edge::End), cleanLines(chart));
    EXPECT_FALSE(cleanLines(chart)[1]);
}

TEST(CleanLines, AreFoundNearAndBeyond) {
    const std::vector<bool> clean = {true, false, false, true, false, true};
    EXPECT_EQ(nearestClean(clean, 1), 0);
    EXPECT_EQ(nearestClean(clean, 2), 3);
    EXPECT_EQ(nearestClean(clean, 4), 3);
    EXPECT_EQ(nearestClean(clean, 9), 5);
    EXPECT_EQ(nextClean(clean, 0, 1), 3);
    EXPECT_EQ(nextClean(clean, 3, 1), 5);
    EXPECT_EQ(nextClean(clean, 5, 1), 5);
    EXPECT_EQ(nextClean(clean, 4, -1), 3);
    EXPECT_EQ(nextClean(clean, 0, -1), 0);
}

}  // namespace
}  // namespace lacewright
