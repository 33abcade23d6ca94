#include <gmock/gmock.h>

#include "core/check/advice.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

// Charts in which much goes on at once: the verdict, and what a knitter reads.
namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;
using test::withSize;

std::vector<std::string> faultMessages(const Chart& chart) {
    std::vector<std::string> messages;
    for (const Finding& finding : check(chart).findings) {
        if (finding.severity == Severity::Fault) messages.push_back(finding.message);
    }
    return messages;
}

Repeat box(std::string name, int right, int left, int firstRow, int lastRow) {
    Repeat repeat;
    repeat.name = std::move(name);
    repeat.right = right;
    repeat.left = left;
    repeat.firstRow = firstRow;
    repeat.lastRow = lastRow;
    return repeat;
}

// Repeats of 6 and of 4 stitches one above the other: only some numbers of stitches suit both.
Chart stacked() {
    Chart chart = chartOf({"k yo k*2 k2tog k*2 k*6", "k*13", "k yo k2tog k*2 k*8", "k*13"});
    chart.repeats = {box("A", 1, 6, 0, 1), box("B", 1, 4, 2, 3)};
    return chart;
}

TEST(HardCharts, StackedRepeatsOfDifferentWidthsFitOnlyForSomeNumbers) {
    Chart chart = stacked();
    chart.castOn = CastOn{6, 7};
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre("Row 3 works a repeat of 4 stitches, but row 2 leaves 6r + 7, "
                                     "of which 9 lie outside it; it fits only when r leaves 1 on "
                                     "division by 2: with 19 on the needle, 2 are left over."));
    chart.castOn = CastOn{12, 13};
    EXPECT_THAT(faultMessages(chart), testing::ElementsAre());
}

TEST(HardCharts, TwoRepeatsSideBySideAreEachProvenOnTheirOwn) {
    Chart chart = chartOf({"k*12", "k yo k2tog k*2 k yo k ssk k*2 k"});
    chart.repeats = {box("A", 2, 6, 0, 1), box("B", 8, 11, 0, 1)};
    EXPECT_THAT(faultMessages(chart), testing::ElementsAre());
    chart = chartOf({"k*12", "k yo k*3 k k2tog k ssk yo k k"});
    chart.repeats = {box("A", 2, 6, 0, 1), box("B", 8, 11, 0, 1)};
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre(
                    "Row 2 takes 1 more in every repeat of A and 1 fewer in every repeat of B than "
                    "row 1 leaves: 18 against 17 with two repeats, 24 against 22 with three."));
}

TEST(HardCharts, OfTwoRepeatsTheOneThatIsOutGivesTheExample) {
    // With every repeat worked once the counts agree by chance: B has one more, the edge one fewer.
    Chart chart = chartOf({"k*10", "k yo k2tog k*3 yo k2tog k*2"});
    chart.repeats = {box("A", 2, 4, 0, 1), box("B", 6, 8, 0, 1)};
    EXPECT_THAT(
        faultMessages(chart),
        testing::ElementsAre(
            "Row 2 takes 1 more in every repeat of B and 1 fewer outside than row 1 leaves: "
            "14 against 13 with two repeats of B, 18 against 16 with three."));
}

TEST(HardCharts, ARowThatTakesNothingIsOneFault) {
    EXPECT_THAT(faultMessages(chartOf({"k*6", "no-stitch*6", "k*6"})),
                testing::ElementsAre("Row 2 takes 6 fewer than row 1 leaves: 0 against 6."));
    EXPECT_THAT(faultMessages(chartOf({"k*6", "yo*6"})),
                testing::ElementsAre("Row 2 takes 6 fewer than row 1 leaves: 0 against 6."));
}

TEST(HardCharts, NothingIsWorkedAfterEverythingIsBoundOff) {
    EXPECT_THAT(faultMessages(chartOf({"k*6", "bo*6"})), testing::ElementsAre());
    EXPECT_THAT(faultMessages(chartOf({"k*6", "bo*6", "k*6"})),
                testing::ElementsAre("Row 3 takes 6 more than row 2 leaves: 6 against 0."));
}

TEST(HardCharts, ARepeatThatHoldsNoStitchOnARowLeavesItsStitchesOut) {
    Chart chart = chartOf({"k*6", "k no-stitch*4 k"});
    chart.repeats = {box("A", 2, 5, 0, 1)};
    EXPECT_THAT(
        faultMessages(chart),
        testing::ElementsAre("Row 2 takes 4 fewer in every repeat of A than row 1 leaves: 2 "
                             "against 6 with one repeat, 2 against 10 with two."));
}

TEST(HardCharts, PairsPartedBetweenTwoRepeatsHoldForOneNumberEachOnly) {
    Chart chart = chartOf({"k*10", "k*2 yo k*4 k2tog k*2"});
    chart.repeats = {box("A", 7, 9, 0, 1), box("B", 3, 5, 0, 1)};
    const auto messages = faultMessages(chart);
    ASSERT_EQ(messages.size(), 1U);
    EXPECT_THAT(messages[0], testing::HasSubstr("in every repeat of A and 1 "));
    EXPECT_THAT(messages[0], testing::HasSubstr("in every repeat of B than row 1 leaves"));
}

TEST(HardCharts, ACastOnOfEverySecondNumberOfRepeatsFits) {
    Chart chart = chartOf({"k*7", "k*2 yo sk2p yo k*2"});
    chart.repeats = {box("A", 3, 5, 0, 1)};
    chart.castOn = CastOn{6, 4};
    EXPECT_THAT(faultMessages(chart), testing::ElementsAre());
    chart.castOn = CastOn{6, 5};
    EXPECT_EQ(faultMessages(chart).size(), 1U);
}

TEST(HardCharts, AJogOnOneSideOnlyChangesWhatTheRepeatHolds) {
    Chart chart = chartOf({"k*9", "k*9"});
    chart.repeats = {box("A", 3, 6, 0, 1)};
    chart.repeats[0].jogs[1] = Jog{1, 1};
    EXPECT_THAT(faultMessages(chart), testing::ElementsAre());
    chart.repeats[0].jogs[1] = Jog{0, 1};
    EXPECT_THAT(
        faultMessages(chart),
        testing::ElementsAre(
            "Row 2 takes 1 more in every repeat of A and 1 fewer outside than row 1 leaves: "
            "14 against 13 with two repeats, 19 against 17 with three."));
}

TEST(HardCharts, ARowRepeatWhoseBoxGrowsCannotBeWorkedAgain) {
    Chart chart = chartOf({"k no-stitch k no-stitch k", "k yo k yo k"});
    chart.repeats = {box("A", 2, 4, 0, 1)};
    chart.rowRepeat = RowRepeat{0, 1, 2, {}};
    EXPECT_TRUE(check(chart).knittable) << test::describe(check(chart));
    EXPECT_EQ(check(chart).closes, false);
    // The same growth beside the box is two more repeats of one stitch.
    chart = chartOf({"k no-stitch k*3 no-stitch k", "k yo k*3 yo k"});
    chart.repeats = {box("A", 4, 4, 0, 1)};
    chart.rowRepeat = RowRepeat{0, 1, 2, {}};
    EXPECT_EQ(check(chart).closes, true) << test::describe(check(chart));
}

TEST(HardCharts, ARepeatThatCutsAWideStitchExplainsWhatDoesNotFit) {
    Chart chart = chartOf({"k*8", "k c22l k*3"});
    chart.repeats = {box("A", 2, 5, 0, 1)};
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre(
                    "Row 2, columns 4, 5, 6 and 7: the edge of repeat A cuts through the stitch."));
}

TEST(HardCharts, AJogThroughADoubleDecreaseHoldsForEveryNumber) {
    // In row 2 the box stands one column further left; its right edge is the double decrease, which
    // takes a loop that the row below counted outside.
    Chart chart = chartOf({"k*9", "k k yo k*2 yo s2kp k k", "k*9"});
    chart.repeats = {box("A", 2, 7, 0, 2)};
    chart.repeats[0].jogs[1] = Jog{1, 1};
    EXPECT_TRUE(check(chart).knittable) << test::describe(check(chart));
    chart.repeats[0].jogs[1] = Jog{2, 1};
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre(
                    "Row 2 takes 3 fewer in every repeat of A and 3 more outside than row 1 "
                    "leaves: 12 against 15 with two repeats, 15 against 21 with three."));
}

TEST(HardCharts, ASizeThatCutsAWideStitchIsToldSoOnce) {
    Chart chart = chartOf({"k*3 c22l k*3", "k*10"});
    withSize(chart, "S", 1, 5, 1);
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre(
                    "Row 1, columns 4, 5, 6 and 7: the edge of size S cuts through the stitch."));
}

TEST(HardCharts, ARowRepeatThatGrowsByWholeRepeatsCloses) {
    // Two more with every time the rows are worked, which is one more repeat of two.
    Chart chart = chartOf({"k no-stitch k*2 no-stitch k", "k yo k*2 yo k"});
    withRepeat(chart, "A", 3, 4);
    chart.rowRepeat = RowRepeat{0, 1, 2};
    EXPECT_TRUE(check(chart).knittable) << test::describe(check(chart));
    EXPECT_EQ(check(chart).closes, true) << test::describe(check(chart));
    chart.rowRepeat->grows = 3;
    EXPECT_EQ(check(chart).closes, false);
    EXPECT_THAT(test::describe(check(chart)),
                testing::StartsWith(
                    "warning closing: Row 2 leaves 2 more than row 1 takes (the chart declares 3 "
                    "more each time), so the rows cannot be worked again as drawn."));
}

TEST(HardCharts, NoStitchCellsInsideARepeatChangeNothing) {
    Chart chart = chartOf({"k k*5 k", "k k no-stitch k2tog k*2 k", "k k no-stitch k*3 k"});
    withRepeat(chart, "A", 2, 6);
    EXPECT_THAT(faultMessages(chart), testing::ElementsAre());
}

TEST(HardCharts, ABoxThatChangesItsWidthByDesignIsKnittable) {
    Chart chart = chartOf({"k no-stitch k*4 no-stitch k", "k yo k*4 yo k", "k*8"});
    withRepeat(chart, "A", 2, 7);
    EXPECT_THAT(faultMessages(chart), testing::ElementsAre());
    EXPECT_EQ(check(chart).rows[1].forms.makes, AffineForm(2).add(0, 6));
    chart = chartOf({"k no-stitch k*4 no-stitch k", "k yo k*4 yo k", "k*6 no-stitch k"});
    withRepeat(chart, "A", 2, 7);
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre("Row 3 takes 1 fewer in every repeat of A than row 2 leaves: "
                                     "7 against 8 with one repeat, 12 against 14 with two."));
}

TEST(HardCharts, ACastOnThatNeverFitsSaysSo) {
    Chart chart = chartOf({"k*6 k"});
    chart.repeats = {box("A", 2, 7, 0, 0)};
    chart.castOn = CastOn{6, 2};
    EXPECT_THAT(
        faultMessages(chart),
        testing::ElementsAre(
            "Row 1 works a repeat of 6 stitches, but the cast-on gives 6r + 2, of which 1 lies "
            "outside it; it never fits, whatever r is: with 8 on the needle, 1 is left over."));
}

TEST(HardCharts, ARepeatAboveAPlainRowFitsForOneNumberOfTimesOnly) {
    Chart chart = chartOf({"k*14", "k*3 k*4 k*7"});
    chart.repeats = {box("A", 4, 7, 1, 1)};
    const Report report = check(chart);
    EXPECT_TRUE(report.knittable);
    EXPECT_FALSE(report.anyTimes);
    ASSERT_EQ(report.findings.size(), 1U);
    EXPECT_EQ(report.findings[0].message, "Row 2 fits only with repeat A worked once.");
    chart.repeats[0].firstRow = 0;
    EXPECT_TRUE(check(chart).anyTimes);
    EXPECT_TRUE(check(chart).findings.empty());
}

TEST(HardCharts, OfThreeSizesOnlyTheWrongOneIsNamed) {
    Chart chart = chartOf({"k*6 k", "k yo k2tog k*3 k"});
    chart.repeats = {box("A", 2, 7, 0, 1)};
    withSize(chart, "S", 1, 7, 2).stitches = 13;
    withSize(chart, "M", 1, 7, 3).stitches = 20;
    withSize(chart, "L", 1, 7, 4).stitches = 25;
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre("Size M: row 1 takes 19 stitches, but 20 are expected; the "
                                     "nearest counts its repeat can give are 19 and 25."));
}

TEST(HardCharts, OneWrongCellIsOneFaultWhateverTheRowsAndSizes) {
    Chart chart = chartOf({"k k*6 k", "k yo k k2tog ssk k yo k", "k k*6 k",
                           "k k k k2tog ssk yo k k", "k k*6 k", "k yo k k2tog ssk k yo k"});
    withRepeat(chart, "A", 2, 7);
    withSize(chart, "S", 1, 8, 2);
    withSize(chart, "M", 1, 8, 3);
    withSize(chart, "L", 1, 8, 4);
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre("Row 4 takes 1 more in every repeat of A than row 3 leaves: 9 "
                                     "against 8 with one repeat, 16 against 14 with two."));
}

TEST(HardCharts, UnchartedRowsAreCountedAsTheyPresentThemselves) {
    Chart chart = chartOf({"k k*6 k", "k yo k*5 k"});
    withRepeat(chart, "A", 2, 7);
    chart.uncharted = Uncharted::AsTheyPresent;
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre("Row 3 takes 1 fewer in every repeat of A than row 2 leaves: "
                                     "7 against 8 with one repeat, 12 against 14 with two."));
}

TEST(HardCharts, FlatAndRoundAgreeOnCounts) {
    Chart chart = chartOf({"k k*6 k", "k yo k*2 k2tog k*2 k", "k k*4 k k2tog k"});
    withRepeat(chart, "A", 2, 7);
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre("Row 3 takes 1 more in every repeat of A than row 2 leaves: 9 "
                                     "against 8 with one repeat, 16 against 14 with two."));
    chart.worked = Worked::InTheRound;
    EXPECT_THAT(
        faultMessages(chart),
        testing::ElementsAre("Round 3 takes 1 more in every repeat of A than round 2 leaves: 9 "
                             "against 8 with one repeat, 16 against 14 with two."));
}

TEST(HardCharts, RepeatsThatShareColumnsAreNamedOnce) {
    Chart chart = chartOf({"k*6", "k*6"});
    chart.repeats = {box("A", 1, 3, 0, 1), box("B", 3, 5, 0, 1)};
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre("Repeats A and B share columns in row 1; a stitch can belong "
                                     "to one of them only."));
}

TEST(HardCharts, AStitchThatASizeCutsAtBothEdgesIsToldOnce) {
    Chart chart = chartOf({"k*5", "k*2 c21r"});
    withSize(chart, "S", 2, 2, 1);  // only the middle one of the stitch's three cells
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre(
                    "Row 2, columns 1, 2 and 3: the edge of size S cuts through the stitch."));
    // The size begins with a repeat that it works no time: of the stitch there is nothing to cut.
    chart = chartOf({"k*5", "k*2 c21r"});
    withRepeat(chart, "A", 3, 3);
    withSize(chart, "S", 3, 5, 0);
    EXPECT_THAT(faultMessages(chart),
                testing::ElementsAre(
                    "Row 2, columns 1, 2 and 3: the edge of repeat A cuts through the stitch."));
}

}  // namespace
}  // namespace lacewright
