#include "core/file/chart_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/text.h"
#include "tests/core/file/chart_sample.h"

namespace lacewright {
namespace {

using testing::HasSubstr;
using testing::Not;

TEST(ChartText, ReadsEveryMember) {
    const Chart chart = chartIn(everyMember());
    EXPECT_EQ(chart.name, "Harbour mist, every member");
    EXPECT_EQ(chart.notes, "Rows two and four: \"work as they present\".\nBlock to size.");
    EXPECT_EQ(chart.source, "An invented pattern, tried on no needle");
    EXPECT_EQ(chart.worked, Worked::Flat);
    EXPECT_EQ(chart.firstSide, Side::Wrong);
    EXPECT_EQ(chart.uncharted, Uncharted::AsTheyPresent);
    EXPECT_EQ(chart.castOn, (CastOn{6, 4, {{"edge", "\"long tail\""}}}));
    EXPECT_EQ(chart.gauge, (Gauge{22, 30.5, {{"needle", "\"4 mm\""}}}));
    EXPECT_EQ(chart.width, 10);
    EXPECT_EQ(chart.height(), 3);
    const RowRepeat rowRepeat{1, 2, -2, {{"worked", "\"twice\""}}};
    EXPECT_EQ(chart.rowRepeat, rowRepeat);
    ASSERT_EQ(chart.points.size(), 2U);
    EXPECT_EQ(chart.points[0], (Point{"S", 1, {{"say", "\"start\""}}}));
    EXPECT_EQ(chart.points[1], (Point{"E", 10, {}}));
}

TEST(ChartText, ReadsARepeatAndItsJogs) {
    const Chart chart = chartIn(everyMember());
    ASSERT_EQ(chart.repeats.size(), 1U);
    Repeat expected{"A", 3, 8, 0, 2, {}, {{"shade", "\"grey\""}}};
    expected.jogs[1] = Jog{1, 1, {{"why", "\"drift\""}}};
    expected.jogs[2] = Jog{0, -1, {}};
    EXPECT_EQ(chart.repeats[0], expected);
}

TEST(ChartText, ReadsASize) {
    const Chart chart = chartIn(everyMember());
    ASSERT_EQ(chart.sizes.size(), 2U);
    Size expected;
    expected.name = "small";
    expected.reach = {1, 10};
    expected.times = {{"A", 6}};
    expected.stitches = 40;
    expected.changes = {{1, 1, {2, 10}, {{"by", "\"hand\""}}}};
    expected.substitutions = {{0, 7, Edge::Start, "k", {{"why", "\"edge\""}}},
                              {2, 9, Edge::End, "odd", {}}};
    expected.body = 86.5;
    expected.shoulder = 12;
    expected.extras = {{"bust", "86"}};
    EXPECT_EQ(chart.sizes[0], expected);
    EXPECT_EQ(chart.sizes[1].reach, (Reach{1, 9}));
    EXPECT_FALSE(chart.sizes[1].stitches.has_value());
}

TEST(ChartText, ReadsWhatHoldsOfTheSizesAsAFamily) {
    Grading expected;
    expected.rising = true;
    expected.halved = true;
    expected.pieces = 2;
    expected.edgeStitches = 1;
    expected.leastEase = -5;
    expected.mostEase = 7.5;
    expected.shoulders = {{2, 1, 4, {{"seam", "\"three needles\""}}}, {2, 7, 10, {}}};
    expected.extras = {{"fit", "\"close\""}};
    EXPECT_EQ(chartIn(everyMember()).grading, expected);
    EXPECT_EQ(chartIn(fileWith(R"("rows": ["k"])")).grading, Grading{});
}

TEST(ChartText, ReadsAStitchOfItsOwn) {
    const Chart chart = chartIn(everyMember());
    const auto index = chart.stitches->find("wave");
    ASSERT_TRUE(index.has_value());
    Stitch expected;
    expected.id = "wave";
    expected.name = "a wave over three";
    expected.takes = expected.makes = expected.span = 3;
    expected.lean = Lean::Centred;
    expected.kind = StitchKind::Cross;
    expected.mirror = "wave";
    expected.rightSide = {"wave", "Work the wave", {{"video", "7"}}};
    expected.wrongSide = {"wave ws", "", {}};
    expected.glyph = {{0, 10, "q15 -10 30 0", true, {{"ink", "2"}}}, {30, 10, "l30 0", false, {}}};
    expected.shaded = true;
    expected.source = "our own";
    expected.extras = {{"colour", "[1, 0.10, null]"}};
    EXPECT_EQ((*chart.stitches)[*index], expected);
}

TEST(ChartText, KeepsACopyOfEveryBuiltInStitch) {
    const StitchCatalogue& builtIn = *builtInStitches();
    std::vector<Stitch> all;
    for (std::size_t i = 1; i <= builtIn.size(); ++i)
        all.push_back(builtIn[static_cast<StitchIndex>(i)]);
    for (std::size_t i = 1; i <= builtIn.size(); ++i) {
        all.push_back(builtIn[static_cast<StitchIndex>(i)]);
        all.back().id = "our-" + all.back().id;
    }
    Chart chart = blankChart(1, 1);
    chart.stitches = std::make_shared<StitchCatalogue>(std::move(all));
    EXPECT_EQ(chartIn(writeChart(chart)), chart);
}

TEST(ChartText, AnOwnStitchTakesThePlaceOfTheBuiltInOneWithItsId) {
    const Chart chart = chartIn(everyMember());
    const auto index = chart.stitches->find("k2tog");
    ASSERT_TRUE(index.has_value());
    EXPECT_EQ(index, builtInStitches()->find("k2tog"));
    EXPECT_EQ((*chart.stitches)[*index].name, "knit 2 together, our way");
    EXPECT_THAT(writeChart(chart), HasSubstr("knit 2 together, our way"));
}

TEST(ChartText, CanonicalTextIsWrittenBackByteForByte) {
    EXPECT_EQ(writeChart(chartIn(everyMember())), everyMember());
}

TEST(ChartText, WritesOneRowALine) {
    const auto lines = splitLines(everyMember());
    const std::string text = writeChart(chartIn(everyMember()));
    EXPECT_THAT(text,
                HasSubstr("\n    \"k*2 yo k2tog wave k*3\",\n    \"*wave **2 k odd*3 wave\",\n"));
    EXPECT_EQ(splitLines(text).size(), lines.size());
}

TEST(ChartText, LeavesOutDefaults) {
    EXPECT_EQ(writeChart(blankChart(3, 2)),
              "{\n"
              "  \"format\": \"lacewright-chart\",\n"
              "  \"version\": 1,\n"
              "  \"width\": 3,\n"
              "  \"rows\": [\n"
              "    \"k*3\",\n"
              "    \"k*3\"\n"
              "  ]\n"
              "}\n");
}

TEST(ChartText, TakesTheDefaultsOfMissingMembers) {
    const Chart chart = chartIn(fileWith(
        R"("repeats": [{"name": "A", "right": 1, "left": 2}], "sizes": [{"name": "M"}], "rows": ["k k", "k*2"])"));
    Chart expected = blankChart(2, 2);
    expected.repeats = {{"A", 1, 2, 0, 1, {}, {}}};
    expected.sizes.resize(1);
    expected.sizes[0].name = "M";
    expected.sizes[0].reach = {1, 2};
    EXPECT_EQ(chart, expected);
    EXPECT_EQ(chart.stitches, builtInStitches());
}

TEST(ChartText, ReadsRowsFromTheLeftAndStoresColumnsFromTheRight) {
    const Chart chart = chartIn(fileWith(R"("rows": ["k2tog yo k"])"));
    EXPECT_EQ(chart.row(0).at(1), chart.stitches->find("k"));
    EXPECT_EQ(chart.row(0).at(2), chart.stitches->find("yo"));
    EXPECT_EQ(chart.row(0).at(3), chart.stitches->find("k2tog"));
}

TEST(ChartText, NamesRowsAsTheKnitterReadsThem) {
    const std::string_view rows =
        R"("rowRepeat": {"firstRow": 3, "lastRow": 5}, "rows": ["k", "k", "k", "k", "k"])";
    const Chart every = chartIn(fileWith(rows));
    EXPECT_EQ(every.rowRepeat->firstRow, 2);
    EXPECT_EQ(every.rowRepeat->lastRow, 4);
    const Chart second =
        chartIn(fileWith(std::string(R"("uncharted": "purl", )") + std::string(rows)));
    EXPECT_EQ(second.rowRepeat->firstRow, 1);
    EXPECT_EQ(second.rowRepeat->lastRow, 2);
    EXPECT_THAT(writeChart(second), HasSubstr(R"("rowRepeat": {"firstRow": 3, "lastRow": 5})"));
}

TEST(ChartText, WritesTheFirstPointAtAColumnAndElseItsNumber) {
    const Chart chart = chartIn(fileWith(
        R"("points": [{"name": "P", "column": 2}, {"name": "Q", "column": 2}],
           "sizes": [{"name": "M", "start": "Q", "end": 3}], "rows": ["k*3"])"));
    EXPECT_THAT(writeChart(chart), HasSubstr(R"({"name": "M", "start": "P", "end": 3})"));
}

TEST(ChartText, ReadsEveryChoice) {
    for (const std::string_view uncharted : {"none", "as they present", "purl", "knit"}) {
        const std::string text = writeChart(chartIn(
            fileWith(R"("uncharted": ")" + std::string(uncharted) + R"(", "rows": ["k"])")));
        if (uncharted == "none") {
            EXPECT_THAT(text, Not(HasSubstr("uncharted")));
        } else {
            EXPECT_THAT(text, HasSubstr(R"("uncharted": ")" + std::string(uncharted) + '"'));
        }
    }
    const Chart round = chartIn(fileWith(R"("worked": "in the round", "rows": ["k"])"));
    EXPECT_EQ(round.worked, Worked::InTheRound);
    EXPECT_EQ(chartIn(writeChart(round)), round);
}

TEST(ChartText, WritesAFixedCastOn) {
    const Chart chart = chartIn(fileWith(R"("castOn": {"stitches": 40}, "rows": ["k"])"));
    EXPECT_EQ(chart.castOn, (CastOn{0, 40, {}}));
    EXPECT_THAT(writeChart(chart), HasSubstr(R"("castOn": {"stitches": 40})"));
}

TEST(ChartText, KeepsAStitchThatIsDefinedNowhere) {
    const Chart chart = chartIn(fileWith(
        R"("sizes": [{"name": "M", "substitutions": [{"row": 1, "column": 1, "stitch": "mystery"}]}],
           "rows": ["k whatsit*2", "whatsit k*2"])"));
    for (const char* id : {"whatsit", "mystery"}) {
        const auto index = chart.stitches->find(id);
        ASSERT_TRUE(index.has_value()) << id;
        const Stitch& stitch = (*chart.stitches)[*index];
        EXPECT_EQ(stitch.kind, StitchKind::Unknown);
        EXPECT_EQ(stitch.takes, 1);
        EXPECT_EQ(stitch.makes, 1);
        EXPECT_EQ(stitch.span, 1);
    }
    EXPECT_TRUE(chart.row(0).traits().hasUnknown);
    const std::string text = writeChart(chart);
    EXPECT_THAT(text, HasSubstr("\"k whatsit*2\""));
    EXPECT_THAT(text, Not(HasSubstr("stitches")));
    EXPECT_EQ(chartIn(text), chart);
}

TEST(ChartText, KeepsUnknownMembersInOrderAndUntouched) {
    const std::string extras =
        R"(  "z": 1.50,)"
        "\n"
        R"(  "a": {"k": [1, -2, 1e300, true, null, 18446744073709551615], "b": {}, "c": []},)"
        "\n"
        R"(  "m": "ü\t\"\\")"
        "\n}\n";
    const std::string text = writeChart(blankChart(1, 1));
    const std::string with = text.substr(0, text.size() - 3) + ",\n" + extras;
    const Chart chart = chartIn(with);
    ASSERT_EQ(chart.extras.size(), 3U);
    EXPECT_EQ(chart.extras[0], (std::pair<std::string, std::string>("z", "1.50")));
    EXPECT_EQ(writeChart(chart), with);
}

TEST(ChartText, ToleratesAByteOrderMark) {
    EXPECT_EQ(chartIn("\xEF\xBB\xBF" + everyMember()), chartIn(everyMember()));
}

TEST(ChartText, WritesReadableTextWhateverBytesANameHolds) {
    Chart chart = blankChart(1, 1);
    chart.name = "caf\xE9 \x01";
    EXPECT_EQ(chartIn(writeChart(chart)).name, "caf\xEF\xBF\xBD \x01");
}

TEST(ChartText, SharesRowsThatReadAlike) {
    const Chart chart = chartIn(fileWith(R"("rows": ["k*2", "yo k", "k*2"])"));
    EXPECT_EQ(chart.rows[0], chart.rows[2]);
    EXPECT_NE(chart.rows[0], chart.rows[1]);
}

TEST(ChartText, RefusesMembersThatContradictEachOther) {
    const auto read = readChart(
        R"({"format": "lacewright-chart", "version": 1, "rows": ["k*3 c11r k"], "sizes": [{"name": "M",
            "substitutions": [{"row": 1, "column": 2, "stitch": "k"}]}]})",
        "fern.lacewright");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().text(),
              "fern.lacewright: Size M replaces the stitch in row 1, column 2, by one of another "
              "width.");
}

}  // namespace
}  // namespace lacewright
