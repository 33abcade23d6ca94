#include "core/check/advice.h"

#include <gtest/gtest.h>

#include "core/check/mend.h"
#include "tests/support/drawn_rows.h"
#include "tests/support/findings.h"
#include "tests/support/motifs.h"
#include "tests/support/mutations.h"

namespace lacewright {
namespace {

// A V of eyelets between two plain edge stitches, mirrored about column 8.
Chart vee() {
    return test::motif(
        "V", 2,
        {"2*k k yo ssk 5*k k2tog yo k 2*k", "15*k", "2*k 2*k yo ssk 3*k k2tog yo 2*k 2*k", "15*k",
         "2*k 3*k yo ssk k k2tog yo 3*k 2*k", "15*k"});
}

Chart with(Chart chart, int row, int column, std::string_view id) {
    auto cells = chart.row(row).cells();
    cells[static_cast<std::size_t>(column - 1)] = test::stitch(id);
    chart.rows.replace(static_cast<std::size_t>(row), makeRow(cells, *chart.stitches));
    return chart;
}

Report advised(const Chart& chart) {
    Report report = check(chart);
    advise(chart, report);
    return report;
}

const Finding* faultOf(const Report& report) {
    for (const Finding& finding : report.findings) {
        if (finding.severity == Severity::Fault) return &finding;
    }
    return nullptr;
}

TEST(Advice, NamesTheLostYarnOverAndDrawsItAgain) {
    const Chart chart = with(vee(), 2, 5, "k");
    const Report report = advised(chart);
    const Finding* fault = faultOf(report);
    ASSERT_NE(fault, nullptr);
    ASSERT_FALSE(fault->suspects.empty());
    EXPECT_EQ(fault->suspects[0].row, 3);
    EXPECT_EQ(fault->suspects[0].column, 5);
    ASSERT_FALSE(fault->mends.empty());
    EXPECT_EQ(fault->mends[0].label, "Draw a yarn over in row 3, column 5");
    EXPECT_NE(fault->mends[0].reason, "");
    EXPECT_EQ(applyMend(chart, fault->mends[0]).value().rows, vee().rows);
}

TEST(Advice, EveryMendLeavesNoNewFault) {
    std::mt19937 random(8);
    int offered = 0;
    for (int trial = 0; trial < 24; ++trial) {
        const Chart right = test::randomMotif(test::Symmetry::Mirror, random);
        const auto mutant = test::mutated(
            right, test::kSlips[trial % 4],
            static_cast<int>(random() % static_cast<unsigned>(right.height())), random);
        if (!mutant) continue;
        for (const Finding& finding : advised(mutant->chart).findings) {
            EXPECT_LE(finding.mends.size(), kMaxMends);
            for (const Mend& mend : finding.mends) {
                ++offered;
                const Result<Chart> mended = applyMend(mutant->chart, mend);
                ASSERT_TRUE(mended) << mend.label;
                const Report after = check(*mended);
                EXPECT_FALSE(after.hasFault()) << mend.label;
                EXPECT_EQ(after.closes, true) << mend.label;
            }
        }
    }
    EXPECT_GT(offered, 15);
}

TEST(Advice, SaysNothingAboutCorrectCharts) {
    for (const Chart& chart : test::handbookMotifs()) {
        const Report before = check(chart);
        EXPECT_TRUE(before.knittable) << chart.name;
        EXPECT_EQ(before.closes, true) << chart.name;
        Report after = advised(chart);
        after.suspects.clear();
        EXPECT_EQ(after, before) << chart.name;
    }
}

TEST(Advice, TwoRowsInErrorThatCountLikeOneLostStitchAreTwoFaults) {
    // Three copies of a figure. Row 3 lacks a yarn over and takes one more; row 4 has one too many
    // and takes one fewer: together they count like a stitch lost in row 3.
    const std::string tile = "k yo ssk 3*k ";
    const std::string right = tile + tile + tile;
    const std::string lacking = tile + "k k ssk 3*k " + tile;
    const Chart chart = test::motif("", 0, {right, "18*k", lacking, "3*k yo 14*k", right, "18*k"});
    const Report counted = check(chart);
    ASSERT_EQ(test::faultsOf(counted).size(), 1U) << test::describe(counted);
    const Report told = advised(chart);
    const auto faults = test::faultsOf(told);
    ASSERT_EQ(faults.size(), 2U) << test::describe(told);
    EXPECT_EQ(faults[0].row, 3);
    EXPECT_EQ(faults[0].suspects.at(0).column, 8);
    EXPECT_EQ(faults[1].row, 4);
    EXPECT_EQ(faults[1].suspects.at(0).column, 4);
    // A stitch of row 3 that is lost stays one fault.
    const std::string lost = tile + "k yo 3*k " + tile + "k";
    EXPECT_EQ(
        test::faultsOf(advised(test::motif("", 0, {right, "18*k", lost, "18*k", right, "18*k"})))
            .size(),
        1U);
}

TEST(Advice, AStitchTheCountsCannotSeeIsStillOdd) {
    // Three copies of a figure; the lean of one decrease is wrong.
    const std::string tile = "k yo ssk 3*k ";
    const std::string right = tile + tile + tile;
    const std::string wrong = tile + "k yo k2tog 3*k " + tile;
    const Chart chart = test::motif("", 0, {right, "18*k", wrong, "18*k", right, "18*k"});
    const auto odd = advised(chart).suspects;
    ASSERT_FALSE(odd.empty());
    EXPECT_EQ(odd[0].row, 3);
    EXPECT_EQ(odd[0].column, 9);
    const Report report = advised(chart);
    ASSERT_FALSE(report.findings.empty());
    EXPECT_EQ(report.findings[0].rule, "symmetry");
    ASSERT_EQ(report.findings[0].mends.size(), 1U);
    EXPECT_EQ(test::drawn(applyMend(chart, report.findings[0].mends[0]).value(), 2),
              test::drawn(chart, 0));
}

TEST(Advice, AFindingAloneGetsTheSameAdvice) {
    const Chart chart = with(vee(), 2, 5, "k");
    const Report whole = advised(chart);
    Report plain = check(chart);
    for (Finding& finding : plain.findings) {
        advise(chart, finding);
        if (finding.severity == Severity::Fault) {
            EXPECT_EQ(finding, *faultOf(whole));
        }
    }
}

TEST(Advice, LooksInTheRowBelowForAStitchThatMakesTooMuch) {
    // An increase of one into three where its mirror image and the rows around hold knit.
    const Chart chart = with(vee(), 2, 8, "kyok");
    const Report report = advised(chart);
    const Finding* fault = faultOf(report);
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(fault->row, 4);
    ASSERT_FALSE(fault->suspects.empty());
    EXPECT_EQ(fault->suspects[0].row, 3);
    EXPECT_EQ(fault->suspects[0].column, 8);
    ASSERT_FALSE(fault->mends.empty());
    EXPECT_EQ(applyMend(chart, fault->mends[0]).value().rows, vee().rows);
}

// A small share of the mutation benchmark, with bounds that leave room for chance.
TEST(Advice, FindsMostSlipsInSymmetricCharts) {
    std::mt19937 random(77);
    int visible = 0;
    int detected = 0;
    int first = 0;
    int three = 0;
    for (int trial = 0; trial < 120; ++trial) {
        const Chart right = test::randomMotif(test::Symmetry::MirrorAndDiagonals, random);
        const int row = static_cast<int>(random() % static_cast<unsigned>(right.height()));
        const auto mutant = test::mutated(right, test::kSlips[trial % 3], row, random);
        if (!mutant || !mutant->countsChange) continue;
        ++visible;
        const Report report = advised(mutant->chart);
        for (const Finding& finding : report.findings) {
            if (finding.suspects.empty() || finding.rule == "symmetry") continue;
            ++detected;
            for (std::size_t place = 0; place < std::min<std::size_t>(3, finding.suspects.size());
                 ++place) {
                const Suspect& suspect = finding.suspects[place];
                if (suspect.row != row + 1 || !mutant->columns.contains(suspect.column)) continue;
                first += place == 0 ? 1 : 0;
                ++three;
                break;
            }
            break;
        }
    }
    ASSERT_GT(visible, 40);
    EXPECT_EQ(detected, visible);
    EXPECT_GE(first, visible * 85 / 100);
    EXPECT_GE(three, visible * 92 / 100);
}

}  // namespace
}  // namespace lacewright
