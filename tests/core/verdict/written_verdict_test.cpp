#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "tests/support/judged_text.h"

// Written rows judged as a chart is. Counts are worked by hand from the definitions of the stitches
// (Craft Yarn Council abbreviations).
namespace lacewright {
namespace {

using test::judged;

std::vector<Finding> faultsOf(const Report& report) {
    std::vector<Finding> faults;
    for (const Finding& finding : report.findings) {
        if (finding.severity == Severity::Fault) faults.push_back(finding);
    }
    return faults;
}

const std::string kTwoRepeats =
    "Cast on: 6 for each A plus 4 for each B plus 5\nRepeats: A, B\n"
    "Row 1: k1, [yo, k1, sk2p, k1, yo, k1] A times, k2, [yo, ssk, k2] B times, k2.\nRow 2: p.\n";

// A row that a slip makes longer, and rows on no stitches at all.
TEST(WrittenVerdict, AdvisesOnRowsWhateverTheirLength) {
    const auto faults =
        faultsOf(judged("CO 7\nRow 1: K2, double yo, k2tog, k3.\nRow 2: K4, p1, k2.\nCast on: 21\n"
                        "Row 1 (RS): k to end\nRow 2 (WS): k2, p to last 3 sts, k2"));
    ASSERT_FALSE(faults.empty());
    EXPECT_EQ(faults.front().row, 2);
    EXPECT_TRUE(judged("Cast on 0 sts\nRow 1: *yo, k2tog; rep from * to end.").suspects.empty());
}

TEST(WrittenVerdict, ProvesRowsThatNameTheirRepeats) {
    EXPECT_TRUE(judged(kTwoRepeats).knittable);
}

TEST(WrittenVerdict, ANamedRepeatThatGrowsIsCalledByItsName) {
    // B takes k2tog, k2 = 4 and a stitch more: 5.
    const auto faults = faultsOf(
        judged(kTwoRepeats + "Row 3: k1, [k6] A times, k2, [yo, k2tog, k2, k1] B times, k2.\n"));
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].message,
              "Row 3 takes 1 more in every repeat of B than row 2 leaves: 16 against 15 with one "
              "repeat of B, 21 against 19 with two.");
}

TEST(WrittenVerdict, MendsOfNamedRepeatsSayInWhichOneTheyAre) {
    const auto faults =
        faultsOf(judged(kTwoRepeats +
                        "Row 3: k1, [yo, k1, sk2p, k1, yo, k1] A times, k2, [ssk, k2] B times, "
                        "k2.\nRow 4: p2, [p4] B times, p2, [p6] A times, p1.\n"));
    ASSERT_EQ(faults.size(), 1u);
    ASSERT_FALSE(faults[0].mends.empty());
    EXPECT_EQ(faults[0].mends[0].label, "Row 3: put in yo as stitch 1 of repeat B");
}

// Eyelets over any number of repeats of 10, 5 stitches beside them; 25 = 2 x 10 + 5.
std::string leaves(const std::string& castOn, const std::string& first, const std::string& third) {
    return "Cast on " + castOn + " sts.\nRow 1: k2, *" + first +
           "; rep from * to last 3 sts, k3.\nRow 2: purl.\nRow 3: k2, *" + third +
           "; rep from * to last 3 sts, k3.\nRow 4: purl.\n"
           "Row 5: k2, *k3, yo, ssk, k1, k2tog, yo, k2; rep from * to last 3 sts, k3.\n"
           "Row 6: purl.\n";
}
constexpr auto kFirst = "k1, yo, ssk, k5, k2tog, yo";
constexpr auto kThird = "k2, yo, ssk, k3, k2tog, yo, k1";

TEST(WrittenVerdict, TheFirstMendIsInTheRowThatIsWrongAlsoWithAFixedCastOn) {
    for (const char* castOn : {"a multiple of 10 sts plus 5", "25"}) {
        // Row 1 leaves one loop fewer in each repeat than the rows above and below it.
        const auto first = faultsOf(judged(leaves(castOn, "k1, ssk, k5, k2tog, yo", kThird)));
        ASSERT_EQ(first.size(), 1u) << castOn;
        ASSERT_FALSE(first[0].mends.empty()) << castOn;
        EXPECT_EQ(first[0].mends[0].label, "Row 1: put in yo as stitch 2 of the repeat") << castOn;
        const auto third = faultsOf(judged(leaves(castOn, kFirst, "k2, ssk, k3, k2tog, yo, k1")));
        ASSERT_EQ(third.size(), 1u) << castOn;
        ASSERT_FALSE(third[0].mends.empty()) << castOn;
        EXPECT_EQ(third[0].mends[0].label, "Row 3: put in yo as stitch 3 of the repeat") << castOn;
    }
}

TEST(WrittenVerdict, ARepeatThatAFixedCastOnIsNoMultipleOfIsMended) {
    // 84 = 21 x 4; the repeat takes 5 and makes 4 (slip, knit, pass over takes 2).
    const auto faults =
        faultsOf(judged("Cast on: 84\nWorked: round\nRnd 1: k to end\nRnd 2: *k1, skp, k1, p1; rep "
                        "from * to end\n"));
    ASSERT_EQ(faults.size(), 1u);
    ASSERT_FALSE(faults[0].suspects.empty());
    EXPECT_EQ(faults[0].suspects[0].row, 2);
    EXPECT_FALSE(faults[0].mends.empty());
}

TEST(WrittenVerdict, NoRowIsNamedWhereTheCastOnIsMended) {
    const auto faults =
        faultsOf(judged("Cast on 27 sts.\n"
                        "Row 1: k2, *yo, ssk, k4; rep from * to last 3 sts, k3.\n"
                        "Row 2: purl.\n"
                        "Row 3: k2, *k1, yo, ssk, k3; rep from * to last 3 sts, k3.\n"
                        "Row 4: purl.\n"));
    ASSERT_EQ(faults.size(), 1u);
    const Finding& fault = faults[0];
    ASSERT_GE(fault.mends.size(), 2u);
    EXPECT_EQ(fault.mends[0].label, "Cast on 29 sts instead of 27");
    EXPECT_EQ(fault.mends[1].label, "Cast on 23 sts instead of 27");
    for (const Mend& mend : fault.mends) EXPECT_NE(mend.label, "");
}

TEST(WrittenVerdict, AStitchWrittenTwiceIsOneFaultThoughTwoRowsDoNotFit) {
    // Row 3 takes and leaves one more: 26 of 25, and row 5 then finds one more than it takes.
    const auto faults =
        faultsOf(judged("Cast on 25 sts.\nRow 1: k3, yo, ssk, k15, k2tog, yo, k3.\nRow 2: purl.\n"
                        "Row 3: k4, yo, ssk, k14, k2tog, yo, k4.\nRow 4: purl.\n"
                        "Row 5: k5, yo, ssk, k11, k2tog, yo, k5.\nRow 6: purl.\n"));
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].row, 3);
    ASSERT_EQ(faults[0].folded.size(), 1u);
    EXPECT_EQ(faults[0].folded[0].row, 5);
}

TEST(WrittenVerdict, RowsAreCalledByTheNamesTheyHave) {
    // The set-up row leaves 12, row 1 takes 13.
    const auto faults = faultsOf(judged("Cast on 12 sts.\nSet-up row: purl.\nRow 1: k13.\n"));
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].message, "Row 1 takes 1 more than the set-up row leaves: 13 against 12.");
}

TEST(WrittenVerdict, ARowThatContradictsItselfIsMendedInItself) {
    const std::string text =
        "Cast on a multiple of 10 sts plus 5.\nRow 1: k2, *k1, yo, ssk, k5, k2tog, yo; rep from * "
        "to last 3 sts, k3.\nRow 2: k2, *p10; rep from * to last 3 sts, k3.\n"
        "Row 3: k2, *k2, yo, ssk, k3, k2tog, yo, k1; rep from * to last 3 sts, k4.\n";
    const auto faults = faultsOf(judged(text));
    ASSERT_EQ(faults.size(), 1u);
    ASSERT_FALSE(faults[0].suspects.empty());
    for (const Suspect& suspect : faults[0].suspects) EXPECT_EQ(suspect.row, 3);
    for (const Mend& mend : faults[0].mends) EXPECT_EQ(mend.label.substr(0, 6), "Row 3:");
}

TEST(WrittenVerdict, ARepeatThatUsesUpNothingLacksAStitchAtOneOfItsPlaces) {
    // "*yo, k2tog" without its decrease, behind two edge stitches: it stood third or fourth, and
    // behind the yarn over its pair is as usual as before it.
    const auto faults =
        faultsOf(judged("Cast on a multiple of 2 sts plus 4.\nRow 1: knit.\n"
                        "Row 2: k2, *yo; rep from * to last 2 sts, k2.\n"));
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].rule, "uncountable");
    ASSERT_EQ(faults[0].suspects.size(), 2u);
    std::set<int> columns;
    for (const Suspect& suspect : faults[0].suspects) {
        EXPECT_EQ(suspect.row, 2);
        columns.insert(suspect.column);
    }
    EXPECT_EQ(columns, (std::set<int>{3, 4}));
    ASSERT_FALSE(faults[0].mends.empty());
    EXPECT_THAT(faults[0].mends[0].label, testing::StartsWith("Row 2: put in k2tog as stitch"));
}

TEST(WrittenVerdict, AMendNamesOnlyTheStitchesItChanges) {
    // Row 1 takes 17, four too many, which no single stitch makes up for; what stands between the
    // two stitches stays untold.
    const auto faults =
        faultsOf(judged("Cast on: 13\nRow 1: k3, k2tog, ssk, k3, k2tog, ssk, k3.\nRow 2: p13.\n"
                        "Row 3: k3, yo, ssk, k3, k2tog, yo, k3.\nRow 4: p13.\n"));
    ASSERT_FALSE(faults.empty());
    EXPECT_TRUE(std::any_of(faults[0].mends.begin(), faults[0].mends.end(), [](const Mend& mend) {
        return mend.label ==
               "Row 1: work yo instead of k2tog, stitch 4 and yo instead of ssk, stitch 10";
    })) << testing::PrintToString([&] {
        std::vector<std::string> labels;
        for (const Mend& mend : faults[0].mends) labels.push_back(mend.label);
        return labels;
    }());
}

Report judgedInAllSizes(const std::string& text) {
    const ReadRows read = readWritten(text);
    std::vector<std::size_t> sizes;
    for (std::size_t i = 0; i < read.pattern.sizeCount(); ++i) sizes.push_back(i);
    return reportOnRows(read, sizes).report;
}

TEST(WrittenVerdict, WhatIsTooLongToBeSearchedIsSaid) {
    const auto text = [](int rows, int wrong) {
        std::string all = "Cast on 20\n";
        for (int row = 1; row <= rows; ++row)
            all += "Row " + std::to_string(row) + ": k" + (row == wrong ? "19" : "20") + "\n";
        return all;
    };
    const auto saysSo = [](const Report& report) {
        return std::any_of(report.findings.begin(), report.findings.end(), [](const Finding& f) {
            return f.rule == "text" && f.message.find("600 rows") != std::string::npos;
        });
    };
    EXPECT_TRUE(saysSo(judged(text(601, 300))));
    EXPECT_FALSE(saysSo(judged(text(600, 300))));
    EXPECT_FALSE(saysSo(judged(text(601, 0))));
}

TEST(WrittenVerdict, SizesShareANoteThatDiffersInNumbers) {
    const Report report = judgedInAllSizes(
        "To fit: S (M, L)\nCast on 20 (24, 28) sts.\nRow 1: BO 2 (3, 4) sts, k to end.\n");
    ASSERT_FALSE(report.findings.empty());
    EXPECT_EQ(report.findings[0].message,
              "Row 1 changes the count: 20 (24, 28) become 18 (21, 24).");
    EXPECT_TRUE(report.findings[0].sizes.empty());
}

TEST(WrittenVerdict, ARowThatDoesNotFitSeveralSizesIsOneFault) {
    const Report report =
        judgedInAllSizes("Sizes: S (M, L)\nCast on 20 (24, 28) sts.\nRow 1: k20 (25, 30).\n");
    const auto faults = faultsOf(report);
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].sizes, std::vector<std::string>{"M"});
    EXPECT_TRUE(faults[0].message.starts_with("Size M: row 1 takes 1 more")) << faults[0].message;
    ASSERT_EQ(faults[0].folded.size(), 1u);
    EXPECT_EQ(faults[0].folded[0].sizes, std::vector<std::string>{"L"});
}

}  // namespace
}  // namespace lacewright
