#include <gmock/gmock.h>

#include "core/check/mend.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

// The counts that sizes expect against what row 1 takes.
namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;
using test::withSize;
using testing::ElementsAre;

std::vector<Finding> misses(const Chart& chart) {
    std::vector<Finding> all;
    for (const Finding& finding : check(chart).findings) {
        if (finding.severity == Severity::Fault && finding.rule == "size-count")
            all.push_back(finding);
    }
    return all;
}

std::vector<std::string> messages(const Chart& chart) {
    std::vector<std::string> all;
    for (const Finding& finding : misses(chart)) all.push_back(finding.message);
    return all;
}

// Three sizes of 4 + 6 x 2, x 3 and x 4 stitches, as row 1 was meant.
Chart threeSizes(const std::string& row) {
    Chart chart = chartOf({row});
    withRepeat(chart, "A", 3, 8);
    for (const auto& [name, times] : {std::pair("S", 2), std::pair("M", 3), std::pair("L", 4)})
        withSize(chart, name, 1, 10, times).stitches = 4 + 6 * times;
    return chart;
}

TEST(ExpectedCounts, OfEverySizeAreOneFaultWhereARepeatIsDrawnWrong) {
    EXPECT_THAT(messages(threeSizes("k*10")), ElementsAre());
    // A knit stitch of the repeat became a yarn over: 5 stitches each time instead of 6.
    const Chart chart = threeSizes("k*2 k*3 yo k*2 k*2");
    EXPECT_THAT(messages(chart),
                ElementsAre("Row 1 takes 1 fewer in every repeat of A than the sizes expect: 14 "
                            "against 16 (S), 19 against 22 (M), 24 against 28 (L)."));
    const Finding finding = misses(chart).front();
    EXPECT_THAT(finding.columns, ElementsAre(3, 4, 5, 6, 7, 8));
    EXPECT_THAT(finding.sizes, ElementsAre("S", "M", "L"));
    ASSERT_EQ(finding.mends.size(), 1U);
    EXPECT_EQ(finding.mends[0].label,
              "Expect 14 stitches in size S, 19 in size M and 24 in size L");
    const auto mended = applyMend(chart, finding.mends[0]);
    ASSERT_TRUE(mended);
    EXPECT_THAT(messages(*mended), ElementsAre());
}

TEST(ExpectedCounts, OfEverySizeAreOneFaultWhereAnEdgeIsDrawnWrong) {
    EXPECT_THAT(messages(threeSizes("k2tog k k*6 k*2")),
                ElementsAre("Sizes S, M and L: row 1 takes 1 more than expected: 17 against 16 "
                            "(S), 23 against 22 (M), 29 against 28 (L)."));
    // Size L ends beside the wrong stitch and does not work it.
    Chart chart = threeSizes("k2tog k k*6 k*2");
    chart.sizes[2].reach.end = 9;
    chart.sizes[2].stitches = 27;
    EXPECT_THAT(messages(chart), ElementsAre("Sizes S and M: row 1 takes 1 more than expected: 17 "
                                             "against 16 (S), 23 against 22 (M)."));
}

TEST(ExpectedCounts, AreToldOneByOneWhereTimesExplainThem) {
    Chart chart = threeSizes("k*10");
    chart.sizes[0].stitches = 22;
    chart.sizes[1].stitches = 28;
    EXPECT_THAT(messages(chart),
                ElementsAre("Size S: row 1 takes 16 stitches, but 22 are expected; working repeat "
                            "A 3 times gives 22.",
                            "Size M: row 1 takes 22 stitches, but 28 are expected; working repeat "
                            "A 4 times gives 28."));
    chart.sizes[1].stitches = 23;  // 22 or 28
    EXPECT_EQ(misses(chart).size(), 2U);
}

TEST(ExpectedCount, IsHadByTwoRepeatsWhereOneIsNotEnough) {
    Chart chart = chartOf({"k*10"});
    withRepeat(chart, "A", 1, 4);
    withRepeat(chart, "B", 5, 10);
    withSize(chart, "S", 1, 10, 1).stitches = 20;  // 10 more: 4 + 6
    EXPECT_THAT(messages(chart),
                ElementsAre("Size S: row 1 takes 10 stitches, but 20 are expected; working repeats "
                            "A twice and B twice gives 20."));
    const auto mended = applyMend(chart, misses(chart).front().mends[0]);
    ASSERT_TRUE(mended);
    EXPECT_THAT(messages(*mended), ElementsAre());
}

TEST(ExpectedCount, BelowWhatLiesOutsideTheRepeatsIsToldSo) {
    Chart chart = chartOf({"k*10"});
    withRepeat(chart, "A", 1, 6);
    withSize(chart, "S", 1, 10, 1).stitches = 3;
    EXPECT_THAT(messages(chart),
                ElementsAre("Size S: row 1 takes 10 stitches, but 3 are expected; it cannot take "
                            "fewer than 4."));
    chart.sizes[0].stitches = 5;  // 4 without the repeat, 10 with one
    EXPECT_THAT(messages(chart),
                ElementsAre("Size S: row 1 takes 10 stitches, but 5 are expected; the nearest "
                            "counts its repeat can give are 4 and 10."));
    chart.worked = Worked::InTheRound;
    EXPECT_THAT(messages(chart),
                ElementsAre("Size S: round 1 takes 10 stitches, but 5 are expected; the nearest "
                            "counts its repeat can give are 4 and 10."));
}

}  // namespace
}  // namespace lacewright
