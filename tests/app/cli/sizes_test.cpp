#include "core/base/disk.h"
#include "tests/app/cli/cli_run.h"

#include <nlohmann/json.hpp>

namespace lacewright::cli {
namespace {

using testing::HasSubstr;

class SizesVerb : public testing::Test {
 protected:
    void SetUp() override {
        Chart chart = soundChart();
        chart.gauge = {20, 28, {}};
        ASSERT_TRUE(saveChart(chart, file_));
    }
    test::TempDir folder_;
    std::string file_ = folder_ / "chart.lacewright";
};

TEST_F(SizesVerb, TellsEverySizeInFiguresAndWords) {
    const Ran ran = run({"sizes", file_});
    EXPECT_EQ(ran.code, kDone);
    EXPECT_EQ(
        ran.out,
        "size   start  end    times A  row 1  last row  width             parted\n"
        "small  A (1)  B (6)  4        18     18        9.0 cm (3.5 in)   none\n"
        "large  A (1)  B (6)  6        26     26        13.0 cm (5.1 in)  none\n"
        "\n"
        "Size small: begin at point A, work to the end of repeat A, then work repeat A 3 more "
        "times, end at B: 18 sts.\n"
        "Size large: begin at point A, work to the end of repeat A, then work repeat A 5 more "
        "times, end at B: 26 sts.\n");
}

TEST_F(SizesVerb, WritesCsv) {
    const Ran ran = run({"sizes", "--csv", file_});
    EXPECT_EQ(ran.out,
              "size,start,end,start_point,end_point,times_A,row_1,last_row,width_cm,width_in,"
              "last_width_cm,last_width_in,parted\n"
              "small,1,6,A,B,4,18,18,9.0,3.5,9.0,3.5,0\n"
              "large,1,6,A,B,6,26,26,13.0,5.1,13.0,5.1,0\n");
}

TEST_F(SizesVerb, WritesJson) {
    const Ran ran = run({"sizes", "--json", file_});
    const auto json = nlohmann::json::parse(ran.out);
    ASSERT_EQ(json["sizes"].size(), 2U);
    EXPECT_EQ(json["sizes"][1]["size"], "large");
    EXPECT_EQ(json["sizes"][1]["times"]["A"], 6);
    EXPECT_EQ(json["sizes"][1]["firstRow"], 26);
    EXPECT_EQ(json["sizes"][1]["cm"], 13.0);
    EXPECT_TRUE(json["sizes"][1]["parted"].empty());
}

TEST_F(SizesVerb, NamesThePairsAnEdgeParts) {
    Chart chart = soundChart();
    chart.sizes[0].reach = {3, 6};  // from within the yarn over and its decrease
    ASSERT_TRUE(saveChart(chart, file_));
    EXPECT_THAT(run({"sizes", file_}).out, HasSubstr("row 1 columns 2 and 3 (start)"));
    const auto json = nlohmann::json::parse(run({"sizes", file_, "--json"}).out);
    EXPECT_EQ(json["sizes"][0]["parted"][0]["increase"], 2);
}

TEST_F(SizesVerb, PlansWidthsAndWritesThemIntoAChart) {
    const std::string planned = folder_ / "planned.lacewright";
    const Ran ran = run({"sizes", file_, "--widths", "S=17in,M=50", "--gauge", "24x32", "--edge",
                         "1", "--length", "30", "-o", planned});
    EXPECT_EQ(ran.code, kDone) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Size S: wanted 43.2 cm (17.0 in), reached "));
    EXPECT_THAT(ran.out, HasSubstr("Length: 96 rows, the row repeat 48 times: 30.0 cm"));
    const Result<Chart> chart = loadChart(planned);
    ASSERT_TRUE(chart);
    ASSERT_EQ(chart->sizes.size(), 2U);
    EXPECT_EQ(chart->gauge.stitches, 24);
    EXPECT_EQ(run({"check", planned}).code, kDone);
}

// Half of (bust + 5 cm) of the nine sizes of the Craft Yarn Council's table.
TEST_F(SizesVerb, PlansATableOfBodies) {
    const Ran ran = run({"sizes", file_, "--table", "women", "--ease", "5", "--part", "2"});
    EXPECT_EQ(ran.code, kDone) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Size XS: wanted 39.3 cm"));
    EXPECT_THAT(ran.out, HasSubstr("Size 5X: wanted 80.0 cm"));
}

TEST_F(SizesVerb, TellsThePlanAsJson) {
    const Ran ran = run({"sizes", file_, "--json", "--widths", "S=40,small=17in", "--length",
                         "12in", "--tolerance", "2"});
    EXPECT_EQ(ran.code, kDone) << ran.err;
    const auto json = nlohmann::json::parse(ran.out);
    ASSERT_EQ(json["plan"].size(), 2U);
    const auto& inches = json["plan"][1];
    EXPECT_EQ(inches["size"], "small");
    EXPECT_EQ(inches["wantedInches"], 17.0);
    EXPECT_EQ(inches["wantedCm"], 43.18);
    const auto& chosen = inches["chosen"];
    EXPECT_EQ(chosen["stitches"], json["sizes"][1]["firstRow"]);
    EXPECT_EQ(chosen["start"], json["sizes"][1]["start"]);
    EXPECT_EQ(chosen["times"], json["sizes"][1]["times"]["A"]);
    EXPECT_NEAR(chosen["reachedCm"].get<double>(), chosen["stitches"].get<int>() / 2.0, 1e-9);
    EXPECT_NEAR(chosen["differenceCm"].get<double>(), chosen["reachedCm"].get<double>() - 43.18,
                1e-9);
    EXPECT_TRUE(chosen["fits"].get<bool>());
    EXPECT_EQ(chosen["parted"], 0);
    // 12 in are 30.48 cm: 85.3 rows at 28 rows over 10 cm, in whole repeats of two rows.
    EXPECT_EQ(json["length"]["rows"], 86);
    EXPECT_EQ(json["length"]["repeats"], 43);
    EXPECT_EQ(json["length"]["wantedInches"], 12.0);
    EXPECT_EQ(json["lost"][0]["message"], "Size large is not planned and goes.");
}

TEST_F(SizesVerb, TellsThePlanAsCsv) {
    const Ran ran = run({"sizes", file_, "--csv", "--widths", "S=40,M=46"});
    EXPECT_EQ(ran.code, kDone) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("parted,wanted_cm,wanted_in,difference_cm,difference_in,fits,"
                                   "mirrored,off_centre\n"));
    EXPECT_THAT(ran.out, HasSubstr(",0,40.0,15.7,0.0,0.0,yes,"));
}

// Bust of the middle size M, 91.5 to 96.5 cm, from the Craft Yarn Council's table.
TEST_F(SizesVerb, APlanForATableOfBodiesKeepsBodyAndPieces) {
    const std::string planned = folder_ / "planned.lacewright";
    EXPECT_EQ(run({"sizes", file_, "--table", "women", "--ease", "2in", "--part", "2", "--edge",
                   "1", "-o", planned})
                  .code,
              kDone);
    const Result<Chart> chart = loadChart(planned);
    ASSERT_TRUE(chart);
    EXPECT_EQ(chart->findSize("M")->body, 94);
    EXPECT_EQ(chart->grading.pieces, 2);
    EXPECT_EQ(chart->grading.edgeStitches, 1);
    const auto json = nlohmann::json::parse(run({"sizes", planned, "--json"}).out);
    ASSERT_EQ(json["sizes"].size(), 9U);
    EXPECT_NEAR(json["sizes"][2]["cm"].get<double>(), (94 + 5.08) / 2, 1.0);
    EXPECT_EQ(run({"check", planned}).code, kDone);
}

TEST_F(SizesVerb, MisuseIsOneSentence) {
    expectMisuse(run({"sizes", file_, file_}), "one chart at a time");
    expectMisuse(run({"sizes", file_, "--csv", "--json"}), "not both");
    expectMisuse(run({"sizes", file_, "--ease", "3"}), "--ease needs --widths or --table");
    expectMisuse(run({"sizes", file_, "--widths", "42"}), "--widths must be a list");
    expectMisuse(run({"sizes", file_, "--widths", "S=-1"}), "Size S");
    expectMisuse(run({"sizes", file_, "--widths", "S=42", "--gauge", "22"}), "--gauge must be");
    expectMisuse(run({"sizes", file_, "--widths", "S=42", "--part", "0"}), "--part must be");
    expectMisuse(run({"sizes", file_, "--widths", "S=42", "--multiple", "x"}), "--multiple must");
    expectMisuse(run({"sizes", file_, "--widths", "S=42", "--hold", "A"}), "--hold must be");
    expectMisuse(run({"sizes", file_, "--widths", "S=42", "--hold", "Z=1"}), "no repeat Z");
    expectMisuse(run({"sizes", file_, "--hold", "A=1"}), "--hold needs --widths or --table");
    expectMisuse(run({"sizes", file_, "--table", "giants"}), "there are women:bust");
    expectMisuse(run({"sizes", "missing.lacewright"}), "missing.lacewright");
}

}  // namespace
}  // namespace lacewright::cli
