// The charts in samples/: those of published patterns keep the verdicts that two independent
// checkers outside this project reached on the printed rows; sources stand in the files.

#include <gmock/gmock.h>

#include "core/check/advice.h"
#include "core/check/check.h"
#include "core/file/chart_file.h"
#include "tests/support/findings.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

using namespace lacewright::test;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

Chart sample(const std::string& name) {
    auto chart = loadChart(test::inSourceTree("samples/") + name + ".lacewright");
    EXPECT_TRUE(chart) << (chart ? "" : chart.error().text());
    return chart ? *chart : Chart();
}

TEST(Samples, MillpondTeeIsProvenForItsSixSizes) {
    const Chart chart = sample("millpond-tee");
    ASSERT_EQ(chart.sizes.size(), 6U);
    EXPECT_EQ(chart.points.size(), 6U);
    EXPECT_FALSE(chart.repeats.at(0).jogs.empty());
    const Report report = check(chart);
    EXPECT_TRUE(report.knittable) << describe(report);
    EXPECT_EQ(report.closes, true);
    // The jogged rows move the marker, there and back; nothing else is said.
    for (const Finding& finding : report.findings)
        EXPECT_EQ(finding.rule, "marker") << finding.message;
    EXPECT_FALSE(report.findings.empty());
}

// Miss Lambert, My Knitting Book, London 1843, "Shetland Pattern for a Shawl": knittable, closes.
TEST(Samples, ShetlandShawlIsKnittableAndCloses) {
    const Report report = check(sample("lambert-1843-shetland-shawl"));
    EXPECT_TRUE(report.knittable) << describe(report);
    EXPECT_EQ(report.closes, true);
    EXPECT_EQ(report.rows.at(0).forms.takes, AffineForm(4).add(0, 6));
}

// E. M. C., The Lady's Knitting-Book, London 1874, "Rain Pattern": knittable, closes.
TEST(Samples, RainPatternIsKnittableAndCloses) {
    const Report report = check(sample("corbould-1874-rain-pattern"));
    EXPECT_TRUE(report.knittable) << describe(report);
    EXPECT_EQ(report.closes, true);
}

// Isabella Beeton, Beeton's Book of Needlework, London 1870, No. 297: knittable, closes, and the
// count of a repeat changes from row to row: 15, 15, 13, 11, 9.
TEST(Samples, PeacocksTailChangesItsCountAndCloses) {
    const Report report = check(sample("beeton-1870-peacocks-tail"));
    EXPECT_TRUE(report.knittable) << describe(report);
    EXPECT_EQ(report.closes, true);
    std::vector<std::int64_t> made;
    for (const RowCount& row : report.rows) made.push_back(row.forms.makes.coefficient(0));
    EXPECT_THAT(made, ElementsAre(15, 15, 13, 11, 9));
}

// Therese de Dillmont, Encyclopedia of Needlework, about 1886, fig. 397: row 15 takes 10 stitches
// but 12 are on the needle.
TEST(Samples, DillmontsLaceFailsInRow15AsPrinted) {
    const Report report = check(sample("dillmont-1886-lace-fig-397"));
    EXPECT_FALSE(report.knittable);
    const auto faults = faultsOf(report);
    ASSERT_EQ(faults.size(), 1U) << describe(report);
    EXPECT_EQ(faults[0].row, 15);
    EXPECT_EQ(faults[0].message, "Row 15 takes 2 fewer than row 14 leaves: 10 against 12.");
}

// Few as its figures are, the leaf is mirrored about its column of centred decreases.
TEST(Samples, TheSlipInTheLeafIsMendedWhereItsMirrorSays) {
    const Chart chart = sample("leaf-scarf-with-a-slip");
    Report report = check(chart);
    advise(chart, report);
    ASSERT_FALSE(report.findings.empty());
    ASSERT_FALSE(report.findings[0].mends.empty());
    const Mend& first = report.findings[0].mends[0];
    EXPECT_EQ(first.label, "Draw a yarn over in row 5, column 6");
    EXPECT_EQ(first.reason, "Its mirror cell, column 10, is a yarn over");
}

}  // namespace
}  // namespace lacewright
