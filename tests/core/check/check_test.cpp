#include "core/check/check.h"

#include <gmock/gmock.h>

#include "core/check/mend.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

namespace lacewright {
namespace {

using namespace lacewright::test;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

Finding only(const Report& report, Severity severity) {
    Finding found;
    int count = 0;
    for (const Finding& finding : report.findings) {
        if (finding.severity == severity) {
            found = finding;
            ++count;
        }
    }
    EXPECT_EQ(count, 1) << describe(report);
    return found;
}

// A feather pattern: edge stitch, a repeat of 6 in columns 2..7, edge stitch.
Chart feather() {
    Chart chart =
        chartOf({"k k*6 k", "k yo k k2tog ssk k yo k", "k k*6 k", "k k yo k2tog ssk yo k k"});
    return withRepeat(chart, "A", 2, 7);
}

TEST(Check, ProvesAChartForEveryNumberOfRepeats) {
    const Report report = check(feather());
    EXPECT_TRUE(report.knittable) << describe(report);
    EXPECT_EQ(report.closes, true);
    EXPECT_EQ(report.rows[1].forms.takes, AffineForm(2).add(0, 6));
    EXPECT_THAT(report.findings, ElementsAre()) << describe(report);
}

TEST(Check, TellsADriftInPlainNumbers) {
    const Chart chart = [] {
        Chart c = chartOf({"k k*6 k", "k yo k k2tog k k yo k", "k k*6 k"});
        return withRepeat(c, "A", 2, 7);
    }();
    const Finding fault = only(check(chart), Severity::Fault);
    EXPECT_EQ(fault.rule, "continuity");
    EXPECT_EQ(fault.row, 2);
    EXPECT_EQ(
        fault.message,
        "Row 2 takes 1 fewer in every repeat of A than row 1 leaves: 7 against 8 with one repeat, "
        "12 against 14 with two.");
    EXPECT_THAT(fault.columns, ElementsAre(2, 3, 4, 5, 6, 7));
}

TEST(Check, TellsEdgesThatAreOff) {
    Chart chart = chartOf({"k k*6 k", "k k*6 k2tog"});
    withRepeat(chart, "A", 2, 7);
    const Finding fault = only(check(chart), Severity::Fault);
    EXPECT_EQ(fault.message,
              "Row 2 takes 1 more than row 1 leaves, however often the repeat is worked: 9 against "
              "8 with one "
              "repeat, 15 against 14 with two.");
    EXPECT_THAT(fault.columns, ElementsAre(1, 8));
}

TEST(Check, WithoutRepeatsTheNumbersStandAlone) {
    const Finding fault = only(check(chartOf({"k*5", "k2tog k*4"})), Severity::Fault);
    EXPECT_EQ(fault.message, "Row 2 takes 1 more than row 1 leaves: 6 against 5.");
}

TEST(Check, OneDroppedStitchIsOneFault) {
    // Row 2 has lost a knit stitch: it takes and makes one too few.
    const Report report = check(chartOf({"k*6", "no-stitch k*5", "k*6", "k*6"}));
    const Finding fault = only(report, Severity::Fault);
    EXPECT_EQ(fault.row, 2);
    ASSERT_EQ(fault.folded.size(), 1U);
    EXPECT_EQ(fault.folded[0].row, 3);
}

TEST(Check, NoStitchCellsChangeNothing) {
    Chart chart = chartOf({"k*4 no-stitch*2", "k k2tog k no-stitch*3", "k*3 no-stitch*3"});
    const Report with = check(chart);
    const Report without = check(chartOf({"k*4", "k k2tog k no-stitch", "k*3 no-stitch"}));
    EXPECT_TRUE(with.knittable) << describe(with);
    EXPECT_EQ(with.closes, false);
    for (std::size_t r = 0; r < 3; ++r) EXPECT_EQ(with.rows[r].forms, without.rows[r].forms);
}

TEST(Check, HoldsRowOneAgainstTheCastOn) {
    Chart chart = feather();
    chart.castOn = CastOn{6, 2};
    EXPECT_TRUE(check(chart).knittable);
    chart.castOn = CastOn{12, 2};
    EXPECT_TRUE(check(chart).knittable);  // every second number of repeats
    chart.castOn = CastOn{6, 3};
    const Finding fault = only(check(chart), Severity::Fault);
    EXPECT_EQ(fault.rule, "cast-on");
    EXPECT_EQ(fault.row, 1);
    chart.castOn = CastOn{4, 2};
    EXPECT_THAT(only(check(chart), Severity::Fault).message,
                HasSubstr("fits only when r leaves 0 on division by 3"));
    chart.castOn = CastOn{0, 20};
    EXPECT_TRUE(check(chart).knittable);
    chart.castOn = CastOn{0, 21};
    EXPECT_EQ(
        only(check(chart), Severity::Fault).message,
        "Row 1 works a repeat of 6 stitches, but the cast-on gives 21, of which 2 lie outside it: "
        "1 is left over.");
}

TEST(Check, ARowRepeatClosesOrGrowsAsDeclared) {
    Chart chart = chartOf({"k yo k yo k", "k*5"});
    chart.rowRepeat = RowRepeat{0, 1, 0};
    Report report = check(chart);
    EXPECT_TRUE(report.knittable);
    EXPECT_EQ(report.closes, false);
    EXPECT_EQ(only(report, Severity::Warning).message,
              "Row 2 leaves 2 more than row 1 takes, so the rows cannot be worked again as drawn.");
    chart.rowRepeat->grows = 2;
    report = check(chart);
    EXPECT_EQ(report.closes, true);
}

TEST(Check, SaysWhenAShapeGrowsByWholeRepeats) {
    Chart chart = chartOf({"k yo k*2 yo k", "k*6"});
    withRepeat(chart, "A", 3, 4);
    chart.rowRepeat = RowRepeat{0, 1, 0};
    EXPECT_THAT(only(check(chart), Severity::Warning).message,
                HasSubstr("Worked again it has 1 repeat of A more each time."));
}

TEST(Check, StackedRepeatsOfDifferentWidth) {
    // Rows 1-2 repeat 6 stitches, rows 3-4 repeat 3: twice as often, less one for the wider edge.
    Chart chart = chartOf({"k*8", "k*8", "k*8", "k*8"});
    chart.repeats.push_back({"A", 2, 7, 0, 1, {}, {}});
    chart.repeats.push_back({"B", 2, 4, 2, 3, {}, {}});
    EXPECT_TRUE(check(chart).knittable) << describe(check(chart));
    // 6n + 2 are there, and 4m + 4 are taken: only for every second n.
    chart.repeats[1].left = 5;
    const Finding fault = only(check(chart), Severity::Fault);
    EXPECT_EQ(fault.row, 3);
    EXPECT_THAT(fault.message, HasSubstr("leaves 1 on division by 2"));
}

TEST(Check, AJogThatKeepsTheCountsIsNoFault) {
    // Row 3 moves the box one column to the left: the double decrease reaches over its edge.
    Chart chart = chartOf({"k k*6 k k", "k k*6 k k"});
    withRepeat(chart, "A", 2, 7);
    chart.repeats[0].jogs[1] = {1, 1};
    const Report report = check(chart);
    EXPECT_TRUE(report.knittable) << describe(report);
    const Finding marker = only(report, Severity::Note);
    EXPECT_EQ(marker.rule, "marker");
    EXPECT_EQ(marker.message,
              "Row 2: the marker before repeat A moves 1 stitch to the left as seen from the right "
              "side.");
    chart.repeats[0].jogs[1] = {1, 0};  // the left edge stays: the box is one stitch narrower
    EXPECT_FALSE(check(chart).knittable);
}

TEST(Check, EachSizeFollowsItsOwnPath) {
    Chart chart = feather();
    withSize(chart, "S", 1, 8, 3).stitches = 20;
    withSize(chart, "M", 1, 8, 5).stitches = 33;
    const Report report = check(chart);
    const Finding fault = only(report, Severity::Fault);
    EXPECT_EQ(fault.rule, "size-count");
    EXPECT_THAT(fault.sizes, ElementsAre("M"));
    EXPECT_EQ(fault.message,
              "Size M: row 1 takes 32 stitches, but 33 are expected; the nearest counts its repeat "
              "can give are "
              "32 and 38.");
    chart.sizes[1].stitches = 38;
    EXPECT_EQ(
        only(check(chart), Severity::Fault).message,
        "Size M: row 1 takes 32 stitches, but 38 are expected; working repeat A 6 times gives 38.");
    // Work the repeat as often as gives 38, or expect the 32 that it takes.
    const std::vector<Mend> mends = only(check(chart), Severity::Fault).mends;
    ASSERT_EQ(mends.size(), 2U);
    for (const Mend& mend : mends) EXPECT_FALSE(check(*applyMend(chart, mend)).hasFault());
    EXPECT_EQ(mends[1].label, "Expect 32 stitches in size M");
}

TEST(Check, AnEdgeThatPartsCompanionsNamesThePair) {
    // Drawn left to right in row 2: k yo k k2tog ssk k yo k; columns 8..1. A size that begins at
    // column 3 leaves the yarn over of column 2 behind and keeps its decrease.
    Chart chart = feather();
    withSize(chart, "S", 3, 8, 2);
    withSize(chart, "M", 1, 8, 2);
    const Report report = check(chart);
    const auto faults = faultsOf(report);
    ASSERT_FALSE(faults.empty());
    EXPECT_EQ(faults[0].rule, "size-edge");
    EXPECT_EQ(faults[0].row, 2);
    EXPECT_THAT(faults[0].sizes, ElementsAre("S"));
    EXPECT_EQ(faults[0].message,
              "Size S, which begins at column 3, would work the decrease in column 4 without the "
              "increase in "
              "column 2: row 2 takes 1 more than row 1 leaves: 19 against 18.");
}

TEST(Check, ASubstitutionForTheSizeMendsIt) {
    Chart chart = feather();
    Size& size = withSize(chart, "S", 3, 8, 2);
    size.substitutions.push_back({1, 4, Edge::Start, "k"});
    const Report report = check(chart);
    EXPECT_TRUE(report.knittable) << describe(report);
}

TEST(Check, AWideStitchMustNotBeCut) {
    Chart chart = chartOf({"k*3 c22l k*3", "k*10"});
    withRepeat(chart, "A", 3, 6);
    const Finding fault = only(check(chart), Severity::Fault);
    EXPECT_EQ(fault.rule, "wide-stitch");
    EXPECT_THAT(fault.columns, ElementsAre(4, 5, 6, 7));
    chart.repeats.clear();
    EXPECT_TRUE(check(chart).knittable);
    withSize(chart, "S", 6, 10, 1);
    EXPECT_THAT(faultsOf(check(chart)).front().sizes, ElementsAre("S"));
}

TEST(Check, WarnsOfAYarnOverAtTheVeryEdge) {
    Chart chart = chartOf({"yo k2tog k*4", "k*6"});
    const Report report = check(chart);
    EXPECT_TRUE(report.knittable);
    const Finding warning = only(report, Severity::Warning);
    EXPECT_EQ(warning.rule, "edge-yarn-over");
    EXPECT_THAT(warning.columns, ElementsAre(6));
    chart.worked = Worked::InTheRound;
    EXPECT_THAT(check(chart).findings, ElementsAre());
}

TEST(Check, ANeverUsedSizeRepeatIsTold) {
    Chart chart = feather();
    withSize(chart, "S", 1, 8, 2).times.clear();
    EXPECT_EQ(only(check(chart), Severity::Warning).rule, "size-times");
}

}  // namespace
}  // namespace lacewright
