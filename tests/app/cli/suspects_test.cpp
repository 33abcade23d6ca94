#include <nlohmann/json.hpp>

#include "core/base/disk.h"
#include "core/base/text.h"
#include "tests/app/cli/cli_run.h"

// Who is to blame, as a program that reads the JSON learns it.
namespace lacewright::cli {
namespace {

using nlohmann::json;

// A V of eyelets between plain stitches, mirrored about column 8; rows from the bottom, as drawn.
Chart vee(const std::string& third) {
    const std::string plain = "k*15";
    Chart chart = test::chartOf(
        {"k*3 yo ssk k*5 k2tog yo k*3", plain, third, plain, "k*5 yo ssk k k2tog yo k*5", plain});
    chart.name = "V";
    return chart;
}
constexpr const char* kRight = "k*4 yo ssk k*3 k2tog yo k*4";

class Suspects : public testing::Test {
 protected:
    json checked(const Chart& chart) const {
        const std::string path = folder_ / "v.lacewright";
        EXPECT_TRUE(saveChart(chart, path));
        return json::parse(run({"check", "--json", path}).out);
    }
    test::TempDir folder_;
};

TEST_F(Suspects, OfAFaultAreNamedWithTheirMends) {
    const json report = checked(vee("k*4 k ssk k*3 k2tog yo k*4"));
    json fault;
    for (const json& finding : report.at("findings")) {
        if (finding.at("severity") == "fault") fault = finding;
    }
    EXPECT_EQ(fault.at("row"), 3);
    const json& first = fault.at("suspects").at(0);
    EXPECT_EQ(first.at("row"), 3);
    EXPECT_EQ(first.at("column"), 11);
    EXPECT_GT(first.at("weight"), 0.5);
    EXPECT_EQ(fault.at("mends").at(0).at("cells"),
              (json{{{"row", 3}, {"column", 11}, {"stitch", "yo"}}}));
    EXPECT_EQ(report.at("suspects").at(0), first);
}

TEST_F(Suspects, OfAChartWithoutFaultAreRankedToo) {
    const json report = checked(vee("k*4 yo k2tog k*3 k2tog yo k*4"));
    EXPECT_EQ(report.at("knittable"), true);
    const json& first = report.at("suspects").at(0);
    EXPECT_EQ(first.at("row"), 3);
    EXPECT_EQ(first.at("column"), 10);
    EXPECT_EQ(first.at("rather"), "ssk");
}

TEST_F(Suspects, OfACorrectChartAreNoVerdict) {
    const json report = checked(vee(kRight));
    EXPECT_EQ(report.at("knittable"), true);
    EXPECT_EQ(report.at("findings"), json::array());
    for (const json& suspect : report.value("suspects", json::array()))
        EXPECT_LT(suspect.at("weight"), 0.1);
}

// Leaves of eyelets over any number of repeats, the plain rows between them not counted out.
std::string leaves(const std::string& fifth) {
    return "Cast on a multiple of 10 sts plus 5.\n"
           "Row 1: k2, *k1, yo, ssk, k5, k2tog, yo; rep from * to last 3 sts, k3.\n"
           "Row 2: purl.\n"
           "Row 3: k2, *k2, yo, ssk, k3, k2tog, yo, k1; rep from * to last 3 sts, k3.\n"
           "Row 4: purl.\n"
           "Row 5: k2, *" +
           fifth +
           "; rep from * to last 3 sts, k3.\n"
           "Row 6: purl.\n"
           "Row 7: k2, *k4, yo, sk2p, yo, k3; rep from * to last 3 sts, k3.\n"
           "Row 8: purl.\n";
}

class WrittenSuspects : public testing::Test {
 protected:
    json checked(const std::string& text) const {
        const std::string path = folder_ / "leaves.txt";
        EXPECT_TRUE(writeFile(path, text));
        return json::parse(run({"check", "--json", path}).out);
    }
    static json faultOf(const json& report) {
        for (const json& finding : report.at("findings")) {
            if (finding.at("severity") == "fault") return finding;
        }
        return {};
    }
    test::TempDir folder_;
};

TEST_F(WrittenSuspects, RightRowsHaveNoFinding) {
    const json report = checked(leaves("k3, yo, ssk, k1, k2tog, yo, k2"));
    EXPECT_EQ(report.at("knittable"), true);
    EXPECT_EQ(report.at("findings"), json::array());
}

TEST_F(WrittenSuspects, AStitchLeftOutIsPutInAgainInItsOwnRow) {
    // Row 6 purls whatever it finds, so the lost yarn over is felt in row 7 only.
    const json fault = faultOf(checked(leaves("k3, ssk, k1, k2tog, yo, k2")));
    EXPECT_EQ(fault.at("row"), 7);
    EXPECT_EQ(fault.at("suspects").at(0).at("row"), 5);
    EXPECT_EQ(fault.at("suspects").at(0).at("column"), 6);
    EXPECT_EQ(fault.at("mends").at(0).at("label"), "Row 5: put in yo as stitch 4 of the repeat");
    EXPECT_EQ(fault.at("mends").at(0).at("cells"),
              json::parse(R"([{"row": 5, "column": 6, "stitch": "yo"}])"));
}

TEST_F(WrittenSuspects, AWrongStitchIsNamedByItsPlaceInTheRepeat) {
    const json fault = faultOf(checked(leaves("k3, yo, ssk, k1, k1, yo, k2")));
    EXPECT_EQ(fault.at("row"), 5);
    EXPECT_EQ(fault.at("suspects").at(0).at("row"), 5);
    EXPECT_EQ(fault.at("suspects").at(0).at("column"), 9);
    EXPECT_EQ(fault.at("mends").at(0).at("label"),
              "Row 5: work k2tog instead of k, stitch 7 of the repeat");
    EXPECT_EQ(fault.at("mends").at(0).at("cells"),
              json::parse(R"([{"row": 5, "column": 9, "stitch": "k2tog"}])"));
}

TEST_F(WrittenSuspects, WhatIsWrongInALaterSizeOnlyIsAdvisedOnAsWell) {
    // 25 = 2 + 2 x 10 + 3, 35 = 2 + 3 x 10 + 3; in M the repeat of row 5 takes 11.
    std::string text = leaves("k3 (4), yo, ssk, k1, k2tog, yo, k2");
    text.replace(0, text.find('\n') + 1, "Sizes: S (M)\nCast on 25 (35) sts.\n");
    const json fault = faultOf(checked(text));
    EXPECT_EQ(fault.at("row"), 5);
    EXPECT_EQ(fault.at("sizes"), json::array({"M"}));
    EXPECT_EQ(fault.at("suspects").at(0).at("row"), 5);
    // S is right as it is, and takes 3 there.
    EXPECT_EQ(fault.at("mends").at(0).at("label"),
              "Row 5: work k3 instead of k3 (4), from stitch 1 of the repeat on");
}

TEST_F(WrittenSuspects, AStitchWrittenTwiceIsLeftOut) {
    const json fault = faultOf(checked(leaves("k3, yo, yo, ssk, k1, k2tog, yo, k2")));
    EXPECT_EQ(fault.at("suspects").at(0).at("row"), 5);
    EXPECT_EQ(fault.at("mends").at(0).at("label"), "Row 5: leave out yo, stitch 5 of the repeat");
}

TEST_F(WrittenSuspects, AWrongLeanIsRankedAlthoughItCountsRight) {
    const json report = checked(leaves("k3, yo, k2tog, k1, k2tog, yo, k2"));
    EXPECT_EQ(report.at("knittable"), true);
    EXPECT_EQ(report.at("suspects").at(0).at("row"), 5);
    EXPECT_EQ(report.at("suspects").at(0).at("column"), 7);
    EXPECT_EQ(report.at("suspects").at(0).at("rather"), "ssk");
}

}  // namespace
}  // namespace lacewright::cli
