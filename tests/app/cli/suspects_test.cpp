#include <nlohmann/json.hpp>

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

}  // namespace
}  // namespace lacewright::cli
