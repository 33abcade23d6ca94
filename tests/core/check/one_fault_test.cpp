#include <gmock/gmock.h>

#include "core/check/advice.h"
#include "core/check/mend.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

// One wrong cell in a chart in which much goes on gives one fault: the one a technical editor would
// name, and nothing that only follows from it. All counts are worked out by hand beside the charts.
namespace lacewright {
namespace {

using test::chartOf;
using test::withSize;
using testing::ElementsAre;

// With advice, as the command line tells it.
std::vector<std::string> faultsOf(const Chart& chart) {
    Report report = check(chart);
    advise(chart, report);
    std::vector<std::string> messages;
    for (const Finding& finding : test::faultsOf(report)) messages.push_back(finding.message);
    return messages;
}

Repeat box(std::string name, int right, int left, int firstRow, int lastRow) {
    return {std::move(name), right, left, firstRow, lastRow, {}, {}};
}

// Boxes of 4, of 6 and of 4 again, the edges 10, 8 and 10: 12r + 14 suits all, as 3r + 1, 2r + 1
// and 3r + 1 repeats.
Chart stacked464(const std::string& ofA, const std::string& ofB, const std::string& ofC) {
    Chart chart = chartOf(
        {"k*9 " + ofA + " k", "k*14", "k*7 " + ofB + " k", "k*14", "k*9 " + ofC + " k", "k*14"});
    chart.repeats = {box("A", 2, 5, 0, 1), box("B", 2, 7, 2, 3), box("C", 2, 5, 4, 5)};
    chart.castOn = CastOn{12, 14};
    return chart;
}
constexpr auto kFour = "k k yo k2tog";
constexpr auto kSix = "yo k2tog k*2 ssk yo";

TEST(OneFault, StackedRepeatsOfSeveralWidthsFitOneCastOn) {
    EXPECT_THAT(faultsOf(stacked464(kFour, kSix, kFour)), ElementsAre());
}

TEST(OneFault, AWrongCellInTheLowestOfThreeStackedRepeatsIsToldThere) {
    // 1 + 1 + 1 + 2 taken: 5 in the box, 12r + 4 for it.
    EXPECT_THAT(faultsOf(stacked464("k k k k2tog", kSix, kFour)),
                ElementsAre("Row 1 works a repeat of 5 stitches, but the cast-on gives 12r + 14, "
                            "of which 10 lie outside it; it fits only when r leaves 3 on division "
                            "by 5: with 26 on the needle, 1 is left over."));
}

TEST(OneFault, AWrongCellInTheMiddleOneIsToldThere) {
    // 0 + 2 + 1 + 1 + 2 + 1 taken: 7 in the box, 12r + 6 for it.
    EXPECT_THAT(faultsOf(stacked464(kFour, "yo k2tog k*2 ssk k", kFour)),
                ElementsAre("Row 3 works a repeat of 7 stitches, but row 2 leaves 12r + 14, of "
                            "which 8 lie outside it; it fits only when r leaves 3 on division by "
                            "7: with 26 on the needle, 4 are left over."));
}

TEST(OneFault, AWrongCellInTheHighestOneIsToldThere) {
    EXPECT_THAT(faultsOf(stacked464(kFour, kSix, "k k k k2tog")),
                ElementsAre("Row 5 works a repeat of 5 stitches, but row 4 leaves 12r + 14, of "
                            "which 10 lie outside it; it fits only when r leaves 3 on division by "
                            "5: with 26 on the needle, 1 is left over."));
}

TEST(OneFault, ACastOnThatSuitsTheOuterRepeatsOnlyIsToldOnce) {
    Chart chart = stacked464(kFour, kSix, kFour);
    chart.castOn = CastOn{4, 14};
    EXPECT_THAT(faultsOf(chart),
                ElementsAre("Row 3 works a repeat of 6 stitches, but row 2 leaves 4r + 14, of "
                            "which 8 lie outside it; it fits only when r leaves 0 on division by "
                            "3: with 18 on the needle, 4 are left over."));
}

TEST(OneFault, OfThreeStackedRepeatsTwoWrongOnesAreTwoFaults) {
    EXPECT_EQ(faultsOf(stacked464("k k k k2tog", kSix, "k k k k2tog")).size(), 2U);
}

// In row 2 the box stands one column further left, its right edge the double decrease: 3 + 0 + 1 +
// 1 + 0 + 1 taken in it, 3 outside.
TEST(OneFault, AYarnOverLostBesideAJogThroughADoubleDecrease) {
    Chart chart = chartOf({"k*9", "k k yo k*2 yo s2kp k k", "k*9"});
    chart.repeats = {box("A", 2, 7, 0, 2)};
    chart.repeats[0].jogs[1] = Jog{1, 1};
    EXPECT_THAT(faultsOf(chart), ElementsAre());
    chart = chartOf({"k*9", "k k yo k*2 k s2kp k k", "k*9"});
    chart.repeats = {box("A", 2, 7, 0, 2)};
    chart.repeats[0].jogs[1] = Jog{1, 1};
    EXPECT_THAT(faultsOf(chart),
                ElementsAre("Row 2 takes 1 more in every repeat of A than row 1 leaves: 10 against "
                            "9 with one repeat, 17 against 15 with two."));
}

TEST(OneFault, AJogOnOneSideOnlyThroughADoubleDecrease) {
    // Columns 2 to 8: 1 + 3 + 0 + 1 + 1 + 0 + 1 = 7, and 2 outside.
    Chart chart = chartOf({"k*9", "k k yo k*2 yo s2kp k k", "k*9"});
    chart.repeats = {box("A", 2, 7, 0, 2)};
    chart.repeats[0].jogs[1] = Jog{0, 1};
    EXPECT_THAT(faultsOf(chart),
                ElementsAre("Row 2 takes 1 more in every repeat of A and 1 fewer outside than row "
                            "1 leaves: 16 against 15 with two repeats, 23 against 21 with three."));
}

// Three boxes of 4 and 7 stitches outside them.
Chart threeBoxes(const std::string& a, const std::string& b, const std::string& c) {
    Chart chart = chartOf({"k*19", "k*2 " + c + " k*2 " + b + " k*2 " + a + " k", "k*19"});
    chart.repeats = {box("A", 2, 5, 0, 2), box("B", 8, 11, 0, 2), box("C", 14, 17, 0, 2)};
    return chart;
}

TEST(OneFault, OfThreeRepeatsSideBySideTheOneThatIsWrongIsNamed) {
    const std::string right = "yo ssk k k";
    EXPECT_THAT(faultsOf(threeBoxes(right, right, right)), ElementsAre());
    EXPECT_THAT(faultsOf(threeBoxes(right, "k ssk k k", right)),
                ElementsAre("Row 2 takes 1 more in every repeat of B than row 1 leaves: 20 against "
                            "19 with one repeat of B, 25 against 23 with two."));
}

TEST(OneFault, AYarnOverInTheNextRepeatDoesNotMakeUpForIt) {
    // A has the yarn over that B lacks: with each worked once the numbers agree.
    const auto faults = faultsOf(threeBoxes("yo ssk yo k", "k ssk k k", "yo ssk k k"));
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_THAT(faults[0], testing::HasSubstr("1 fewer in every repeat of A and 1 more in every "
                                              "repeat of B than row 1 leaves"));
}

// Every four rows add 4 stitches: 5, 7, 7, 9 and again from 9.
Chart growing(const std::string& row2, const std::string& row4) {
    Chart chart =
        chartOf({"k no-stitch*2 k*3 no-stitch*2 k", row2, "k no-stitch k*5 no-stitch k", row4});
    chart.repeats = {box("A", 4, 5, 0, 3)};
    chart.rowRepeat = RowRepeat{0, 3, 4, {}};
    return chart;
}

TEST(OneFault, RowsThatGrowByWholeRepeatsFitAgain) {
    // 5 stitches become 9: two more repeats of 2.
    const Chart chart = growing("k no-stitch yo k*3 yo no-stitch k", "k yo k*5 yo k");
    EXPECT_THAT(faultsOf(chart), ElementsAre());
    EXPECT_EQ(check(chart).closes, true) << test::describe(check(chart));
}

TEST(OneFault, AnIncreaseLostWhereRowsGrowIsToldOnTheNextRow) {
    // Row 2 makes 6, row 3 takes 7; that rows no longer grow by 4 follows.
    EXPECT_THAT(faultsOf(growing("k no-stitch yo k*3 no-stitch no-stitch k", "k yo k*5 yo k")),
                ElementsAre("Row 3 takes 1 more than row 2 leaves, however often the repeat is "
                            "worked: 7 against 6 with one repeat, 9 against 8 with two."));
}

TEST(OneFault, AnIncreaseLostInTheLastRowIsAWarningAboutTheGrowth) {
    const Chart chart = growing("k no-stitch yo k*3 yo no-stitch k", "k yo k*5 no-stitch k");
    EXPECT_THAT(faultsOf(chart), ElementsAre());
    EXPECT_EQ(check(chart).closes, false);
}

TEST(OneFault, ACellWithoutAStitchInsideARepeatDrawnWrong) {
    // 7 cells, 6 stitches in the box of every row; row 2 has a yarn over where there is none.
    const std::string plain = "k k*3 no-stitch k*3 k";
    Chart chart = chartOf({plain, "k k k2tog yo no-stitch k*3 k", plain});
    chart.repeats = {box("A", 2, 8, 0, 2)};
    EXPECT_THAT(faultsOf(chart), ElementsAre());
    chart = chartOf({plain, "k k k2tog yo yo k*3 k", plain});
    chart.repeats = {box("A", 2, 8, 0, 2)};
    EXPECT_THAT(faultsOf(chart),
                ElementsAre("Row 3 takes 1 fewer in every repeat of A than row 2 leaves: 8 against "
                            "9 with one repeat, 14 against 16 with two."));
}

TEST(OneFault, APartialBoxBetweenPlainRows) {
    // The box of rows 2 to 4 stands on 14 plain stitches, of which 10 lie outside: worked once.
    Chart chart = chartOf({"k*14", "k*2 k2tog yo k*10", "k*14", "k*2 k2tog yo k*10", "k*14"});
    chart.repeats = {box("A", 9, 12, 1, 3)};
    EXPECT_THAT(faultsOf(chart), ElementsAre());
    chart = chartOf({"k*14", "k*2 k2tog yo k*10", "k*14", "k*2 k2tog k*11", "k*14"});
    chart.repeats = {box("A", 9, 12, 1, 3)};
    const auto faults = faultsOf(chart);
    ASSERT_EQ(faults.size(), 1U) << testing::PrintToString(faults);
    EXPECT_THAT(faults[0], testing::StartsWith("Row 4 takes 1 more"));
}

TEST(OneFault, ASizeWhoseEdgeCutsACableOnSeveralRows) {
    // Columns 4 to 7 hold the cable; S ends at column 5. Every row that is cut is told, for S
    // alone.
    Chart chart = chartOf({"k*3 c22l k*3", "k*10", "k*3 c22l k*3", "k*10"});
    withSize(chart, "S", 1, 5, 1);
    withSize(chart, "L", 1, 10, 1);
    EXPECT_THAT(
        faultsOf(chart),
        ElementsAre("Row 1, columns 4, 5, 6 and 7: the edge of size S cuts through the stitch.",
                    "Row 3, columns 4, 5, 6 and 7: the edge of size S cuts through the stitch."));
}

TEST(OneFault, ALostDecreaseIsOneFaultForEverySizeAndRowAbove) {
    // 8 stitches and a box of 6 all the way up; row 3 lacks its decrease and takes 7.
    Chart chart =
        chartOf({"k k*6 k", "k k*6 k", "k yo k*5 k", "k k*6 k", "k yo k2tog k*3 k k", "k k*6 k"});
    chart.repeats = {box("A", 2, 7, 0, 5)};
    for (const auto& [name, times] : {std::pair("S", 2), std::pair("M", 5), std::pair("L", 9)})
        withSize(chart, name, 1, 8, times);
    EXPECT_EQ(faultsOf(chart).size(), 1U);
}

const std::initializer_list<std::string> kYarnOverTwice = {"k*7 no-stitch*2", "k yo k yo2 k*3 yo k",
                                                           "k*9"};

TEST(OneFault, AStitchThatTakesAndMakesAnotherNumberIsToldWhereItStands) {
    // Row 2 adds two by design. A knit stitch of it became a double yarn over: the row takes one
    // fewer (6 of 7) and leaves one more (10), of which row 3 takes 9.
    const auto faults = test::faultsOf(check(chartOf(kYarnOverTwice)));
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].row, 2);
    ASSERT_EQ(faults[0].folded.size(), 1U);
    EXPECT_EQ(faults[0].folded[0].row, 3);
}

TEST(OneFault, ButTwoYarnOversOneAboveTheOtherAreTwo) {
    // Both rows lack a decrease: no one stitch of lace makes up for both.
    const auto faults = test::faultsOf(
        check(chartOf({"k*6", "k*2 yo k*3", "k*3 yo k*2", "k*6", "k*2 yo k2tog k*2", "k*6"})));
    ASSERT_EQ(faults.size(), 2U);
    EXPECT_EQ(faults[0].row, 2);
    EXPECT_EQ(faults[1].row, 3);
}

TEST(OneFault, ItsMendsLeaveNothingOfIt) {
    const Chart chart = chartOf(kYarnOverTwice);
    Report report = check(chart);
    advise(chart, report);
    const auto faults = test::faultsOf(report);
    ASSERT_EQ(faults.size(), 1U);
    ASSERT_FALSE(faults[0].mends.empty());
    for (const Mend& mend : faults[0].mends) {
        const auto mended = applyMend(chart, mend);
        ASSERT_TRUE(mended);
        EXPECT_TRUE(check(*mended).knittable) << mend.label;
    }
}

}  // namespace
}  // namespace lacewright
