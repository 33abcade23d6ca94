#include "core/sheet/row_words.h"

#include "tests/core/sheet/sheet_probe.h"

namespace lacewright {
namespace {

using test::chartOf;

TEST(RowInWords, ARightSideRowIsToldFromTheRight) {
    EXPECT_EQ(rowInWords(chartOf({"k2tog yo k k"}), 0),
              "Row 1, right side: knit 2, yarn over, knit 2 together.");
}

TEST(RowInWords, AWrongSideRowIsToldFromTheLeftAndAsItIsWorkedThere) {
    const Chart chart = chartOf({"k k k k", "k k2tog yo p"});
    EXPECT_EQ(rowInWords(chart, 1),
              "Row 2, wrong side: purl 1, purl 2 together, yarn over, knit 1.");
}

TEST(RowInWords, ARoundHasNoSides) {
    Chart chart = chartOf({"k k k k", "k2tog k2tog yo yo"});
    chart.worked = Worked::InTheRound;
    EXPECT_EQ(rowInWords(chart, 1), "Round 2: yarn over 2 times, knit 2 together 2 times.");
}

TEST(RowInWords, NumbersRowsAsTheKnitterDoesAndSkipsNoStitch) {
    Chart chart = chartOf({"k k k", "no-stitch k yo"});
    chart.uncharted = Uncharted::Purl;
    EXPECT_EQ(rowInWords(chart, 1), "Row 3, right side: yarn over, knit 1.");
}

TEST(RowInWords, RepeatsStandInBracketsOnBothSides) {
    Chart chart = chartOf({"k yo k2tog k k", "k k p k k"});
    Repeat repeat;
    repeat.name = "A";
    repeat.right = 3;
    repeat.left = 4;
    repeat.lastRow = 1;
    chart.repeats = {repeat};
    EXPECT_EQ(rowInWords(chart, 0),
              "Row 1, right side: knit 2, [repeat A: knit 2 together, yarn over], knit 1.");
    EXPECT_EQ(rowInWords(chart, 1),
              "Row 2, wrong side: purl 1, [repeat A: purl 1, knit 1], purl 2.");
}

}  // namespace
}  // namespace lacewright
