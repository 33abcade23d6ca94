#include "core/words/writer.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "core/check/check.h"
#include "core/file/chart_file.h"
#include "core/words/prove.h"
#include "core/words/reader.h"
#include "tests/support/charts.h"
#include "tests/support/random_charts.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::RandomCharts;
using test::withRepeat;
using test::withSize;

std::string rowsOf(const Chart& chart, const WriteOptions& options = {}) {
    const Result<WrittenChart> written = writeRows(chart, options);
    if (!written) return written.error().text();
    std::string text;
    for (const WrittenLine& line : written->lines) text += line.text() + "\n";
    return text;
}

TEST(Writer, WritesARepeatForEveryNumberOfTimes) {
    Chart chart = chartOf({"k*2 ssk yo k k2tog yo k*3", "k*10"});
    withRepeat(chart, "A", 4, 8);
    EXPECT_EQ(rowsOf(chart),
              "Row 1 (RS): k3, *yo, k2tog, k1, yo, ssk; rep from * to last 2 sts, k2.\n"
              "Row 2 (WS): purl.\n");
    EXPECT_EQ(writeRows(chart)->heading.front(), "Cast on: multiple of 5 plus 5");
}

TEST(Writer, AMultipleThatLacksStitchesReadsBackAsOne) {
    Chart chart = chartOf({"k*2 k2tog k*2 yo k*3", "k*9"});
    chart.castOn = CastOn{6, -3};
    withRepeat(chart, "A", 3, 8);
    const auto written = writeRows(chart);
    ASSERT_TRUE(written);
    EXPECT_EQ(written->heading.front(), "Cast on: multiple of 6 minus 3");
    EXPECT_EQ(readWritten(written->heading.front() + "\n" + rowsOf(chart)).pattern.castOn->plus,
              Figure(-3));
}

TEST(Writer, WrongSideRowsAreReadFromTheLeftInWrongSideWords) {
    const Chart chart = chartOf({"k*5", "p ssk yo k2tog p"});
    EXPECT_EQ(rowsOf(chart),
              "Row 1 (RS): knit.\n"
              "Row 2 (WS): k1, ssp, yo, p2tog, k1. (5 sts)\n");
}

TEST(Writer, RoundsAreAllRightSide) {
    Chart chart = chartOf({"yo k2tog", "k*2"});
    chart.worked = Worked::InTheRound;
    EXPECT_EQ(rowsOf(chart), "Rnd 1: k2tog, yo.\nRnd 2: knit.\n");
}

TEST(Writer, SizesStandSideBySide) {
    Chart chart = chartOf({"k k k2tog yo k k*3"});
    withRepeat(chart, "A", 4, 6);
    withSize(chart, "S", 3, 8, 2);
    withSize(chart, "M", 2, 8, 3);
    withSize(chart, "L", 1, 8, 4);
    EXPECT_EQ(rowsOf(chart),
              "Row 1 (RS): k1 (2, 3), *k1, yo, k2tog; rep from * to last 2 sts, k2.\n");
    const WrittenChart written = writeRows(chart).value();
    EXPECT_EQ(written.heading[0], "Cast on: 9 (13, 17)");
    EXPECT_EQ(written.heading[2], "Sizes: S (M, L)");
    WriteOptions one;
    one.sizes = {"M"};
    EXPECT_EQ(rowsOf(chart, one),
              "Row 1 (RS): k2, *k1, yo, k2tog; rep from * to last 2 sts, k2.\n");
}

// A size that never works the repeat cannot say "rep from *".
TEST(Writer, SizesThatDifferInMoreThanNumbersAreBracketed) {
    Chart chart = chartOf({"k k2tog yo ssk yo k"});
    withRepeat(chart, "A", 2, 3);
    withSize(chart, "S", 1, 6, 0);
    withSize(chart, "M", 1, 6, 2);
    const std::string text = writeRows(chart).value().text();
    const ReadRows read = readWritten(text);
    ASSERT_FALSE(read.hasErrors()) << text;
    for (std::size_t size = 0; size < 2; ++size)
        EXPECT_TRUE(proveWritten(read.pattern, size).knittable) << text;
}

TEST(Writer, SaysRowsThatAreNotCharted) {
    Chart chart = chartOf({"k yo k2tog k", "k k2tog yo k"});
    chart.uncharted = Uncharted::Purl;
    EXPECT_EQ(rowsOf(chart),
              "Row 1 (RS): k1, k2tog, yo, k1.\n"
              "Row 2 and all WS rows: purl.\n"
              "Row 3 (RS): k1, yo, k2tog, k1.\n");
    chart.uncharted = Uncharted::AsTheyPresent;
    EXPECT_FALSE(readWritten(writeRows(chart)->text()).hasErrors());
}

TEST(Writer, JoinsRowsThatAreAlike) {
    const Chart chart = chartOf({"yo k2tog", "k*2", "k2tog yo", "k*2"});
    EXPECT_EQ(rowsOf(chart),
              "Row 1 (RS): k2tog, yo.\nRow 2 and all WS rows: purl.\nRow 3 (RS): yo, k2tog.\n");
}

TEST(Writer, LeavesOutCellsThatAreNoStitch) {
    EXPECT_EQ(rowsOf(chartOf({"k no-stitch no-stitch k yo k2tog"})),
              "Row 1 (RS): k2tog, yo, k2.\n");
}

TEST(Writer, DefinesStitchesThatTheVocabularyDoesNotKnow) {
    const Chart chart = chartOf({"k ksp yo k"});
    const WrittenChart written = writeRows(chart).value();
    EXPECT_NE(written.text().find("Stitch ksp: takes 2 makes 1\n"), std::string::npos);
}

// Terms as the Craft Yarn Council lists them for use outside the United States: yrn, skpo, cast
// off. "yrn" stands for every yarn over: it is never a mere moving of the yarn, as yfwd may be.
TEST(Writer, WritesUnitedKingdomTerms) {
    WriteOptions options;
    options.style.terms = Terms::Uk;
    EXPECT_EQ(rowsOf(chartOf({"k skp yo yo2 bo bo k"}), options),
              "Row 1 (RS): k1, cast off 2, yrn twice, yfwd, skpo, k1.\n");
    EXPECT_EQ(rowsOf(chartOf({"k*2 yo k2tog p yo k2tog yo p p yo p2tog k"}), options),
              "Row 1 (RS): k1, p2tog, yrn, p2, yon, k2tog, yfrn, p1, k2tog, yfwd, k2. (13 sts)\n");
    const WrittenChart written = writeRows(chartOf({"k yo k2tog p yo p2tog"}), options).value();
    EXPECT_NE(written.text().find("yrn: Lay"), std::string::npos) << written.text();
    EXPECT_NE(written.text().find("yfwd: Lay"), std::string::npos) << written.text();
}

TEST(Writer, FollowsTheHouseStyle) {
    WriteOptions options;
    options.style.brackets = Brackets::Round;
    options.style.numerals = Numerals::Words;
    EXPECT_EQ(rowsOf(chartOf({"p k2tog yo k2tog yo k2tog yo k"}), options),
              "Row 1 (RS): k1, (yo, k2tog) three times, p1.\n");
}

TEST(Writer, RefusesMoreFreeRepeatsThanItCanProveAndUnknownSizes) {
    Chart chart = chartOf({"k*28"});
    for (int i = 0; i < 7; ++i)
        withRepeat(chart, std::string(1, static_cast<char>('A' + i)), 4 * i + 1, 4 * i + 2);
    const auto written = writeRows(chart);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().message,
              "Without a size, row 1 has more than 6 repeats side by side whose counts are free; "
              "choose a size.");
    WriteOptions options;
    options.sizes = {"XS"};
    EXPECT_FALSE(writeRows(chart, options));
}

TEST(Writer, PagesEscapeWhatTheyQuote) {
    Chart chart = chartOf({"k"});
    chart.name = "A <b> & \"c\"";
    const std::string page = writeRows(chart)->html();
    EXPECT_NE(page.find("<h1>A &lt;b&gt; &amp; &quot;c&quot;</h1>"), std::string::npos) << page;
    EXPECT_NE(page.find("lang=\"en-US\""), std::string::npos);
}

TEST(Writer, EveryWordKnowsItsCells) {
    Chart chart = chartOf({"p k2tog yo k2tog yo k2tog yo k"});
    const WrittenChart written = writeRows(chart).value();
    const WrittenLine& line = written.lines.front();
    ASSERT_EQ(textOf(line.pieces), "k1, [yo, k2tog] 3 times, p1");
    const TextPiece& last = line.pieces.back();
    EXPECT_EQ(last.text, "p1");
    EXPECT_EQ(line.columns[last.first], 8);
    EXPECT_EQ(line.columns.size(), 8u);
}

// Every built-in stitch can be written on both sides and reads back.
TEST(Writer, WritesEveryStitch) {
    const StitchCatalogue& stitches = *builtInStitches();
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        if (stitch.kind == StitchKind::NoStitch) continue;
        for (const Terms terms : {Terms::Us, Terms::Uk}) {
            Chart chart = chartOf({"k " + stitch.id + "*3 p", "k " + stitch.id + "*3 p"});
            WriteOptions options;
            options.style.terms = terms;
            const Result<WrittenChart> written = writeRows(chart, options);
            EXPECT_TRUE(written) << stitch.id << ": " << (written ? "" : written.error().text());
        }
    }
}

// A chart that can be knitted gives rows that can, for every size, by the proof of written rows.
void expectKnittable(const Chart& chart, const std::string& what) {
    const Result<WrittenChart> written = writeRows(chart);
    ASSERT_TRUE(written) << what << written.error().text();
    const ReadRows read = readWritten(written->text());
    ASSERT_FALSE(read.hasErrors()) << what;
    if (!check(chart).knittable) return;
    for (std::size_t size = 0; size < read.pattern.sizeCount(); ++size)
        EXPECT_TRUE(proveWritten(read.pattern, size).knittable) << what << "\n" << written->text();
}

TEST(Writer, WritesTheSamples) {
    int count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(test::inSourceTree("samples"))) {
        if (entry.path().extension() != ".lacewright") continue;
        const Result<Chart> chart = loadChart(entry.path().string());
        ASSERT_TRUE(chart);
        expectKnittable(*chart, entry.path().string());
        ++count;
    }
    EXPECT_GE(count, 8);
}

TEST(Writer, ASizeWithoutStitchesOnARowHasNone) {
    Chart chart = chartOf({"k*8", "p*8"});
    withRepeat(chart, "A", 3, 5);
    withSize(chart, "S", 3, 5, 0);
    withSize(chart, "M", 3, 6, 1);
    EXPECT_EQ(rowsOf(chart), "Rows 1 and 2: k0 (4).\n");
    std::swap(chart.sizes[0], chart.sizes[1]);
    EXPECT_TRUE(writeRows(chart));
    chart.sizes.erase(chart.sizes.begin());
    EXPECT_EQ(rowsOf(chart), "Row 1 (RS) has no stitches to write.");
}

TEST(Writer, WritesRandomCharts) {
    RandomCharts charts(41);
    int written = 0;
    for (int i = 0; i < 100; ++i) {
        Chart chart = charts.next();
        if (charts.oneIn(2)) {
            withSize(chart, "S", 1, chart.width, charts.between(1, 3));
            withSize(chart, "M", charts.between(1, 2), chart.width, charts.between(1, 4));
        }
        const Result<WrittenChart> text = writeRows(chart);
        EXPECT_TRUE(text) << text.error().text() << "\n" << test::drawing(chart);
        written += text ? 1 : 0;
    }
    EXPECT_EQ(written, 100);
}

}  // namespace
}  // namespace lacewright
