#include <gmock/gmock.h>

#include "core/check/proven.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

// What is cast on against what row 1 takes: over the whole width, where repeats side by side share
// the stitches, and for each size.
namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;
using test::withSize;
using testing::ElementsAre;

std::vector<std::string> messages(const Chart& chart, Severity severity, const std::string& rule) {
    std::vector<std::string> all;
    for (const Finding& finding : check(chart).findings) {
        if (finding.severity == severity && finding.rule == rule) all.push_back(finding.message);
    }
    return all;
}

// Repeats of 4 and of 6 stitches side by side.
Chart fourAndSix() {
    Chart chart = chartOf({"k*10", "k*10"});
    withRepeat(chart, "A", 1, 4);
    withRepeat(chart, "B", 5, 10);
    return chart;
}

TEST(CastOn, ThatTwoRepeatsNeverMakeUpIsAFault) {
    Chart chart = fourAndSix();
    chart.castOn = CastOn{0, 15};
    EXPECT_THAT(messages(chart, Severity::Fault, "cast-on"),
                ElementsAre("Row 1 works repeats of 4 and 6 stitches, but the cast-on gives 15: 1 "
                            "is left over."));
    chart.castOn = CastOn{0, 2};  // even, but less than either
    EXPECT_THAT(messages(chart, Severity::Fault, "cast-on"),
                ElementsAre("Row 1 works repeats of 4 and 6 stitches, but the cast-on gives 2: 2 "
                            "are left over."));
    chart.castOn = CastOn{6, 1};  // 7, 13, 19 ...: all odd
    EXPECT_THAT(messages(chart, Severity::Fault, "cast-on"),
                ElementsAre("Row 1 works repeats of 4 and 6 stitches, but the cast-on gives 6r + "
                            "1; it never fits, whatever r is: with 7 on the needle, 1 is left "
                            "over."));
}

TEST(CastOn, ThatTwoRepeatsShareIsTold) {
    Chart chart = fourAndSix();
    chart.castOn = CastOn{0, 40};  // 4 x 10 + 6 x 0, 4 x 7 + 6 x 2, 4 x 4 + 6 x 4, 4 x 1 + 6 x 6
    EXPECT_THAT(messages(chart, Severity::Note, "continuity"),
                ElementsAre("Row 1 fits only with repeats A and B taking 40 stitches together."));
    EXPECT_EQ(provenSentence(chart, check(chart)),
              "Proven with the repeats worked as often as the notes say.");
    chart.castOn = CastOn{0, 10};  // 4 + 6 and no other way
    EXPECT_THAT(messages(chart, Severity::Note, "continuity"),
                ElementsAre("Row 1 fits only with repeat A worked once.",
                            "Row 1 fits only with repeat B worked once."));
}

TEST(CastOn, SharedByTwoRepeatsHoldsForAThirdAboveThem) {
    Chart chart = fourAndSix();
    chart.repeats[0].lastRow = chart.repeats[1].lastRow = 0;
    withRepeat(chart, "C", 1, 5);
    chart.repeats[2].firstRow = 1;
    chart.rows.replace(1, chartOf({"k*10"}).rows[0]);
    // Row 2 works 5 again and again and 5 more: what is cast on is a multiple of 5.
    chart.castOn = CastOn{10, 0};
    EXPECT_TRUE(check(chart).knittable) << test::describe(check(chart));
    EXPECT_EQ(check(chart).closes, true);
    // 4A + 6B = 12: A is 3 or 0, and 12 is no multiple of 5.
    chart.castOn = CastOn{12, 0};
    const auto faults = messages(chart, Severity::Fault, "continuity");
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_THAT(faults[0], testing::HasSubstr("with 12 on the needle, 2 are left over"));
}

TEST(CastOn, OfARowWithoutARepeatIsToldInItsOwnTerms) {
    Chart chart = chartOf({"k*8", "k*8"});
    chart.castOn = CastOn{6, 2};
    EXPECT_THAT(messages(chart, Severity::Fault, "cast-on"),
                ElementsAre("Row 1 works no repeat and always takes 8, but the cast-on gives 6r + "
                            "2; it fits only when r is 1."));
}

TEST(CastOn, OfAFixedNumberGivesTheNumbersOnTheNeedle) {
    // 3 x 6 + 2 are cast on, so A is worked 3 times, and row 2 takes 3 x 5 + 2 of them.
    Chart chart = chartOf({"k*8", "k k*2 yo k*3 k", "k*8"});
    withRepeat(chart, "A", 2, 7);
    chart.castOn = CastOn{0, 20};
    EXPECT_THAT(messages(chart, Severity::Fault, "continuity"),
                ElementsAre("Row 2 takes 1 fewer in every repeat of A than row 1 leaves: 17 "
                            "against 20."));
}

TEST(CastOn, HoldsForEverySizeThatSaysNothingElse) {
    Chart chart = chartOf({"k*10", "k*10"});
    withRepeat(chart, "A", 1, 6);
    chart.castOn = CastOn{0, 40};
    withSize(chart, "S", 1, 10, 6);  // 4 + 6 x 6
    withSize(chart, "M", 1, 10, 7);
    EXPECT_THAT(messages(chart, Severity::Fault, "size-count"),
                ElementsAre("Size M: row 1 takes 46 stitches, but 40 are cast on; working repeat A "
                            "6 times gives 40."));
    chart.sizes[1].stitches = 46;
    EXPECT_THAT(messages(chart, Severity::Fault, "size-count"), ElementsAre());
    EXPECT_THAT(messages(chart, Severity::Warning, "size-count"),
                ElementsAre("Size M: row 1 takes 46 stitches as expected, but 40 are cast on."));
    chart.castOn = CastOn{6, -1};
    EXPECT_THAT(messages(chart, Severity::Warning, "size-count"),
                ElementsAre("Size M: row 1 takes 46 stitches as expected, but the cast-on is a "
                            "multiple of 6 minus 1."));
    EXPECT_THAT(messages(chart, Severity::Fault, "size-count"),
                ElementsAre("Size S: row 1 takes 40 stitches, which is not a multiple of 6 minus "
                            "1."));
    chart.castOn = CastOn{6, 4};
    EXPECT_THAT(messages(chart, Severity::Warning, "size-count"), ElementsAre());
    chart.sizes[0].times["A"] = 0;  // 4 is a multiple of 6, none of them, plus 4
    EXPECT_THAT(messages(chart, Severity::Fault, "size-count"), ElementsAre());
}

TEST(Closing, NamesRoundsInTheRound) {
    Chart chart = chartOf({"k*4", "k yo k*2"});
    chart.worked = Worked::InTheRound;
    chart.rowRepeat = RowRepeat{0, 1, 0, {}};
    EXPECT_THAT(messages(chart, Severity::Fault, "continuity"),
                ElementsAre("Round 2 takes 1 fewer than round 1 leaves: 3 against 4."));
    chart.rows.replace(1, chartOf({"k yo k kfb"}).rows[0]);
    chart.rows.replace(0, chartOf({"k*3 no-stitch"}).rows[0]);
    // Round 2 takes 3 and makes 5, round 1 takes 3.
    EXPECT_THAT(messages(chart, Severity::Warning, "closing"),
                ElementsAre("Round 2 leaves 2 more than round 1 takes, so the rows cannot be "
                            "worked again as drawn."));
}

}  // namespace
}  // namespace lacewright
