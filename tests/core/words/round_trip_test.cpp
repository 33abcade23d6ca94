#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

#include "core/base/text.h"
#include "core/check/check.h"
#include "core/words/chart_from_rows.h"
#include "core/words/compare.h"
#include "core/words/reader.h"
#include "core/words/writer.h"
#include "tests/core/words/reading.h"
#include "tests/support/charts.h"
#include "tests/support/random_charts.h"

// Text to chart to text to chart: the knitting is the same each time.
namespace lacewright {
namespace {

// The stitches of all rows, each from the right, with every box worked n times.
std::string knitting(const Chart& chart, int n) {
    std::string all;
    const std::vector<int> times(chart.repeats.size(), n);
    for (int row = 0; row < chart.height(); ++row) {
        for (const WorkedCell& cell : unrolled(pathOn(chart, row, nullptr), times)) {
            const StitchIndex index = chart.row(row).at(cell.column);
            if (index == kCovered || (*chart.stitches)[index].kind == StitchKind::NoStitch)
                continue;
            // Yarn overs side by side are one double yarn over.
            const std::string& id = (*chart.stitches)[index].id;
            all += id == "yo2" ? "yo yo " : id == "yo3" ? "yo yo yo " : id + " ";
        }
        all += "\n";
    }
    return all;
}

std::int64_t firstRowTakes(const Chart& chart, int n) {
    return formsOf(chart.row(0), pathOn(chart, 0, nullptr)).takes.at([n](Variable) { return n; });
}

// The same rows for the numbers of repeats n and for the same counts of stitches in the other.
std::string difference(const Chart& a, const Chart& b) {
    if (a.height() != b.height()) return "another number of rows";
    int compared = 0;
    for (int n = 1; n <= 6; ++n) {
        for (int m = 0; m <= 60; ++m) {
            if (firstRowTakes(a, n) != firstRowTakes(b, m)) continue;
            ++compared;
            const std::string first = knitting(a, n);
            const std::string second = knitting(b, m);
            if (first != second) {
                return "n " + std::to_string(n) + "\n" + first + "against\n" + second;
            }
            break;
        }
    }
    return compared == 0 ? "no count in common" : "";
}

TEST(RoundTrip, HandbookTextsKeepTheirRows) {
    int drawn = 0;
    int written = 0;
    int compared = 0;
    for (const auto& [name, given] : handbookTexts()) {
        const WrittenPattern pattern = readWritten(given).pattern;
        const auto first = chartFromRows(pattern);
        if (!first || !first->knittable) continue;
        ++drawn;
        // Stitch by stitch in the words of each row's side, which leaves only the grouping free.
        if (pattern.rows.front().number == 1) {
            const auto against = compareRows(first->chart, pattern);
            ASSERT_TRUE(against) << name;
            EXPECT_TRUE(against->same()) << name << ", row " << against->differences.front().number;
            ++compared;
        }
        const Result<WrittenChart> text = writeRows(first->chart);
        if (!text) {
            std::cout << "not written: " << name << ": " << text.error().message << "\n";
            continue;
        }
        ++written;
        const ReadRows read = readWritten(text->text());
        ASSERT_FALSE(read.hasErrors()) << name << "\n" << text->text();
        const auto second = chartFromRows(read.pattern);
        ASSERT_TRUE(second) << name << ": " << second.error().message << "\n" << text->text();
        EXPECT_EQ(difference(first->chart, second->chart), "") << name << "\n" << text->text();
    }
    std::cout << written << " of " << drawn << " charts of knittable handbook patterns written and "
              << "drawn again\n";
    EXPECT_GT(written, 50);
    EXPECT_GT(compared, 50);
}

TEST(RoundTrip, RandomChartsKeepTheirKnitting) {
    int same = 0;
    test::RandomCharts charts(20261125);
    for (int i = 0; i < 400; ++i) {
        const Chart chart = charts.next();
        if (chart.repeats.size() > 1 || !check(chart).knittable) continue;
        const Result<WrittenChart> text = writeRows(chart);
        if (!text) continue;
        const ReadRows read = readWritten(text->text());
        ASSERT_FALSE(read.hasErrors()) << text->text();
        const auto again = chartFromRows(read.pattern);
        ASSERT_TRUE(again) << again.error().message << "\n" << text->text();
        EXPECT_TRUE(check(again->chart).knittable) << text->text();
        ASSERT_EQ(difference(chart, again->chart), "") << test::drawing(chart) << text->text();
        ++same;
    }
    std::cout << same << " random charts written and drawn again\n";
    EXPECT_GT(same, 30);
}

}  // namespace
}  // namespace lacewright
