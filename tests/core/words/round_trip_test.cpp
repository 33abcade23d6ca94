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

std::int64_t takesOf(const Chart& chart, int row, const std::vector<int>& times) {
    return formsOf(chart.row(row), pathOn(chart, row, nullptr)).takes.at([&](Variable repeat) {
        return times[static_cast<std::size_t>(repeat)];
    });
}

std::int64_t makesOf(const Chart& chart, int row, const std::vector<int>& times) {
    return formsOf(chart.row(row), pathOn(chart, row, nullptr)).makes.at([&](Variable repeat) {
        return times[static_cast<std::size_t>(repeat)];
    });
}

// How often every repeat is worked when those of row 1 are worked so often, from the right: one
// that begins further up uses up the loops there are. Empty when no number does.
std::vector<int> timesFrom(const Chart& chart, const std::vector<int>& onFirstRow) {
    std::vector<int> times(chart.repeats.size(), 0);
    std::size_t given = 0;
    for (std::size_t i = 0; i < times.size(); ++i) {
        if (chart.repeats[i].covers(0)) times[i] = onFirstRow[given++];
    }
    for (std::size_t i = 0; i < times.size(); ++i) {
        const int row = chart.repeats[i].firstRow;
        if (row == 0) continue;
        const std::int64_t loops = makesOf(chart, row - 1, times);
        while (times[i] < 100 && takesOf(chart, row, times) < loops) ++times[i];
        if (takesOf(chart, row, times) != loops) return {};
    }
    return times;
}

// The stitches of all rows, each from the right.
std::string knitting(const Chart& chart, const std::vector<int>& times) {
    std::string all;
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

std::size_t onFirstRow(const Chart& chart) {
    return static_cast<std::size_t>(
        std::count_if(chart.repeats.begin(), chart.repeats.end(),
                      [](const Repeat& repeat) { return repeat.covers(0); }));
}

// The same rows for several numbers of repeats and for the same counts of stitches in the other.
std::string difference(const Chart& a, const Chart& b) {
    if (a.height() != b.height()) return "another number of rows";
    int compared = 0;
    const auto compare = [&](const std::vector<int>& n, const std::vector<int>& m) {
        const std::vector<int> first = timesFrom(a, n);
        const std::vector<int> second = timesFrom(b, m);
        if (first.empty() != a.repeats.empty() || second.empty() != b.repeats.empty() ||
            takesOf(a, 0, first) != takesOf(b, 0, second))
            return std::string();
        ++compared;
        const std::string one = knitting(a, first);
        const std::string other = knitting(b, second);
        return one == other ? "" : one + "against\n" + other;
    };
    std::string found;
    if (onFirstRow(a) > 1) {
        if (onFirstRow(b) != onFirstRow(a)) return "another number of repeats";
        for (int code = 0; code < 9 && found.empty(); ++code) {
            const std::vector<int> n{1 + code % 3, 1 + code / 3};
            found = compare(n, n);
        }
    } else {
        for (int n = 1; n <= 6; ++n) {
            const int before = compared;
            for (int m = 0; m <= 60 && compared == before && found.empty(); ++m)
                found = compare({n}, {m});
        }
    }
    return compared == 0 ? "no count in common" : found;
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
    int sideBySide = 0;
    test::RandomCharts charts(20261125);
    for (int i = 0; i < 600; ++i) {
        const Chart chart = charts.next();
        if (!check(chart).knittable) continue;
        const Result<WrittenChart> text = writeRows(chart);
        ASSERT_TRUE(text) << text.error().message << "\n" << test::drawing(chart);
        const ReadRows read = readWritten(text->text());
        ASSERT_FALSE(read.hasErrors()) << text->text();
        const auto again = chartFromRows(read.pattern);
        ASSERT_TRUE(again) << again.error().message << "\n" << text->text();
        EXPECT_TRUE(check(again->chart).knittable) << text->text();
        ASSERT_EQ(difference(chart, again->chart), "") << test::drawing(chart) << text->text();
        ++same;
        if (onFirstRow(chart) > 1) ++sideBySide;
    }
    std::cout << same << " random charts written and drawn again, " << sideBySide
              << " of them with repeats side by side\n";
    EXPECT_GT(same, 60);
    EXPECT_GT(sideBySide, 20);
}

// Sizes that begin and end at columns of their own, inside and outside the repeats.
void addSizes(Chart& chart, test::RandomCharts& random) {
    for (const char* name : {"S", "M", "L"}) {
        Size size;
        size.name = name;
        const int right = chart.repeats.front().right;
        const int left = chart.repeats.back().left;
        size.reach.start = random.between(1, random.oneIn(4) ? chart.repeats.front().left : right);
        size.reach.end =
            random.between(random.oneIn(4) ? chart.repeats.back().right : left, chart.width);
        if (size.reach.end < size.reach.start) size.reach = {1, chart.width};
        for (const Repeat& repeat : chart.repeats) size.times[repeat.name] = random.between(1, 5);
        chart.sizes.push_back(std::move(size));
    }
}

TEST(RoundTrip, RandomSizesKeepTheirKnitting) {
    int same = 0;
    int refused = 0;
    test::RandomCharts charts(20261128);
    for (int i = 0; i < 3000 && same < 120; ++i) {
        Chart chart = charts.next();
        addSizes(chart, charts);
        if (!check(chart).knittable) continue;
        const Result<WrittenChart> text = writeRows(chart);
        ASSERT_TRUE(text) << text.error().message << "\n" << test::drawing(chart);
        const ReadRows read = readWritten(text->text());
        ASSERT_FALSE(read.hasErrors()) << text->text();
        const auto again = chartFromRows(read.pattern);
        if (!again) {
            ++refused;
            continue;
        }
        const auto comparison = compareRows(again->chart, read.pattern);
        EXPECT_TRUE(comparison && comparison->same()) << text->text();
        ++same;
    }
    std::cout << same << " random charts with sizes, " << refused << " refused\n";
    EXPECT_EQ(same, 120);
    EXPECT_LT(refused, 20);  // their rows do not say how often the sizes work the repeats
}

}  // namespace
}  // namespace lacewright
