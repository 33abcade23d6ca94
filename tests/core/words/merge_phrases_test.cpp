#include "core/words/merge_phrases.h"

#include <gtest/gtest.h>

#include "core/words/writer.h"
#include "tests/support/charts.h"

// Rows of several sizes in one line. What each size works is counted along its columns by hand.
namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;
using test::withSize;

std::string rowOne(const Chart& chart) {
    const Result<WrittenChart> text = writeRows(chart);
    return text ? text->lines.front().text() : text.error().message;
}

TEST(MergePhrases, SizesThatDifferInNumbersShareTheWords) {
    Chart chart = chartOf({"k*3 yo ssk yo ssk yo ssk k*3"});
    withSize(chart, "S", 3, 9, 1);  // 1 edge stitch on the right, the left one ends within the lace
    withSize(chart, "M", 2, 10, 1);
    withSize(chart, "L", 1, 12, 1);
    EXPECT_EQ(rowOne(chart), "Row 1 (RS): k1 (2, 3), [ssk, yo] 3 times, k0 (1, 3).");
}

TEST(MergePhrases, ASizeWithMoreCopiesOfAFigureHasALargerNumber) {
    Chart chart = chartOf({"k k*2 ssk yo k*2 ssk yo k*2 ssk yo k"});
    withSize(chart, "S", 1, 5, 1);
    withSize(chart, "M", 1, 9, 1);
    withSize(chart, "L", 1, 14, 1);
    EXPECT_EQ(rowOne(chart), "Row 1 (RS): [k1, yo, ssk, k1] 1 (2, 3) times, k1 (1, 2).");
}

TEST(MergePhrases, ARepeatStaysTogetherWhateverItsTimes) {
    // A, the starred one, is worked most often; B once, twice and three times.
    Chart chart = chartOf({"k yo ssk k yo k k2tog k"});
    withRepeat(withRepeat(chart, "A", 2, 4), "B", 6, 7);
    for (const auto& [name, a, b] : {std::tuple{"S", 4, 1}, {"M", 5, 2}, {"L", 6, 3}}) {
        Size& size = withSize(chart, name, 1, 8, a);
        size.times = {{"A", a}, {"B", b}};
    }
    EXPECT_EQ(rowOne(chart),
              "Row 1 (RS): k1, *k2tog, k1, yo; rep from * to last 4 (6, 8) sts, k1, "
              "[ssk, yo] 1 (2, 3) times, k1.");
}

TEST(MergePhrases, APlainRepeatIsCountedWithItsNeighbours) {
    Chart chart = chartOf({"k yo ssk k*2 k k2tog yo"});
    withRepeat(withRepeat(chart, "A", 1, 2), "B", 4, 5);
    for (const auto& [name, a, b] : {std::tuple{"S", 4, 1}, {"M", 5, 2}}) {
        Size& size = withSize(chart, name, 1, 8, a);
        size.times = {{"A", a}, {"B", b}};
    }
    // After A: k1, then k2 once or twice, ssk, yo, k1.
    EXPECT_EQ(rowOne(chart),
              "Row 1 (RS): *yo, k2tog; rep from * to last 6 (8) sts, k3 (5), ssk, "
              "yo, k1.");
}

TEST(MergePhrases, PartsThatOnlySomeSizesWorkStandInBrackets) {
    Chart chart = chartOf({"k yo ssk k*2"});
    withSize(chart, "S", 1, 2, 1);
    withSize(chart, "M", 1, 5, 1);
    EXPECT_EQ(rowOne(chart), "Row 1 (RS): k2, [ssk, yo, k1] 0 (1) times.");
}

}  // namespace
}  // namespace lacewright
