#include "core/check/mirror_partner.h"

#include <gtest/gtest.h>

#include "core/check/advice.h"
#include "core/check/alphabet.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

namespace lacewright {
namespace {

using test::chartOf;

StitchIndex stitch(std::string_view id) {
    return builtInStitches()->find(id).value();
}

// The stitch that a chart holds for the mirror image of another.
std::string partnerIn(const Chart& chart, std::string_view id) {
    const Alphabet alphabet = alphabetOf(chart);
    const auto letter = alphabet.letterOf[stitch(id)];
    const auto mirror = alphabet.mirrors[Alphabet::placeOf(letter)];
    return (*chart.stitches)[alphabet.stitches[Alphabet::placeOf(mirror)]].id;
}

TEST(MirrorPartner, IsTheDecreaseThatTheChartDraws) {
    const Chart british = chartOf({"k2tog yo k*3 yo skp", "k*7"});
    EXPECT_EQ(partnerIn(british, "skp"), "k2tog");
    EXPECT_EQ(partnerIn(british, "k2tog"), "skp");
    EXPECT_EQ(alphabetOf(british).letterOf[stitch("ssk")], Alphabet::kNone);
    const Chart other = chartOf({"k2tog yo k*3 yo ssk", "k*7"});
    EXPECT_EQ(partnerIn(other, "ssk"), "k2tog");
    EXPECT_EQ(partnerIn(other, "k2tog"), "ssk");
}

TEST(MirrorPartner, WhatTheChartDrawsNowhereIsThatOfTheCatalogue) {
    const Chart chart = chartOf({"k yo k2tog k", "k*4"});
    EXPECT_EQ(partnerIn(chart, "k2tog"), "ssk");
}

TEST(MirrorPartner, KnitStitchesAreMirroredByKnitStitches) {
    const Chart chart = chartOf({"k skp yo k", "k yo p2tog k", "k skp yo k"});
    EXPECT_EQ(partnerIn(chart, "skp"), "ksp");
    EXPECT_EQ(partnerIn(chart, "p2tog"), "ssp");
}

// A leaf that opens to both sides, with the decreases of a book that knows skp.
Chart leaf() {
    return chartOf({"k*3 k2tog yo k yo skp k*3", "k*11", "k*2 k2tog yo k*3 yo skp k*2", "k*11",
                    "k k2tog yo k*5 yo skp k", "k*11", "k2tog yo k*7 yo skp", "k*11"});
}

TEST(MirrorPartner, ALeanThatIsSwappedIsSeenInBooksThatKnowSkp) {
    Chart wrong = leaf();
    wrong.rows.replace(4, test::rowOf("k skp yo k*5 yo skp k"));
    Report report = check(wrong);
    advise(wrong, report);
    ASSERT_TRUE(test::faultsOf(report).empty());
    ASSERT_FALSE(report.suspects.empty());
    EXPECT_EQ(report.suspects[0].row, 5);
    EXPECT_EQ(report.suspects[0].column, 10);
    EXPECT_EQ(report.suspects[0].rather, "k2tog");
}

}  // namespace
}  // namespace lacewright
