#include "core/check/check.h"
#include "core/words/compare.h"
#include "core/words/writer.h"
#include "tests/core/words/reading.h"

// Texts of several sizes as one chart.
namespace lacewright {
namespace {

// "S 3..10 x7, M 2..11 x8": columns and times of the repeat of every size.
std::string sizesOf(const Chart& chart) {
    std::string out;
    for (const Size& size : chart.sizes) {
        out += (out.empty() ? "" : ", ") + size.name + " " + std::to_string(size.reach.start) +
               ".." + std::to_string(size.reach.end);
        if (size.times.contains("A")) out += " x" + std::to_string(size.times.at("A"));
        if (!size.changes.empty()) out += " and changes";
    }
    return out;
}

void expectSameKnitting(const Chart& chart, const std::string& text) {
    EXPECT_TRUE(check(chart).knittable) << text;
    const auto against = compareRows(chart, readWritten(text).pattern);
    ASSERT_TRUE(against) << against.error().message;
    EXPECT_TRUE(against->same()) << text;
    const auto written = writeRows(chart);
    ASSERT_TRUE(written) << written.error().message;
    const auto again = compareRows(chart, readWritten(written->text()).pattern);
    ASSERT_TRUE(again) << written->text();
    EXPECT_TRUE(again->same()) << written->text();
}

TEST(SizesFromRows, EdgesOfTheirOwnBeginAndEndAtColumnsOfTheirOwn) {
    const std::string text =
        "Sizes: S (M, L)\nCast on 20 (24, 28) sts.\n"
        "Row 1: K3 (4, 5), *yo, k2tog; rep from * to last 3 (4, 5) sts, k to end.\nRow 2: P.\n";
    const Chart chart = chartOfText(text);
    // Counted by hand: 20 = 3 + 7 x 2 + 3, 24 = 4 + 8 x 2 + 4, 28 = 5 + 9 x 2 + 5.
    EXPECT_EQ(sizesOf(chart), "S 3..10 x7, M 2..11 x8, L 1..12 x9");
    EXPECT_EQ(chart.width, 12);
    EXPECT_EQ(chart.points.size(), 6u);
    expectSameKnitting(chart, text);
}

TEST(SizesFromRows, WithoutARepeatTheMotifKeepsItsPlace) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 12 (16, 20)\nRow 1: k4 (6, 8), yo, k2tog, k to end\nRow 2: p\n"
        "Row 3: k3 (5, 7), yo, k2tog, yo, k2tog, k to end\n";
    const Chart chart = chartOfText(text);
    EXPECT_EQ(sizesOf(chart), "S 5..16, M 3..18, L 1..20");
    expectSameKnitting(chart, text);
}

TEST(SizesFromRows, ARepeatCountedBySizeIsTheBox) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 25 (33, 41)\nRow 1: k2, *yo, k2, sk2p, k2, yo, k1; rep from * 1 "
        "(2, 3) more times, k to end\nRow 2: k2, p to last 2 sts, k2\n";
    const Chart chart = chartOfText(text);
    EXPECT_EQ(sizesOf(chart), "S 1..17 x2, M 1..17 x3, L 1..17 x4");
    expectSameKnitting(chart, text);
}

TEST(SizesFromRows, ShapingMovesTheEdgesOnItsRows) {
    const std::string text =
        "Sizes: S (M)\nCast on: 8 (10)\nRow 1: k3 (4), yo, k2tog, k3 (4)\nRow 2: p\n"
        "Row 3: k3 (4), yo, k2, yo, k3 (4)\nRow 4: p\n";
    const Chart chart = chartOfText(text);
    ASSERT_EQ(chart.sizes.size(), 2u);
    expectSameKnitting(chart, text);
}

// A size that decreases at its own edge works a cell of the larger one otherwise.
TEST(SizesFromRows, ShapingAtEdgesOfTheirOwnIsSubstituted) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 20 (26, 34)\nRow 1: k5 (8, 12), yo, k2tog, k to end\n"
        "Row 2: p\nRow 3: k1, ssk, k to last 3 sts, k2tog, k1\nRow 4: p\n"
        "Row 5: k1, ssk, k to last 3 sts, k2tog, k1\n";
    const Chart chart = chartOfText(text);
    ASSERT_EQ(chart.sizes.size(), 3u);
    // A decrease at either edge of two rows, in each size but the largest.
    EXPECT_EQ(chart.sizes[0].substitutions.size(), 4u);
    EXPECT_EQ(chart.sizes[1].substitutions.size(), 4u);
    EXPECT_EQ(chart.sizes[2].substitutions.size(), 0u);
    expectSameKnitting(chart, text);
}

TEST(SizesFromRows, AnotherMotifIsRefusedWithItsRow) {
    const std::string text =
        "Sizes: S (M)\nCast on: 16 (20)\nRow 1: k\nRow 2: p\n"
        "Row 3: *k2 (3), yo, k2tog; rep from * to end\n";
    const auto drawn = chartFromRows(readWritten(text).pattern);
    ASSERT_FALSE(drawn);
    EXPECT_NE(drawn.error().message.find("size M repeats 5 stitches and size S 4"),
              std::string::npos);
    EXPECT_NE(drawn.error().message.find("draw one size at a time"), std::string::npos);
    EXPECT_TRUE(chartFromRows(readWritten(text).pattern, 0));
}

// Rows that do not mark the repeat are cut where the rows below them are.
TEST(SizesFromRows, ARepeatHiddenInPlainStitchesIsFollowedThroughTheFabric) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 24 (25, 25)\nWorked: round\n"
        // 1 (0, 1) + 2 x 3 (4, 1) + 5 x 3 (3, 4) + 2
        "Rnd 1: k1 (0, 1), [p1, k1 tbl] 3 (4, 1) times, *k1, p1, k1 tbl, k2; rep from * to last 2 "
        "sts, k2.\n"
        "Rnd 2: k7 (8, 3), *yo, k2tog, k3; rep from * to last 2 sts, k2.\n"
        "Rnd 3: k1 (0, 1), [yo, k2tog] 3 (4, 1) times, *k1, k2tog, yo, k2; rep from * to last 2 "
        "sts, "
        "k2.\n";
    const Chart chart = chartOfText(text);
    ASSERT_EQ(chart.repeats.size(), 2u);
    EXPECT_EQ(chart.width, 1 + 2 + 5 + 2);
    EXPECT_EQ(chart.repeats[0].right, 2);
    EXPECT_EQ(chart.repeats[0].left, 3);
    EXPECT_EQ(chart.repeats[1].right, 4);
    EXPECT_EQ(chart.repeats[1].left, 8);
    const int times[][2] = {{3, 3}, {4, 3}, {1, 4}};
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(chart.sizes[i].times.at("A"), times[i][0]);
        EXPECT_EQ(chart.sizes[i].times.at("B"), times[i][1]);
    }
    expectSameKnitting(chart, text);
}

// S reaches farther to the right, L to the left: the chart is as wide as both.
TEST(SizesFromRows, TheWidestEdgesNeedNotBeOfOneSize) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 24 (30, 38)\n"
        "Row 1: k5 (3, 2), *yo, k2, ssk; rep from * to last 3 (3, 4) sts, k to end.\n"
        "Row 2: p5 (5, 6), *yo, ssp, p2; rep from * to last 3 (1, 0) sts, p3 (1, 0).\n";
    const Chart chart = chartOfText(text);
    EXPECT_EQ(sizesOf(chart), "S 1..12 x4, M 3..12 x6, L 4..13 x8");
    expectSameKnitting(chart, text);
}

// S begins with the last two stitches of the repeat, L with a stitch beside it.
TEST(SizesFromRows, ASizeMayBeginWithinTheRepeat) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 19 (22, 28)\nWorked: round\n"
        // 2 + 5 x 3 + 2, 0 + 5 x 4 + 2, 1 + 5 x 5 + 2
        "Rnd 1: [k2tog, yo] 1 (0, 0) times, k0 (0, 1), *k3, k2tog, yo; rep from * to last 2 sts, "
        "k2.\n"
        "Rnd 2: [yo, ssk] 1 (0, 0) times, k0 (0, 1), *k3, yo, ssk; rep from * to last 2 sts, k2.\n";
    const Chart chart = chartOfText(text);
    EXPECT_EQ(chart.width, 1 + 5 + 2);
    EXPECT_EQ(sizesOf(chart), "S 5..8 x3, M 2..8 x4, L 1..8 x5");
    expectSameKnitting(chart, text);
}

TEST(SizesFromRows, RowsThatSizesRepeatOtherwiseAreTheRowRepeat) {
    const std::string text =
        "Sizes: S (M, L)\nCO 48 (56, 64) sts. Join in the round.\n"
        "Rnds 1 and 2: *k2, p2; rep from * around.\n"
        "Rnd 3: *k1, yo, k2, sk2p, k2, yo; rep from * around.\nRnd 4 and all even rnds: Knit.\n"
        "Rnd 5: *k2, yo, k1, sk2p, k1, yo, k1; rep from *.\nRep Rnds 3-6 3 (4, 5) more times.\n"
        "Next rnd: *k2, p2; rep from * around.\n";
    const auto drawn = chartFromRows(readWritten(text).pattern);
    ASSERT_TRUE(drawn) << drawn.error().message;
    // Rounds 1 to 6, of which 6 is one of the even ones, and the rib once more.
    EXPECT_EQ(drawn->chart.height(), 7);
    ASSERT_TRUE(drawn->chart.rowRepeat);
    EXPECT_EQ(drawn->chart.rowRepeat->firstRow, 2);
    EXPECT_EQ(drawn->chart.rowRepeat->lastRow, 5);
    EXPECT_EQ(drawn->remarks.back(),
              "Rows 3 to 6 are drawn once; the sizes work them 4 (5, 6) times.");
    expectSameKnitting(drawn->chart, text);
}

TEST(SizesFromRows, SizesOfOtherHeightsAreRefusedWithBoth) {
    const std::string text =
        "Sizes: S (M)\nCast on 20 (24) sts.\nRow 1: K.\nRow 2: P.\n"
        "Row 3: K2, ssk, k to last 4 sts, k2tog, k2.\nRow 4: P.\nRep last 2 rows 1 (2) more "
        "times.\n";
    const auto drawn = chartFromRows(readWritten(text).pattern);
    ASSERT_FALSE(drawn);
    EXPECT_EQ(drawn.error().message,
              "Size S works 6 rows and size M 8, so that one chart cannot show both: draw one size "
              "at a time.");
}

// The sizes differ at their edges; the star is worked 5 times in all of them.
TEST(SizesFromRows, ARepeatThatEverySizeWorksAsOftenIsABoxToo) {
    const std::string text =
        "Sizes: S (M, L)\nCast on 45 (55, 65) sts.\n"
        "Row 1: K5 (10, 15), pm, k2, *yo, ssk, k1, k2tog, yo, k1; rep from * 4 times more, k3, pm, "
        "k "
        "to end.\nRow 2: Purl.\n"
        "Row 3: K to m, sm, k2, *k1, yo, sk2p, yo, k2; rep from * 4 times more, k3, sm, k to "
        "end.\n";
    const Chart chart = chartOfText(text);
    EXPECT_EQ(chart.width, 15 + 2 + 6 + 3 + 15);
    EXPECT_EQ(sizesOf(chart), "S 11..31 x5, M 6..36 x5, L 1..41 x5");
    expectSameKnitting(chart, text);
}

}  // namespace
}  // namespace lacewright
