#include "core/words/compare.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "core/file/chart_file.h"
#include "core/words/writer.h"
#include "tests/core/words/reading.h"
#include "tests/support/charts.h"
#include "tests/support/random_charts.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::RandomCharts;
using test::withRepeat;
using test::withSize;

// Empty: the same knitting. Otherwise the first difference of every row, "3: yo/k2tog".
std::string differences(const Chart& chart, const std::string& text, const std::string& size = {}) {
    const ReadRows read = readWritten(text);
    if (read.hasErrors()) return rendered(read.messages.front(), text, "text");
    const Result<Comparison> comparison = compareRows(chart, read.pattern, size);
    if (!comparison) return comparison.error().text();
    std::string out;
    for (const RowDifference& row : comparison->differences) {
        out += std::to_string(row.number) + ":";
        const std::size_t at = row.firstDifference();
        if (at < row.stitches.size()) {
            const ContrastedStitch& stitch = row.stitches[at];
            out += " " + (stitch.charted.empty() ? "-" : stitch.charted) + "/" +
                   (stitch.written.empty() ? "-" : stitch.written);
        }
        out += "\n";
    }
    return out;
}

// Edge, repeat, edge: k1, (yo, k2tog) n times, k1.
Chart eyelets() {
    Chart chart = chartOf({"k k2tog yo k"});
    withRepeat(chart, "A", 2, 3);
    return chart;
}

TEST(Compare, ProvesForEveryNumberOfRepeats) {
    EXPECT_EQ(differences(eyelets(), "Row 1: k1, *yo, k2tog; rep from * to last st, k1."), "");
    EXPECT_EQ(differences(eyelets(), "Row 1: k1, *yo, k2tog; rep from * to last st, p1."),
              "1: k/p\n");
}

// The same rows with the star elsewhere: u (vw)^n u' = u v (wv)^(n-1) w u'.
TEST(Compare, KnowsARepeatThatIsRotated) {
    EXPECT_EQ(
        differences(eyelets(), "Row 1: k1, yo, *k2tog, yo; rep from * to last 3 sts, k2tog, k1."),
        "");
    EXPECT_NE(differences(eyelets(), "Row 1: *k1, yo, k2tog; rep from * to last st, k1."), "");
}

TEST(Compare, TakesOtherNamesOfTheSameWork) {
    EXPECT_EQ(differences(chartOf({"k skp yo k"}), "Row 1: k1, yon, sl 1, k1, psso, k1."), "");
    EXPECT_EQ(differences(chartOf({"k skp yo k"}), "Row 1: k1, yo, ssk, k1."), "1: skp/ssk\n");
    EXPECT_EQ(differences(chartOf({"k*4", "k skp yo k"}), "Row 1: knit.\nRow 2: p1, ssp, yo, p1."),
              "");
}

TEST(Compare, AlignsAroundAMissingYarnOver) {
    const Chart chart = chartOf({"k*3 yo k*3"});
    const std::string text = "Row 1: k6.";
    const Comparison comparison = compareRows(chart, readWritten(text).pattern).value();
    ASSERT_EQ(comparison.differences.size(), 1u);
    const RowDifference& row = comparison.differences[0];
    EXPECT_EQ(row.changes().size(), 1u);
    EXPECT_EQ(row.firstDifference(), 3u);
    EXPECT_EQ(row.stitches[3].charted, "yo");
    EXPECT_EQ(row.stitches[3].column, 4);
    EXPECT_EQ(row.stitches[3].kind, AlignedStep::Kind::OnlyInChart);
}

TEST(Compare, NamesTheSizesThatDiffer) {
    Chart chart = eyelets();
    withSize(chart, "S", 1, 4, 2);
    withSize(chart, "M", 1, 4, 3);
    const std::string head = "Sizes: S (M)\n";
    EXPECT_EQ(differences(chart, head + "Row 1: k1, [yo, k2tog] 2 (3) times, k1."), "");
    const std::string text = head + "Row 1: k1, [yo, k2tog] 2 (2) times, k1.";
    EXPECT_NE(differences(chart, text), "");
    EXPECT_EQ(differences(chart, text, "S"), "");
    const Comparison comparison = compareRows(chart, readWritten(text).pattern).value();
    EXPECT_EQ(comparison.differences[0].sizes, std::vector<std::string>{"M"});
    EXPECT_FALSE(compareRows(chart, readWritten(text).pattern, "XL"));
}

TEST(Compare, MissesRowsOnEitherSide) {
    EXPECT_EQ(differences(chartOf({"k", "k"}), "Row 1: knit."), "2:\n");
    EXPECT_EQ(differences(chartOf({"k"}), "Row 1: knit.\nRow 2: purl."), "2:\n");
    EXPECT_EQ(differences(chartOf({"k"}), "Row 1 (WS): purl."), "1:\n");
}

TEST(Compare, HoldsUnchartedRowsToTheirRule) {
    Chart chart = chartOf({"k*3", "k*3"});
    chart.uncharted = Uncharted::Purl;
    const std::string rows = "Row 1: knit.\nRow 3: knit.\nRow 4: purl.\n";
    EXPECT_EQ(differences(chart, rows + "Row 2: purl."), "");
    EXPECT_EQ(differences(chart, rows + "Row 2: knit."), "2: p/k\n");
}

void expectEqualToItsOwnText(const Chart& chart, const std::string& what) {
    for (const Terms terms : {Terms::Us, Terms::Uk}) {
        WriteOptions options;
        options.style.terms = terms;
        const Result<WrittenChart> written = writeRows(chart, options);
        if (!written) continue;
        EXPECT_EQ(differences(chart, written->text()), "") << what << written->text();
    }
}

TEST(Compare, FindsEverySampleEqualToItsOwnText) {
    for (const auto& entry : std::filesystem::directory_iterator(test::inSourceTree("samples"))) {
        if (entry.path().extension() != ".lacewright") continue;
        expectEqualToItsOwnText(loadChart(entry.path().string()).value(), entry.path().string());
    }
}

// "Row 2: .." may be the first row of a text, and of its chart.
TEST(Compare, ATextThatBeginsAboveRowOneIsAligned) {
    const std::string rows = "Row 2 (RS): k2, yo, k2tog, k4\nRow 3: p\nRow 4: k4, ssk, yo, k2\n";
    const Chart chart = chartOfText("Cast on: 8\n" + rows);
    const auto same = compareRows(chart, readWritten("Cast on: 8\n" + rows).pattern);
    ASSERT_TRUE(same);
    EXPECT_TRUE(same->same());
    const auto other = compareRows(
        chart,
        readWritten("Cast on: 8\nRow 2 (RS): k2, yo, k2tog, k4\nRow 3: p\nRow 4: k\n").pattern);
    ASSERT_TRUE(other);
    ASSERT_EQ(other->differences.size(), 1u);
    EXPECT_EQ(other->differences[0].number, 3);
}

// A chart equals its own text, and no longer when a cell is drawn otherwise.
TEST(Compare, FindsACellThatWasChanged) {
    RandomCharts charts(99);
    int found = 0;
    for (int i = 0; i < 40; ++i) {
        Chart chart = charts.next();
        const Result<WrittenChart> written = writeRows(chart);
        if (!written) continue;
        EXPECT_EQ(differences(chart, written->text()), "") << written->text();
        const int row = charts.between(0, chart.height() - 1);
        const int column = charts.between(1, chart.width);
        auto cells = chart.row(row).cells();
        StitchIndex& cell = cells[static_cast<std::size_t>(column - 1)];
        cell =
            chart.stitches->find((*chart.stitches)[cell].id == "bobble" ? "k" : "bobble").value();
        chart.rows.replace(static_cast<std::size_t>(row), makeRow(cells, *chart.stitches));
        const Result<Comparison> comparison =
            compareRows(chart, readWritten(written->text()).pattern);
        ASSERT_TRUE(comparison);
        ASSERT_EQ(comparison->differences.size(), 1u) << written->text() << test::drawing(chart);
        EXPECT_EQ(comparison->differences[0].number, row + 1);
        const RowDifference& difference = comparison->differences[0];
        EXPECT_TRUE(std::any_of(difference.stitches.begin(), difference.stitches.end(),
                                [](const ContrastedStitch& stitch) {
                                    return stitch.kind != AlignedStep::Kind::Same &&
                                           stitch.charted == "MB";
                                }));
        ++found;
    }
    EXPECT_GT(found, 25);
}

}  // namespace
}  // namespace lacewright
