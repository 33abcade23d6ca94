#include <benchmark/benchmark.h>

#include <algorithm>
#include <cstdlib>
#include <vector>

#include "core/chart/edits.h"
#include "core/check/check.h"
#include "core/count/tally.h"
#include "tests/bench/seconds.h"
#include "tests/support/large_lace.h"

// Counting and checking a million cells against the least that any program must do with them:
// adding up as many bytes. All take turns in one process; see Fastest.
namespace lacewright {
namespace {

constexpr int kMotif = 24;  // columns
constexpr int kColumns = 42 * kMotif;
constexpr int kRows = 992;
constexpr int kSizes = 6;

// Lace with one repeat over all rows and six sizes that begin and end at columns of their own.
// `clean`: every edge stands between motifs, so that there is nothing to find; otherwise the motif
// wanders and edges part yarn overs from their decreases in many rows.
Chart gradedLace(bool clean) {
    Chart chart = test::largeLace(kColumns, kRows);
    for (std::size_t row = 0; clean && row < kRows; row += 2) {
        std::vector<StitchIndex> cells = chart.rows[0]->cells();
        std::rotate(cells.begin(), cells.end() - 1, cells.end());  // begins with a knit stitch
        chart.rows.replace(row, makeRow(std::move(cells), *chart.stitches));
    }
    chart.repeats.push_back({"A", 4 * kMotif + 1, 34 * kMotif, 0, kRows - 1, {}, {}});
    for (int i = 0; i < kSizes; ++i) {
        Size size;
        size.name = std::to_string(i + 1);
        size.reach = {1 + kMotif * (i % 4), kColumns - kMotif * (i % 5)};
        size.times["A"] = 1 + i;
        chart.sizes.push_back(size);
    }
    return chart;
}

// The chart with another stitch for the k2tog nearest the middle of its middle row.
Chart withStitch(const Chart& chart, const char* id) {
    const StitchIndex old = chart.stitches->find("k2tog").value();
    int column = kColumns / 2;
    while (chart.row(kRows / 2).at(column) != old) ++column;
    return drawStitch(chart, kRows / 2, column, chart.stitches->find(id).value()).value();
}

std::vector<std::uint8_t> bytesOf(const Chart& chart) {
    std::vector<std::uint8_t> bytes;
    for (int row = 0; row < chart.height(); ++row) {
        for (const StitchIndex cell : chart.row(row).cells()) {
            bytes.push_back(static_cast<std::uint8_t>(cell));
        }
    }
    return bytes;
}

void sumBytes(const std::vector<std::uint8_t>& bytes) {
    std::uint64_t sum = 0;
    for (const std::uint8_t byte : bytes) sum += byte;
    benchmark::DoNotOptimize(sum);
}

void countAndCheck(benchmark::State& state) {
    const Chart chart = gradedLace(state.range(0) != 0);
    const std::vector<std::uint8_t> bytes = bytesOf(chart);
    const Chart leaned = withStitch(chart, "ssk");    // for a k2tog: the row still fits
    const Chart broken = withStitch(chart, "k3tog");  // the row fits no longer
    test::Fastest sum;
    test::Fastest count;
    test::Fastest build;
    test::Fastest whole;
    test::Fastest fits;
    test::Fastest misfits;
    std::size_t findings = 0;
    for (auto _ : state) {
        sum.run([&] { sumBytes(bytes); });
        count.run([&] {
            for (int row = 0; row < kRows; ++row) {
                benchmark::DoNotOptimize(tallyOf(chart.row(row).cells(), *chart.stitches));
            }
        });
        build.run([&] {
            for (int row = 0; row < kRows; ++row) {
                benchmark::DoNotOptimize(makeRow(chart.row(row).cells(), *chart.stitches));
            }
        });
        whole.run([&] { findings = check(chart).findings.size(); });
        Checker checker;
        checker.update(chart);
        fits.run([&] { benchmark::DoNotOptimize(checker.update(leaned)); });
        checker.update(chart);
        misfits.run([&] { benchmark::DoNotOptimize(checker.update(broken)); });
    }
    state.counters["sum_ms"] = 1e3 * sum.seconds();
    state.counters["count_to_sum"] = count.seconds() / sum.seconds();
    state.counters["rows_built_to_sum"] = build.seconds() / sum.seconds();
    state.counters["check_to_sum"] = whole.seconds() / sum.seconds();
    // The whole check counts the cells as well, which an edit did when it built its row.
    const double full = build.seconds() + whole.seconds();
    state.counters["full_to_recheck"] = full / fits.seconds();
    state.counters["full_to_recheck_of_fault"] = full / misfits.seconds();
    state.counters["recheck_us"] = 1e6 * fits.seconds();
    state.counters["recheck_of_fault_us"] = 1e6 * misfits.seconds();
    state.counters["findings"] = static_cast<double>(findings);
}
BENCHMARK(countAndCheck)
    ->ArgName("clean")
    ->Arg(1)
    ->Arg(0)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(40);

}  // namespace
}  // namespace lacewright
