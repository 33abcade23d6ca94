#include "core/words/chart_from_rows.h"

#include <algorithm>
#include <iostream>

#include "core/base/text.h"
#include "core/chart/edits.h"
#include "core/check/check.h"
#include "core/words/worked_row.h"
#include "tests/core/words/reading.h"
#include "tests/support/charts.h"

namespace lacewright {
namespace {

// Stitches of one chart row in working order with the box worked n times.
std::vector<std::string> knittingOf(const Chart& chart, int row, int n) {
    const std::vector<int> times(chart.repeats.size(), n);
    std::vector<std::string> ids;
    for (const WorkedCell& cell : unrolled(pathOn(chart, row, nullptr), times)) {
        const StitchIndex index = chart.row(row).at(cell.column);
        if (index == kCovered || (*chart.stitches)[index].kind == StitchKind::NoStitch) continue;
        ids.push_back((*chart.stitches)[index].id);
    }
    if (chart.sideOf(row) == Side::Wrong) std::reverse(ids.begin(), ids.end());
    return ids;
}

std::int64_t taken(const std::vector<std::string>& ids, const Chart& chart) {
    std::int64_t sum = 0;
    for (const std::string& id : ids)
        sum += (*chart.stitches)[chart.stitches->find(id).value()].takes;
    return sum;
}

// Where the chart's knitting differs from the text's for some of the numbers of repeats 1, 2, 3;
// empty when all is the same. Requires: rows that are not worked again, and that fit.
std::string knittingDiffers(const WrittenPattern& pattern, const Chart& chart) {
    const WrittenProof proof = proveWritten(pattern);
    for (int n = 1; n <= 3; ++n) {
        // The text's own number of repeats is the one with as many stitches on row 1.
        const std::int64_t wanted = taken(knittingOf(chart, 0, n), chart);
        std::int64_t own = 0;
        const auto value = [&own](Variable) { return own; };
        while (own < 400 && proof.rows.front().before.at(value) != wanted) ++own;
        if (proof.rows.front().before.isConstant() && own == 400) continue;  // fixed: one n only
        if (own == 400) return "no count of the text has " + std::to_string(wanted) + " stitches";
        for (std::size_t r = 0; r < pattern.rows.size(); ++r) {
            const auto worked = workedRow(pattern, pattern.rows[r], proof.rows[r]);
            if (!worked) return worked.error().message;
            const std::vector<RowStitch> text = unrolled(*worked, value);
            const auto drawn = knittingOf(chart, static_cast<int>(r), n);
            bool same = text.size() == drawn.size();
            for (std::size_t i = 0; same && i < text.size(); ++i) {
                same =
                    text[i].presents ? drawn[i] == "k" || drawn[i] == "p" : drawn[i] == text[i].id;
            }
            if (!same) {
                std::string written;
                for (const RowStitch& stitch : text) written += stitch.id + " ";
                return "row " + std::to_string(r + 1) + ", n " + std::to_string(n) + "\n  text  " +
                       written + "\n  chart " + join(drawn, " ");
            }
        }
    }
    return {};
}

// "yes", or the first faulty row of the chart by its position from 1.
std::string verdictOn(const Chart& chart) {
    const Report report = check(chart);
    for (const Finding& finding : report.findings) {
        if (finding.severity != Severity::Fault) continue;
        const int row = std::max(finding.row, 1);
        return "row " + std::to_string(chart.indexOfRowNumber(row).value_or(row - 1) + 1);
    }
    return "yes";
}

std::string verdictOn(const WrittenProof& proof) {
    return proof.knittable ? "yes" : "row " + std::to_string(proof.faulty.front() + 1);
}

TEST(ChartFromRows, HandbookPatternsKnitTheSameFromChartAndText) {
    int drawn = 0;
    int sturdy = 0;
    int sturdyDrawn = 0;
    int boxes = 0;
    for (const auto& [name, text] : handbookTexts()) {
        const ReadRows read = readWritten(text);
        const WrittenProof proof = proveWritten(read.pattern);
        const bool isSturdy = text.find("sturdy=yes") != std::string::npos && proof.knittable;
        sturdy += isSturdy ? 1 : 0;
        const auto chart = chartFromRows(read.pattern);
        if (!chart) {
            std::cout << "not drawn: " << name << ": " << chart.error().message << "\n";
            EXPECT_FALSE(isSturdy) << name;
            continue;
        }
        ++drawn;
        sturdyDrawn += isSturdy ? 1 : 0;
        boxes += chart->chart.repeats.empty() ? 0 : 1;
        EXPECT_FALSE(frameProblem(chart->chart)) << name << frameProblem(chart->chart)->message;
        EXPECT_EQ(verdictOn(chart->chart), verdictOn(proof)) << name << "\n"
                                                             << test::drawing(chart->chart);
        if (!proof.knittable || !read.pattern.again.empty()) continue;
        EXPECT_EQ(knittingDiffers(read.pattern, chart->chart), "") << name;
    }
    std::cout << drawn << " of 97 handbook patterns drawn, " << boxes << " with a repeat box; "
              << sturdyDrawn << " of " << sturdy << " sturdy knittable ones\n";
    EXPECT_GT(sturdy, 40);
}

TEST(ChartFromRows, TheBoxOfAPlainRowIsThatOfItsNeighbours) {
    const Chart chart = chartOfText(
        "Cast on: multiple of 6 plus 3\n"
        "Row 1: k1, *yo, k2tog, k4; rep from * to last 2 sts, k2\nRow 2: purl");
    ASSERT_EQ(chart.repeats.size(), 1u);
    EXPECT_EQ(chart.width, 9);
    EXPECT_EQ(chart.repeats[0].right, 2);
    EXPECT_EQ(chart.repeats[0].left, 7);
    EXPECT_TRUE(chart.repeats[0].jogs.empty());
    EXPECT_EQ(chart.castOn, (CastOn{6, 3, {}}));
    EXPECT_EQ(test::drawing(chart),
              "A: columns 2..7, row indices 0..1\nk k k k k k k k k \nk k k k k k k2tog yo k \n");
    EXPECT_TRUE(check(chart).knittable);
}

TEST(ChartFromRows, ARepeatThatBeginsElsewhereHasAJoggedBox) {
    const Chart chart = chartOfText(
        "Cast on: multiple of 4 plus 3\n"
        "Row 1: k1, *yo, k2tog, k2; rep from * to last 2 sts, k2\n"
        "Row 2: purl\n"
        "Row 3: k2, *yo, k2tog, p2; rep from * to last st, k1\n");
    ASSERT_EQ(chart.repeats.size(), 1u);
    EXPECT_EQ(chart.repeats[0].jogs.size(), 1u) << test::drawing(chart);
    EXPECT_TRUE(check(chart).knittable);
}

TEST(ChartFromRows, RepeatsOfOtherWidthsShareOneBox) {
    const Chart chart = chartOfText(
        "Cast on: multiple of 6 plus 0\n"
        "Row 1: *yo, k2tog, k1; rep from * to end\nRow 2: purl\n"
        "Row 3: *k2tog, yo; rep from * to end\nRow 4: purl\nRow 5: *ssk, yo, k4; rep from *\n");
    ASSERT_EQ(chart.repeats.size(), 1u);
    EXPECT_EQ(chart.repeats[0].left - chart.repeats[0].right + 1, 6);
    EXPECT_TRUE(check(chart).knittable);
}

TEST(ChartFromRows, RowsThatChangeTheCountAreFilledWithNoStitches) {
    const Chart chart = chartOfText(
        "Cast on: multiple of 5 plus 2\n"
        "Row 1: k1, *k1, yo, k3, yo, k1; rep from * to last st, k1\n"
        "Row 2: purl\n"
        "Row 3: k1, *ssk, k3, k2tog; rep from * to last st, k1\n"
        "Row 4: purl\n");
    EXPECT_EQ(chart.width, 9);
    // The decreases stand above the yarn overs' edges, the gaps where they close the fan.
    EXPECT_EQ(test::drawing(chart),
              "A: columns 2..8, row indices 0..3\n"
              "k no-stitch k k k k k no-stitch k \n"
              "k no-stitch k2tog k k k ssk no-stitch k \n"
              "k k k k k k k k k \n"
              "k k yo k k k yo k k \n");
    EXPECT_TRUE(check(chart).knittable);
}

TEST(ChartFromRows, AFixedCastOnHasABoxWhenTheRowsAreStarred) {
    const Chart chart = chartOfText(
        "Cast on: 40\nRow 1: k2, *yo, k2tog, k4; rep from * to last 2 sts, k2\nRow 2: purl");
    ASSERT_EQ(chart.repeats.size(), 1u);
    EXPECT_EQ(chart.width, 10);
    EXPECT_EQ(chart.castOn, (CastOn{0, 40, {}}));
    EXPECT_TRUE(check(chart).knittable);
}

TEST(ChartFromRows, ANarrowEdgingHasNoBox) {
    const Chart chart =
        chartOfText("Cast on: 6\nRow 1: k3, yo, k3\nRow 2: k7\nRow 3: bo 1, k6\nRow 4: k6");
    EXPECT_TRUE(chart.repeats.empty());
    EXPECT_EQ(chart.width, 7);
    EXPECT_TRUE(check(chart).knittable);
}

TEST(ChartFromRows, AFaultIsDrawn) {
    const auto drawn = chartFromRows(
        readWritten("Cast on: multiple of 6 plus 2\n"
                    "Row 1: k1, *yo, k2tog, k4; rep from * to last st, k1\n"
                    "Row 2: purl\nRow 3: k1, *yo, k2tog, k3; rep from * to last st, k1\n")
            .pattern);
    ASSERT_TRUE(drawn);
    EXPECT_FALSE(drawn->knittable);
    EXPECT_EQ(verdictOn(drawn->chart), "row 3");
    const auto rest = chartFromRows(readWritten("Cast on: 20\nRow 1: k to last 3 sts, k2").pattern);
    ASSERT_TRUE(rest);
    EXPECT_EQ(verdictOn(rest->chart), "row 1");
}

TEST(ChartFromRows, SizesThatDifferInTheirTimesShareOneChart) {
    const auto drawn = chartFromRows(
        readWritten("Sizes: S (M)\nCast on: 14 (26)\n"
                    "Row 1: k1, *yo, k2tog, k4; rep from * to last st, k1\nRow 2: purl")
            .pattern);
    ASSERT_TRUE(drawn) << drawn.error().message;
    ASSERT_EQ(drawn->chart.sizes.size(), 2u);
    EXPECT_EQ(drawn->chart.sizes[0].times.at("A"), 2);
    EXPECT_EQ(drawn->chart.sizes[1].times.at("A"), 4);
    EXPECT_EQ(drawn->chart.sizes[1].stitches, 26);
    EXPECT_FALSE(frameProblem(drawn->chart));
    EXPECT_TRUE(check(drawn->chart).knittable);
}

TEST(ChartFromRows, FrameIsTakenOver) {
    const Chart chart = chartOfText(
        "Title: Reed beds\nSource: Mill notes\nYear: 1901\nCast on: 4\nRepeat from row: 2\n"
        "Rnd 1: k4\nRnd 2: p4\nRnd 3: yo, k2tog, k2\nStitch knot: takes 3 makes 1\n");
    EXPECT_EQ(chart.name, "Reed beds");
    EXPECT_EQ(chart.source, "Mill notes, 1901");
    EXPECT_EQ(chart.worked, Worked::InTheRound);
    ASSERT_TRUE(chart.rowRepeat);
    EXPECT_EQ(chart.rowRepeat->firstRow, 1);
    EXPECT_EQ(chart.rowRepeat->lastRow, 2);
}

TEST(ChartFromRows, RowsWorkedAgainAreDrawnAgain) {
    const Chart chart = chartOfText(
        "Cast on: 4\nRow 1: k1, yo, k to end\nRow 2: p\nRep rows 1 and 2 twice more\nRow 7: k7");
    EXPECT_EQ(chart.height(), 7);
    EXPECT_TRUE(check(chart).knittable);
}

TEST(ChartFromRows, RefusesWhatItCannotDraw) {
    const auto refusal = [](const std::string& text) {
        const auto drawn = chartFromRows(readWritten(text).pattern);
        return drawn ? std::string() : drawn.error().message;
    };
    EXPECT_NE(refusal("Row 1: *yo; rep from * to end").find("cannot be counted"),
              std::string::npos);
    EXPECT_NE(refusal("Cast on: 9000\nRow 1: k to end").find("more than a chart"),
              std::string::npos);
    EXPECT_NE(refusal("").find("no rows"), std::string::npos);
}

TEST(ChartFromRows, TitlesThatAreNoUtf8BecomeTextOfTheChart) {
    const Chart chart = chartOfText("Title: Lace \xE9\xFF edging\nRow 1: k3\n");
    EXPECT_EQ(chart.name, "Lace ?? edging");
    const Chart plain = chartOfText("Title: Spitze \xC3\xA9\nRow 1: k3\n");
    EXPECT_EQ(plain.name, "Spitze \xC3\xA9");
}

TEST(ChartFromRows, AWrongRowAndThoseAfterItKeepTheirRepeats) {
    // 4n + 2 loops; the rows stand 10 stitches beside the repeat, which so is worked n - 2 times.
    // Row 2 works one stitch more after it.
    const auto drawn =
        chartFromRows(readWritten("Cast on a multiple of 4 sts plus 2.\n"
                                  "Row 1: k3, *yo, k2tog, k2; rep from * to last 7 sts, k7.\n"
                                  "Row 2: p3, *p4; rep from * to last 7 sts, p8.\n"
                                  "Row 3: k3, *k2, yo, k2tog; rep from * to last 7 sts, k7.\n")
                          .pattern);
    ASSERT_TRUE(drawn) << drawn.error().text();
    ASSERT_EQ(drawn->chart.repeats.size(), 1u);
    const Report report = check(drawn->chart);
    const auto fault =
        std::find_if(report.findings.begin(), report.findings.end(),
                     [](const Finding& finding) { return finding.severity == Severity::Fault; });
    ASSERT_NE(fault, report.findings.end());
    EXPECT_EQ(fault->message.rfind("Row 2 takes 1 more than row 1 leaves, however often", 0), 0u)
        << fault->message;
}

}  // namespace
}  // namespace lacewright
