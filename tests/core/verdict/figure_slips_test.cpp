#include "core/verdict/figure_slips.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/judged_text.h"

// Wrong numbers put into texts by hand, and what is said of them. Counts follow from the
// definitions of the stitches (Craft Yarn Council abbreviations); the texts are invented.
namespace lacewright {
namespace {

using test::findingOf;
using test::judged;
using test::judgedInAllSizes;
using test::labelsOf;

TEST(FigureSlips, OneNumberOfAListOfSizesMayBeWrong) {
    // 2 x 24 + 36 = 84 in the third size, as cast on; the others are 68 and 76.
    const Report report = judgedInAllSizes(
        "Sizes: S (M, L)\nCast on 68 (76, 84) sts.\nRow 1: k20 (22, 24), p28 (32, 34), k20 (22, "
        "24).\nRow 2: purl.\n");
    const Finding* fault = findingOf(report, "cast-on");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(fault->sizes, std::vector<std::string>{"L"});
    EXPECT_EQ(labelsOf(fault).front(),
              "Row 1: work p28 (32, 36) instead of p28 (32, 34), from stitch 25 on");
}

TEST(FigureSlips, TheCastOnMayBeWrong) {
    // Ribs of 4 and a lace of 8 divide 48, 56 and 64.
    const Report report = judgedInAllSizes(
        "Sizes: S (M, L)\nCast on 48 (54, 64) sts, join.\nRnd 1: *k2, p2; rep from * to end.\n"
        "Rnd 2: *yo, ssk, k3, k2tog, yo, k1; rep from * to end.\nRnd 3: knit.\n");
    const Finding* fault = findingOf(report, "cast-on");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(labelsOf(fault).front(), "Cast on 48 (56, 64) sts instead of 48 (54, 64)");
    EXPECT_EQ(fault->folded.size(), 1U);  // round 2, which the same mend makes fit
    EXPECT_EQ(findingOf(report, "continuity"), nullptr);
}

TEST(FigureSlips, SoMayThatOfAPieceBehindTheFirst) {
    const Report report = judged(
        "Bonnet\nCast on 60 sts.\nRow 1: *k1, p1; rep from * to end.\nRow 2: purl.\n\nMittens\n"
        "Cast on 34 sts.\nRow 1: *k2, p2; rep from * to end.\n"
        "Row 2: k1, *yo, k2tog, k1; rep from * to last st, k1.\n");
    const Finding* fault = findingOf(report, "cast-on");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(labelsOf(fault).front(), "Cast on 32 sts instead of 34");
}

TEST(FigureSlips, ACountThatARowIsSaidToLeaveMayBeWrong) {
    const std::string rows =
        "Cast on 8 sts and join.\nRnd 1: *yo, k1; rep from * around. (16 sts)\nRnd 2: *yo, k2; rep "
        "from * around. (%)\nRnd 3: *yo, k3; rep from * around. (32 sts)\n";
    std::string text = rows;
    const Report wrong = judged(text.replace(text.find('%'), 1, "26 sts"));
    const Finding* said = findingOf(wrong, "stated-count");
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(said->message, "Round 2 says that 26 stitches remain, but it leaves 24.");
    EXPECT_EQ(labelsOf(said).front(), "Rnd 2: say 24 sts instead of 26");
}

// 48 (52) - 8 = 40 (44); two fewer in row 3, then in each of 3 (4) times more.
std::string sleeveCap(const std::string& again) {
    return "Sizes: S (M, L)\nCast on 48 (52, 56) sts.\nRow 1: BO 4 sts, k to end.\n"
           "Row 2: BO 4 sts, p to end. 40 (44, 48) sts.\n"
           "Row 3: K2, ssk, k to last 4 sts, k2tog, k2. 38 (42, 46) sts.\nRow 4: Purl.\n" +
           again + "\nRow 5: Knit.\n";
}

TEST(FigureSlips, HowOftenRowsAreWorkedAgainMayBeWrong) {
    const Report right =
        judgedInAllSizes(sleeveCap("Rep last 2 rows 3 (4, 5) times more. 32 (34, 36) sts."));
    EXPECT_EQ(findingOf(right, "stated-count"), nullptr);
    const Report wrong =
        judgedInAllSizes(sleeveCap("Rep last 2 rows 3 (3, 5) times more. 32 (34, 36) sts."));
    const Finding* said = findingOf(wrong, "stated-count");
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(said->sizes, std::vector<std::string>{"M"});
    EXPECT_EQ(labelsOf(said).front(), "Rows 3 to 4: work again 3 (4, 5) times instead of 3 (3, 5)");
}

TEST(FigureSlips, SoMayTheCountTheyAreSaidToLeave) {
    const Report report =
        judgedInAllSizes(sleeveCap("Rep last 2 rows 3 (4, 5) times more. 32 (35, 36) sts."));
    ASSERT_NE(findingOf(report, "stated-count"), nullptr);
    EXPECT_EQ(labelsOf(findingOf(report, "stated-count")),
              std::vector<std::string>{
                  "Rows 3 to 4, worked again: say 32 (34, 36) sts instead of 32 (35, 36)"});
}

TEST(FigureSlips, AListMayBeForTheSizesInScopeAlone) {
    const auto text = [](const std::string& figures) {
        return "Sizes: S (M, L)\nCast on 30 (34, 38) sts.\nRow 1: Knit.\nSizes M and L only:\n"
               "Row 2: P" +
               figures + ", p2tog, yo, p to end.\nAll sizes:\nRow 3: Knit.\n";
    };
    EXPECT_FALSE(judgedInAllSizes(text("5 (6)")).hasFault());
    EXPECT_TRUE(readWritten(text("5 (6, 7, 8)")).hasErrors());
    EXPECT_TRUE(judgedInAllSizes(text("5 (37)")).hasFault());  // 37 + 2 are more than the 38 of L
}

}  // namespace
}  // namespace lacewright
