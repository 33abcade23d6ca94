#include "core/words/named_repeats.h"

#include <gtest/gtest.h>

#include "core/words/compare.h"
#include "core/words/writer.h"
#include "tests/core/words/reading.h"
#include "tests/support/charts.h"

// Several repeats on one row, each with a count of its own. Counts are worked by hand from the
// definitions of the stitches (Craft Yarn Council abbreviations).
namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;

const std::string kHeading =
    "Cast on: 4 for each A plus 3 for each B plus 5\nRepeats: A, B (each any number of times)\n";

Chart twoRepeats() {
    // From the right: 1 edge, A of 4, 2 between, B of 3, 2 at the left edge.
    Chart chart = chartOf({"k*2 ssk yo k k*2 k k2tog yo k k", "k*12"});
    withRepeat(withRepeat(chart, "A", 2, 5), "B", 8, 10);
    return chart;
}

TEST(NamedRepeats, ARowKeepsEachCountApart) {
    EXPECT_EQ(countsOf(kHeading + "Row 1: k1, [yo, k2tog, k2] A times, k2, [ssk, yo, k1] B times, "
                                  "k2.\nRow 2: purl.\n"),
              "4A + 3B + 5 4A + 3B + 5");
    // One more stitch in every A.
    EXPECT_EQ(verdictOf(kHeading + "Row 1: k1, [yo, k4] A times, k2, [k3] B times, k2.\nRow 2: k1, "
                                   "[k4] A times, k2, [k3] B times, k2.\n"),
              "row 2");
}

TEST(NamedRepeats, StarsAndWordsSayTheSame) {
    const char* const rows[] = {"k1, *k4; rep from * A times in all, k2, [k3] B times, k2",
                                "k1, *k4* a times, k2, (k3) b times in all, k2",
                                "k1, [k4] A times, k to last 3 sts, k3"};
    for (const char* row : rows)
        EXPECT_EQ(verdictOf(kHeading + "Row 1: " + row + ".\n"), "yes") << row;
}

TEST(NamedRepeats, ANameThatIsNotDeclaredIsNoCount) {
    EXPECT_NE(errorsOf("Row 1: k1, [k4] A times, k2.\n"), "");
    EXPECT_EQ(errorsOf("Repeats: A\nRow 1: k1, [k4] A times, k2.\n"), "");
    // Words after "Repeats:" and "for each" are no names.
    const ReadRows read = readWritten("Cast on 12 for each sock.\nRow 1: k.\n");
    EXPECT_TRUE(read.pattern.counts.empty());
    EXPECT_EQ(read.pattern.castOn->of(0).plus, 12);
}

TEST(NamedRepeats, TheWholeWidthIsWrittenByName) {
    const Result<WrittenChart> text = writeRows(twoRepeats());
    ASSERT_TRUE(text) << text.error().message;
    EXPECT_EQ(text->heading[0], "Cast on: 4 for each A plus 3 for each B plus 5");
    EXPECT_EQ(text->heading[2], "Repeats: A, B (each any number of times, the same on every row)");
    EXPECT_EQ(text->lines[0].text(),
              "Row 1 (RS): k1, [k1, yo, k2tog, k1] A times, k2, [k1, yo, ssk] B times, k2.");
    EXPECT_EQ(text->lines[1].text(), "Row 2 (WS): purl.");
    // Words still point at their cells.
    const auto& pieces = text->lines[0].pieces;
    const auto ssk = std::find_if(pieces.begin(), pieces.end(),
                                  [](const TextPiece& piece) { return piece.text == "ssk"; });
    ASSERT_NE(ssk, pieces.end());
    EXPECT_EQ(text->lines[0].columns[ssk->first], 10);
}

TEST(NamedRepeats, ARepeatThatTakesNoStitchesIsWrittenByNameToo) {
    Chart chart = chartOf({"k yo k"});
    withRepeat(chart, "A", 2, 2);
    const Result<WrittenChart> text = writeRows(chart);
    ASSERT_TRUE(text) << text.error().message;
    EXPECT_EQ(text->lines[0].text(), "Row 1 (RS): k1, [yo] A times, k1.");
}

TEST(NamedRepeats, NamesThatAreNoLettersBecomeLetters) {
    Chart chart = twoRepeats();
    chart.repeats[0].name = "leaf";
    EXPECT_EQ(repeatNames(chart), (std::vector<std::string>{"A", "B"}));
    chart.repeats[0].name = "Q";
    EXPECT_EQ(repeatNames(chart), (std::vector<std::string>{"Q", "B"}));
}

TEST(NamedRepeats, TextBecomesAChartWithAsManyRepeats) {
    const std::string text =
        kHeading +
        "Row 1: k1, [k1, yo, k2tog, k1] A times, k2, [k1, yo, ssk] B times, k2.\n"
        "Row 2: p.\nRow 3: k1, [yo, k2tog, k2] A times, k2, [ssk, yo, k1] B times, k2.\n";
    const auto drawn = chartFromRows(readWritten(text).pattern);
    ASSERT_TRUE(drawn) << drawn.error().message;
    const Chart& chart = drawn->chart;
    ASSERT_EQ(chart.repeats.size(), 2u);
    EXPECT_EQ(chart.width, 12);
    EXPECT_EQ(chart.repeats[0].name, "A");
    EXPECT_EQ((std::vector<int>{chart.repeats[0].right, chart.repeats[0].left,
                                chart.repeats[1].right, chart.repeats[1].left}),
              (std::vector<int>{2, 5, 8, 10}));
    EXPECT_TRUE(chart.repeats[0].jogs.empty());  // the purl row is cut where its neighbours are
    ASSERT_TRUE(chart.castOn);
    EXPECT_EQ(chart.castOn->multiple, 1);  // what 4 and 3 have in common
    EXPECT_EQ(chart.castOn->plus, 5);
    EXPECT_TRUE(compareRows(chart, readWritten(text).pattern)->same());
}

TEST(NamedRepeats, RepeatsInAnotherOrderCannotBeOneChart) {
    const std::string text =
        "Repeats: A, B\nRow 1: [k4] A times, [k3] B times.\n"
        "Row 2: [p4] A times, [p3] B times.\n";
    const auto drawn = chartFromRows(readWritten(text).pattern);  // row 2 begins at the left edge
    ASSERT_FALSE(drawn);
    EXPECT_NE(drawn.error().message.find("in another order"), std::string::npos);
}

TEST(NamedRepeats, ComparingTellsWhichCountsShowTheDifference) {
    const auto differing = [](const std::string& row) {
        const auto comparison = compareRows(
            twoRepeats(), readWritten(kHeading + "Row 1: " + row + ".\nRow 2: p.\n").pattern);
        return comparison->same() ? std::string("none")
                                  : comparison->differences.front().repeatsWorked;
    };
    EXPECT_EQ(differing("k1, [k1, yo, k2tog, k1] A times, k2, [k1, yo, ssk] B times, k2"), "none");
    EXPECT_EQ(differing("k1, [k1, yo, k2tog, k1] A times, k2, [k2tog, yo, k1] B times, k2"),
              "A once and B once");
    // The last A alone is another: with one A nothing shows but that.
    EXPECT_EQ(differing("k2, yo, k2tog, k1, k2, [k1, yo, ssk] B times, k2"), "A twice and B once");
}

TEST(NamedRepeats, SizesWithTwoRepeatsShareOneChart) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 27 (31, 41)\n"
        "Row 1: k1, [yo, k1, sk2p, k1, yo, k1] 2 (2, 3) times, k2, *yo, ssk, k2; rep from * to "
        "last 4 sts, k4.\nRow 2: purl.\n"
        "Row 3: k1, [k2, yo, sk2p, yo, k1] 2 (2, 3) times, k2, [k1, yo, ssk, k1] 2 (3, 4) times, "
        "k4.\nRow 4: k2, p to last 2 sts, k2.\n";
    const auto drawn = chartFromRows(readWritten(text).pattern);
    ASSERT_TRUE(drawn) << drawn.error().message;
    ASSERT_EQ(drawn->chart.repeats.size(), 2u);
    // 27 = 1 + 2 x 6 + 2 + 2 x 4 + 4 and so on.
    const std::vector<std::vector<int>> times = {{2, 2}, {2, 3}, {3, 4}};
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(drawn->chart.sizes[i].times.at("A"), times[i][0]);
        EXPECT_EQ(drawn->chart.sizes[i].times.at("B"), times[i][1]);
    }
    const Result<WrittenChart> again = writeRows(drawn->chart);
    ASSERT_TRUE(again) << again.error().message;
    EXPECT_EQ(again->lines[3].text(), "Row 4 (WS): k2, p to last 2 sts, k2.");
    EXPECT_EQ(chartFromRows(readWritten(again->text()).pattern)->chart, drawn->chart);
}

}  // namespace
}  // namespace lacewright
