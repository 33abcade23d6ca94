#include "tests/core/words/reading.h"

// Little patterns as people write them today, invented here. The stitches after every row were
// counted by hand from the definitions of the stitches (Craft Yarn Council abbreviations).
namespace lacewright {
namespace {

struct Text {
    const char* name;
    const char* text;
    const char* counts;
    std::size_t size = 0;
};

void PrintTo(const Text& text, std::ostream* out) {
    *out << text.name;
}

class ModernTexts : public testing::TestWithParam<Text> {};

TEST_P(ModernTexts, CountAsByHand) {
    EXPECT_EQ(countsOf(GetParam().text, GetParam().size), GetParam().counts) << GetParam().text;
}

// What is knittable can be drawn.
TEST_P(ModernTexts, AreDrawn) {
    const ReadRows read = readWritten(GetParam().text);
    const auto drawn = chartFromRows(read.pattern, GetParam().size);
    EXPECT_TRUE(drawn) << drawn.error().message;
}

INSTANTIATE_TEST_SUITE_P(
    Texts, ModernTexts,
    testing::Values(
        Text{"NestedRepeats",
             "CO 27 sts.\nRow 1 (RS): K1, *[k2tog, yo] twice, k1; rep from * to last st, k1.\n"
             "Row 2 (WS): Purl.",
             "27 27"},
        Text{"TwoStarsInOneRow",
             "Cast on 24 sts\nRow 1: *k2, p2; rep from * once more, **yo, k2tog; rep from ** to "
             "last 2 sts, k2.",
             "24"},
        Text{"TwoStarsOneMark",
             "Cast on 25\nRow 1: *yo, k2tog; rep from * 5 more times, k1, *ssk, yo; rep from * 5 "
             "more times.",
             "25"},
        Text{"SizesInBrackets",
             "Sizes: S (M, L)\nCast on 20 (24, 28) sts.\nRow 1: K3 (4, 5), *yo, k2tog; rep from * "
             "to last 3 (4, 5) sts, k to end.\nRow 2: P.",
             "28 28", 2},
        Text{"SizesInSquareBrackets",
             "Sizes: S [M: L]\nCast on 20 [24: 28] sts.\nRow 1: K3 [4: 5], *yo, k2tog; rep from * "
             "to last 3 [4: 5] sts, k3 [4: 5].",
             "24", 1},
        Text{"SloppyPunctuation",
             "cast on 12\nrow 1) k1,,yo ,k2tog; .  k to last 3 sts ,ssk , yo,k1 .\nrow 2)purl",
             "12 12"},
        Text{"TypographicMarks",
             "Cast on 13 sts\nRow\xC2\xA0"
             "1\xE2\x80\x94K1, *yo, sl\xC2\xA0"
             "1\xE2\x80\x93k1\xE2\x80\x93psso, "
             "k1; rep from \xE2\x80\x98*\xE2\x80\x99 to end.\nRow\xC2\xA0"
             "2 \xE2\x80\x93 Purl.",
             "13 13"},
        Text{"CapitalLetters",
             "CAST ON 10\nROW 1: K2, YO, K2TOG, KNIT TO END.\nROW 2: PURL TO END.", "10 10"},
        Text{"WorkEven",
             "Cast on 10\nRow 1: k1, yo, k to last st, yo, k1. (12 sts)\nRow 2: purl\nRows 3-4: "
             "work even",
             "12 12 12 12"},
        Text{"RangesAndAsRow",
             "Cast on 12\nRow 1: k2, yo, k2tog, k to end\nRow 2: p\nRows 3-6: Knit.\nRow 7: As row "
             "1.\nRow 8: as Row 2.\nRep rows 1-8.",
             "12 12 12 12 12 12 12 12"},
        Text{"AllRightSideRows",
             "Cast on 12\nAll RS rows: k2, *yo, k2tog; rep from * to last 2 sts, k2\nAll WS rows: "
             "purl\nRep rows 1-4.",
             "12 12 12 12"},
        Text{"ListedRounds",
             "CO 12, join in the round.\nRnd 1: *yo, k2tog; rep from * around.\nRnds 2, 4, 6: "
             "Knit.\nRnd 3: *ssk, yo; rep from * around.\nRnd 5: as rnd 1",
             "12 12 12 12 12 12"},
        Text{"EveryFollowingAlternateRow",
             "Cast on 9\nRow 1: k1, yo, k to end\nRow 2 and every foll alt row: purl\nRow 3: k1, "
             "yo, k to end\nRow 5: k2tog, k to end",
             "10 10 11 11 10 10"},
        Text{"RepBetweenStars",
             "Cast on 14\nRow 1: k1, *k2tog, yo, k2*, rep between *s to last st, k1", "14"},
        Text{"MultiSizeCounts",
             "Cast on 10 (12, 14)\nRow 1: k3 (4, 5), yo, k2tog, k to end\nRow 2: p10 (12, 14)",
             "12 12", 1},
        Text{"BracketTwice", "Cast on 8\nRow 1: k2, (k1, yo) twice, k to end. [10 sts]", "10"},
        Text{"StarsToEnd", "Cast on 18\nRow 1: *k2, p2* to last 2 sts, k2", "18"},
        Text{"TimesSign", "Cast on 11\nRow 1: k1, [yo, k2tog] x 4, k2", "11"},
        Text{"DecreaseTwice", "Cast on 10\nRow 1: k3, k2tog twice, k3 (8 sts)", "8"},
        Text{"HyphenatedDecrease", "Cast on 9\nRow 1: k2, yo, sl1-k2tog-psso, yo, k4\nRow 2: purl",
             "9 9"},
        Text{"RaglanRow", "Cast on 20\nRow 1: k1, ssk, k to last 3 sts, k2tog, k1.\nRow 2: p",
             "18 18"},
        Text{"BindOffThenWork",
             "Cast on 12\nRow 1: bo 3 sts, k to end (9 sts)\nRow 2: p\nRow 3: Bind off 2 sts, "
             "[yo, k2tog] to last st, k1.",
             "9 9 7"},
        Text{"BindOffAtBeginnings",
             "Cast on 20\nRow 1: k\nRow 2: p\nRows 3-4: BO 3 sts at beg of row, work to end.",
             "20 20 17 14"},
        Text{"BindOffAtTheNextRows",
             "Cast on 20\nRow 1: k\nRow 2: p\nBO 3 sts at beg of next 2 rows.\nRow 5: k",
             "20 20 17 14 14"},
        Text{"UkWording",
             "Cast on 10 sts\n1st row: K1, yfwd, sl 1, k1, psso, k to last 3 sts, k2tog, yfwd, "
             "k1.\n2nd row: P to end.\n3rd row: Cast off 2 sts, k to end.",
             "10 10 8"},
        Text{"DoubleYarnOver",
             "Cast on 8\nRow 1: k2, k2tog, yo twice, ssk, k2\nRow 2: p3, (p1, k1) into double yo, "
             "p3",
             "8 8"},
        Text{"SetUpAndNextRows",
             "Cast on 8\nSet-up row (WS): purl.\nNext row (RS): k1, yo, k to last st, yo, k1. — 10 "
             "sts\nNext row: purl.",
             "8 10 10"},
        Text{"Markers",
             "Cast on 12\nRow 1: k3, pm, [yo, k2tog] 3 times, pm, k3.\nRow 2: p to m, sm, p to m, "
             "sm, p3",
             "12 12"},
        Text{"IncreasesWithNames",
             "Cast on 6\nRow 1: k1, M1L, k to last st, M1R, k1\nRow 2: purl\nRow 3: kfb, k to last "
             "2 sts, kfb, k1",
             "8 8 10"},
        Text{"EndWith",
             "Cast on 11\nRow 1: *k1, p1; rep from *, end k1.\nRow 2: *p1, k1; rep from "
             "* to last st, p1.",
             "11 11"},
        Text{"StatedWrong", "Cast on 8\nRow 1: k1, yo, k to end (10 sts)", "9!"},
        Text{"WrongRest", "Cast on 20\nRow 1: k2, *yo, k2tog; rep from * to last 4 sts, k2",
             "2m + 4 row 1"},
        Text{"RowsWorkedAgain",
             "Cast on 5\nRow 1: k2, yo, k to end\nRow 2: purl\nRep last 2 rows 4 more times (10 "
             "sts)\nRow 11: k10",
             "6 6 10 x4"},
        Text{"DashOfSizes",
             "Sizes: S (M, L)\nCast on 12 (14, 16)\nRow 1: k2 (-, 2), [yo, k2tog] 5 (7, 7) times",
             "14", 1},
        Text{"AmpersandRows", "Cast on 6\nRows 1 & 3: k\nRows 2 & 4: p", "6 6 6 6"},
        Text{"SlipMarkerRound", "Cast on 16\nRnd 1: [k2, yo, ssk] around, sm\nRnd 2: k around",
             "16 16"},
        Text{"RepeatsOfABracket", "Cast on 14\nRow 1: k1, (yo, k2tog, k1) 4 times, k1", "14"},
        Text{"PlainWords",
             "Cast on 9\nRow 1: Knit one, yarn over, knit two together, knit to the last three "
             "stitches, slip slip knit, yarn over, knit one.\nRow 2: Purl to the end.",
             "9 9"}),
    [](const auto& text) { return std::string(text.param.name); });

}  // namespace
}  // namespace lacewright
