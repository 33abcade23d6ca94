// The checker that remembers must say what a check from scratch says, whatever was edited before.

#include <gtest/gtest.h>

#include <random>

#include "core/chart/edits.h"
#include "core/check/check.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

namespace lacewright {
namespace {

using namespace lacewright::test;

Chart randomChart(std::mt19937& random) {
    const auto between = [&random](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    Chart chart = blankChart(between(8, 16), between(3, 70));
    chart.worked = between(0, 1) == 0 ? Worked::Flat : Worked::InTheRound;
    const int right = between(1, 4);
    withRepeat(chart, "A", right, right + between(1, 3));
    if (between(0, 1) == 0) {
        chart.repeats[0].lastRow = chart.height() / 2;
        chart.repeats.push_back(
            {"B", 2, 2 + between(1, 4), chart.height() / 2 + 1, chart.height() - 1, {}, {}});
    }
    if (between(0, 1) == 0) chart.repeats[0].jogs[1] = {1, 1};
    withSize(chart, "S", 1, chart.width, 2);
    withSize(chart, "M", 3, chart.width - 1, 3).stitches = 20;
    if (between(0, 1) == 0) {
        chart.gauge.stitches = 20;
        chart.sizes[0].body = 10;
        chart.sizes[1].shoulder = between(0, 20);
        chart.grading.halved = true;
        chart.grading.leastEase = between(-5, 0);
        for (int i = between(0, 2); i > 0; --i) {
            const int first = between(1, chart.width);
            chart.grading.shoulders.push_back(
                {between(0, chart.height() - 1), first, between(first, chart.width), {}});
        }
    }
    if (between(0, 1) == 0) chart.castOn = CastOn{between(0, 4), between(0, 20)};
    if (between(0, 1) == 0) chart.rowRepeat = RowRepeat{0, chart.height() - 1, between(-1, 1)};
    return chart;
}

TEST(Checker, AgreesWithACheckFromScratchAfterEveryEdit) {
    std::mt19937 random(20260131);
    const auto between = [&random](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    const char* const kStitches[] = {"k",   "p",         "yo",   "k2tog", "ssk", "s2kp",
                                     "yo2", "no-stitch", "c11r", "kfb",   "bo"};
    for (int round = 0; round < 12; ++round) {
        Chart chart = randomChart(random);
        Checker checker;
        std::vector<Chart> past;
        for (int step = 0; step < 40; ++step) {
            past.push_back(chart);
            const int row = between(0, chart.height() - 1);
            if (between(0, 9) == 0) {
                chart = past[static_cast<std::size_t>(
                    between(0, static_cast<int>(past.size()) - 1))];  // undo
            } else if (between(0, 19) == 0) {
                if (auto edited = insertRows(chart, row, 1)) chart = *edited;
            } else {
                const char* id = kStitches[between(0, 10)];
                if (auto edited = drawStitch(chart, row, between(1, chart.width),
                                             *chart.stitches->find(id))) {
                    chart = *edited;
                }
            }
            const Report& remembered = checker.update(chart);
            const Report fresh = check(chart);
            ASSERT_EQ(remembered, fresh)
                << "round " << round << " step " << step << "\nremembered:\n"
                << describe(remembered) << "fresh:\n"
                << describe(fresh);
        }
    }
}

}  // namespace
}  // namespace lacewright
