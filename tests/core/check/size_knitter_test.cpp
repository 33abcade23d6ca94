// Sizes of random charts worked cell by cell, against what the check and the summary say of them.

#include <gtest/gtest.h>

#include <set>

#include "core/check/check.h"
#include "core/plan/size_summary.h"
#include "tests/support/findings.h"
#include "tests/support/random_charts.h"
#include "tests/support/size_knitter.h"

namespace lacewright {
namespace {

using namespace lacewright::test;

void addSizes(Chart& chart, RandomCharts& random) {
    for (int i = 0; i < 9; ++i) {
        Size size;
        size.name = std::to_string(i);
        size.reach.start = random.between(1, chart.width);
        size.reach.end = random.between(size.reach.start, chart.width);
        for (const Repeat& repeat : chart.repeats) {
            if (!random.oneIn(8)) size.times[repeat.name] = random.between(0, 4);
        }
        if (random.oneIn(4)) {
            const int first = random.between(0, chart.height() - 1);
            const int start = random.between(1, chart.width);
            size.changes.push_back({first,
                                    random.between(first, chart.height() - 1),
                                    {start, random.between(start, chart.width)},
                                    {}});
        }
        if (random.oneIn(4)) {
            const int row = random.between(0, chart.height() - 1);
            const int column = random.between(1, chart.width);
            const Edge edge = random.oneIn(2) ? Edge::Start : Edge::End;
            size.substitutions.push_back({row, column, edge, random.oneIn(2) ? "yo" : "k", {}});
        }
        chart.sizes.push_back(std::move(size));
    }
}

void collect(const std::vector<Finding>& findings, const std::string& size, std::set<int>& own,
             bool& general) {
    for (const Finding& finding : findings) {
        if (finding.severity == Severity::Fault) {
            general = general || finding.sizes.empty();
            if (std::find(finding.sizes.begin(), finding.sizes.end(), size) != finding.sizes.end())
                own.insert(finding.row);
        }
        collect(finding.folded, size, own, general);
    }
}

TEST(SizeKnitter, AgreesWithTheCheckOnRandomSizes) {
    RandomCharts random(20261125);
    int fit = 0;
    int stopped = 0;
    for (int i = 0; i < 400; ++i) {
        Chart chart = random.next();
        addSizes(chart, random);
        const Report report = check(chart);
        const std::vector<SizeSummary> summaries = summarizeSizes(chart);
        SCOPED_TRACE(drawing(chart) + describe(report));
        for (std::size_t s = 0; s < chart.sizes.size(); ++s) {
            const Size& size = chart.sizes[s];
            SCOPED_TRACE(size.name);
            const auto rows = knitSize(chart, size);
            std::set<int> stops;
            for (std::size_t r = 1; r < rows.size(); ++r) {
                if (rows[r].takes != rows[r - 1].makes) stops.insert(static_cast<int>(r) + 1);
            }
            ++(stops.empty() ? fit : stopped);
            std::set<int> own;
            bool general = false;
            collect(report.findings, size.name, own, general);
            if (general) {
                EXPECT_TRUE(std::includes(stops.begin(), stops.end(), own.begin(), own.end()));
            } else {
                ASSERT_EQ(own, stops);
            }
            EXPECT_EQ(summaries[s].first, rows.front().takes);
            EXPECT_EQ(summaries[s].last, rows.back().makes);
        }
    }
    EXPECT_GT(fit, 300);
    EXPECT_GT(stopped, 1000);
}

}  // namespace
}  // namespace lacewright
