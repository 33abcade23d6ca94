#pragma once

#include <random>
#include <string>
#include <vector>

#include "tests/support/charts.h"

namespace lacewright::test {

// Seeded charts, valid and broken: every stretch between repeat edges is balanced by itself, then
// some charts get a few wrong cells, jogs or a second band of repeats.
class RandomCharts {
 public:
    explicit RandomCharts(unsigned seed) : random_(seed) {}

    // Requires: low <= high.
    int between(int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random_);
    }
    bool oneIn(int n) { return between(1, n) == 1; }

    Chart next() {
        Chart chart = blankChart(between(6, 18), between(2, 8));
        chart.worked = oneIn(3) ? Worked::InTheRound : Worked::Flat;
        addRepeats(chart);
        std::vector<RowPtr> rows;
        for (int row = 0; row < chart.height(); ++row) rows.push_back(balancedRow(chart, row));
        chart.rows = RowList(rows);
        if (oneIn(2)) spoil(chart);
        if (oneIn(5)) {
            chart.repeats[0].jogs[between(0, chart.height() - 1)] = {between(-1, 1),
                                                                     between(-1, 1)};
            clampJogs(chart);
        }
        return chart;
    }

 private:
    void addRepeats(Chart& chart) {
        const int right = between(1, 3);
        const int left = between(right + 1, std::max(right + 1, chart.width / 2));
        const int top = chart.height() - 1;
        const bool stacked = chart.height() > 3 && oneIn(4);
        const int seam = stacked ? chart.height() / 2 : top;
        chart.repeats.push_back({"A", right, left, 0, seam, {}, {}});
        if (stacked) {
            chart.repeats.push_back(
                {"B", between(1, 3), between(4, chart.width), seam + 1, top, {}, {}});
        } else if (oneIn(3)) {
            const int second = between(left + 1, chart.width);
            chart.repeats.push_back({"B", second, between(second, chart.width), 0, top, {}, {}});
        }
    }

    RowPtr balancedRow(const Chart& chart, int row) {
        std::vector<StitchIndex> cells(static_cast<std::size_t>(chart.width), id("k"));
        std::vector<int> edges{1};
        for (const Repeat& repeat : chart.repeats) {
            if (!repeat.covers(row)) continue;
            edges.push_back(repeat.right);
            edges.push_back(repeat.left + 1);
        }
        edges.push_back(chart.width + 1);
        for (std::size_t i = 0; i + 1 < edges.size(); ++i)
            decorate(cells, edges[i], edges[i + 1] - 1);
        return makeRow(std::move(cells), *chart.stitches);
    }

    // Balanced groups in the columns first..last.
    void decorate(std::vector<StitchIndex>& cells, int first, int last) {
        static const std::vector<std::vector<const char*>> kGroups = {
            {"yo", "k2tog"},
            {"ssk", "yo"},
            {"yo", "s2kp", "yo"},
            {"k2tog", "yo2", "ssk", "no-stitch"},
            {"kfb", "k2tog", "no-stitch"},
            {"k2tog", "k", "yo"},
            {"yo", "k", "k", "ssk"},
            {"p", "ktbl"}};
        for (int at = first; at <= last;) {
            const auto& group =
                kGroups[static_cast<std::size_t>(between(0, static_cast<int>(kGroups.size()) - 1))];
            const int width = static_cast<int>(group.size());
            if (at + width - 1 > last || oneIn(2)) {
                ++at;
                continue;
            }
            // kfb and yo2 make more loops than they have cells, which is no trouble to a count.
            for (const char* stitch : group) cells[static_cast<std::size_t>(at++ - 1)] = id(stitch);
        }
    }

    void spoil(Chart& chart) {
        static const char* const kWrong[] = {"yo",        "k2tog", "k",   "s2kp",
                                             "no-stitch", "kfb",   "yo2", "bo"};
        for (int i = between(1, 3); i > 0; --i) {
            const int row = between(0, chart.height() - 1);
            auto cells = chart.row(row).cells();
            cells[static_cast<std::size_t>(between(0, chart.width - 1))] =
                id(kWrong[between(0, 7)]);
            chart.rows.replace(static_cast<std::size_t>(row),
                               makeRow(std::move(cells), *chart.stitches));
        }
    }

    static void clampJogs(Chart& chart) {
        for (Repeat& repeat : chart.repeats) {
            std::erase_if(repeat.jogs, [&](const auto& jog) {
                const Box box{repeat.right + jog.second.right, repeat.left + jog.second.left};
                return !repeat.covers(jog.first) || box.right < 1 || box.left > chart.width ||
                       box.right > box.left || chart.repeats.size() > 1;
            });
        }
    }

    static StitchIndex id(const char* name) { return builtInStitches()->find(name).value(); }

    std::mt19937 random_;
};

}  // namespace lacewright::test
