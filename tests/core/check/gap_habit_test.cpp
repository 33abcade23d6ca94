#include "core/check/gap_habit.h"

#include <gtest/gtest.h>

#include "core/check/advice.h"
#include "core/check/mend.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

namespace lacewright {
namespace {

using test::chartOf;

// An edge that grows by one stitch at its left end in every second row.
Chart growing() {
    return chartOf({"no-stitch*3 k*3 yo k*2", "no-stitch*3 k*6", "no-stitch*2 k*3 yo k*3",
                    "no-stitch*2 k*7", "no-stitch k*3 yo k*4", "no-stitch k*8"});
}

std::vector<float> oddsOf(const Chart& chart, int row) {
    const Alphabet alphabet = alphabetOf(chart);
    return gapOdds(LetterGrid(chart, alphabet, 0, chart.height() - 1), alphabet.noStitch, row);
}

TEST(GapHabit, AGapIsLikelyBetweenGapsAndUnlikelyBetweenStitches) {
    const auto odds = oddsOf(growing(), 2);  // row 3
    ASSERT_EQ(odds.size(), 9U);
    EXPECT_GT(odds[8], 2);
    EXPECT_LT(odds[3], -2);
    EXPECT_GT(odds[7], odds[6]);  // column 7 has a gap below it alone
    EXPECT_GT(odds[6], odds[5]);
}

TEST(GapHabit, OfAChartWithoutGapsNothingIsSaid) {
    EXPECT_TRUE(oddsOf(chartOf({"k yo k2tog", "k*3"}), 1).empty());
}

TEST(GapHabit, AStitchLostBeforeAnEdgeIsPutInWhereTheGapsThenStandRight) {
    Chart wrong = growing();
    // The yarn over of row 3 left out: what is left of it moved, and a knit stitch at the end.
    wrong.rows.replace(2, test::rowOf("k no-stitch*2 k*6"));
    Report report = check(wrong);
    advise(wrong, report);
    const auto faults = test::faultsOf(report);
    ASSERT_EQ(faults.size(), 1U);
    ASSERT_FALSE(faults[0].suspects.empty());
    EXPECT_EQ(faults[0].suspects[0].row, 3);
    const bool restored =
        std::any_of(faults[0].mends.begin(), faults[0].mends.end(), [&](const Mend& mend) {
            return applyMend(wrong, mend).value().row(2) == growing().row(2);
        });
    EXPECT_TRUE(restored);
}

}  // namespace
}  // namespace lacewright
