#include "core/check/edge_mends.h"

#include <gmock/gmock.h>

#include "core/check/advice.h"
#include "core/check/mend.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;
using test::withSize;

// A size that begins at column 3 leaves the yarn over of column 2 behind in row 2.
Chart parted() {
    Chart chart =
        chartOf({"k k*6 k", "k yo k k2tog ssk k yo k", "k k*6 k", "k k yo k2tog ssk yo k k"});
    withRepeat(chart, "A", 2, 7);
    return chart;
}

std::vector<Mend> mendsOf(const Chart& chart) {
    Report report = check(chart);
    advise(chart, report);
    for (const Finding& finding : report.findings) {
        if (finding.rule == "size-edge") return finding.mends;
    }
    return {};
}

TEST(EdgeMends, ThePartedStitchIsWorkedPlainOrTheEdgeMoved) {
    Chart chart = parted();
    withSize(chart, "S", 3, 8, 2).stitches = 18;
    const auto mends = mendsOf(chart);
    ASSERT_EQ(mends.size(), 2U);
    EXPECT_EQ(mends[0].label,
              "For size S work knit instead of slip, slip, knit in row 2, column 4");
    EXPECT_EQ(mends[0].reason, "Column 2, where its companion is, lies outside");
    ASSERT_EQ(mends[0].steps.size(), 1U);
    EXPECT_EQ(std::get<SubstituteForSize>(mends[0].steps[0]),
              (SubstituteForSize{"S", {1, 4, Edge::Start, "k", {}}}));
    EXPECT_EQ(mends[1].label, "Begin size S at column 2, 1 column further right");
    EXPECT_EQ(mends[1].reason, "It parts no companions there and gives 13 stitches");
    for (const Mend& mend : mends) {
        const Result<Chart> mended = applyMend(chart, mend);
        ASSERT_TRUE(mended);
        EXPECT_TRUE(check(*mended).knittable) << test::describe(check(*mended));
    }
}

TEST(EdgeMends, ADoubleDecreaseKeepsTheOneYarnOverItStillHas) {
    Chart chart = chartOf({"k*7", "k yo k s2kp k yo k"});
    withSize(chart, "S", 3, 7, 1);
    const auto mends = mendsOf(chart);
    ASSERT_FALSE(mends.empty());
    const auto step = std::get<SubstituteForSize>(mends[0].steps.at(0));
    EXPECT_EQ(step.substitution.column, 4);
    EXPECT_EQ(step.substitution.stitch, "k2tog");
    EXPECT_TRUE(check(applyMend(chart, mends[0]).value()).knittable);
}

// The yarn over left behind at the start and the decrease left behind at the end balance.
TEST(EdgeMends, EdgesThatMakeUpForEachOtherAreMendedInOneEdit) {
    Chart chart = chartOf({"k*10", "k k ssk yo k k k2tog yo k k", "k*10"});
    withSize(chart, "S", 4, 7, 1);
    EXPECT_TRUE(check(chart).knittable);
    const auto mends = mendsOf(chart);
    ASSERT_FALSE(mends.empty());
    EXPECT_EQ(
        mends[0].label,
        "For size S work knit instead of knit 2 together in row 2, column 4; at the other edge "
        "for size S work knit instead of a yarn over in row 2, column 7");
    const Chart mended = applyMend(chart, mends[0]).value();
    EXPECT_TRUE(check(mended).knittable);
    for (const Finding& finding : check(mended).findings) EXPECT_NE(finding.rule, "size-edge");
}

// Both begin between a yarn over and its decrease; each ends between another pair.
TEST(EdgeMends, SizesThatMakeUpAtDifferentColumnsAreMendedInOneEdit) {
    Chart chart = chartOf({"k*12", "k k ssk yo k ssk yo k k2tog yo k k", "k*12"});
    withSize(chart, "S", 4, 6, 1);
    withSize(chart, "M", 4, 9, 1);
    Report report = check(chart);
    EXPECT_TRUE(report.knittable);
    advise(chart, report);
    int shared = 0;
    for (const Finding& finding : report.findings) {
        if (finding.rule != "size-edge" || finding.sizes.size() != 2) continue;
        ++shared;
        ASSERT_FALSE(finding.mends.empty());
        EXPECT_EQ(finding.mends[0].steps.size(), 4U);
        const Chart mended = applyMend(chart, finding.mends[0]).value();
        EXPECT_TRUE(check(mended).knittable);
        for (const Finding& left : check(mended).findings) EXPECT_NE(left.rule, "size-edge");
    }
    EXPECT_EQ(shared, 1);
}

TEST(EdgeMends, SeveralSizesAreMendedTogether) {
    Chart chart = parted();
    withSize(chart, "S", 3, 8, 1);
    withSize(chart, "M", 3, 8, 4);
    const auto mends = mendsOf(chart);
    ASSERT_FALSE(mends.empty());
    EXPECT_EQ(mends[0].steps.size(), 2U);
    EXPECT_TRUE(check(applyMend(chart, mends[0]).value()).knittable);
}

TEST(EdgeMends, AnEdgeShapedFromRowToRowIsNotMoved) {
    Chart chart = parted();
    withSize(chart, "S", 3, 8, 2).changes.push_back({2, 3, {3, 8}, {}});
    for (const Finding& finding : check(chart).findings) {
        if (finding.rule != "size-edge") continue;
        EXPECT_TRUE(edgeMendsFor(chart, finding).moves.empty());
        EXPECT_FALSE(edgeMendsFor(chart, finding).substitutions.empty());
        return;
    }
    ADD_FAILURE() << "no finding about the edge";
}

}  // namespace
}  // namespace lacewright
