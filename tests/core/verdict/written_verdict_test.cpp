#include <gtest/gtest.h>

#include <algorithm>

#include "core/verdict/written_advice.h"
#include "core/verdict/written_report.h"

// Written rows judged as a chart is. Counts are worked by hand from the definitions of the stitches
// (Craft Yarn Council abbreviations).
namespace lacewright {
namespace {

Report judged(const std::string& text) {
    const ReadRows read = readWritten(text);
    EXPECT_FALSE(read.hasErrors()) << text;
    Report report = reportOnRows(read, {0}).report;
    adviseOnRows(read.pattern, {0}, report);
    return report;
}

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
    std::vector<std::string> mends;
    for (const Mend& mend : faults[0].mends) mends.push_back(mend.label);
    EXPECT_NE(std::find(mends.begin(), mends.end(), "Row 3: put in yo as stitch 1 of repeat B"),
              mends.end())
        << testing::PrintToString(mends);
}

}  // namespace
}  // namespace lacewright
