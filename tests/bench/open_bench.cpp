#include <benchmark/benchmark.h>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <random>
#include <string>
#include <string_view>

#include "core/file/chart_text.h"
#include "tests/bench/seconds.h"

// Opening a chart against the cost of merely checking that its bytes are JSON. Both run in turn in
// one process, in seconds of this thread alone, and the fastest of each counts, because a shared
// machine drifts between runs.
namespace lacewright {
namespace {

constexpr int kSide = 1000;  // columns and rows
constexpr std::string_view kLace[] = {"yo", "k2tog", "ssk", "sk2p", "p", "ktbl", "k3tog", "yo2"};

// How the rows of the chart repeat.
enum Pattern {
    kMotif,         // a motif of 24 columns and 16 rows all over, plain rows between: a lace shawl
    kPlainBetween,  // no two lace rows alike, plain rows between
    kNoTwoAlike     // no two rows alike, none plain: the worst case
};

// A chart in which 27 cells of 100 in a lace row are no knit stitch.
Chart laceChart(Pattern pattern) {
    constexpr int kMotifColumns = 24;
    constexpr int kMotifRows = 16;
    std::mt19937 random(20240917);
    std::uniform_int_distribution<int> percent(0, 99);
    std::uniform_int_distribution<std::size_t> which(0, std::size(kLace) - 1);
    Chart chart = blankChart(kSide, kSide);
    for (int row = 0; row < kSide; ++row) {
        if (pattern != kNoTwoAlike && row % 2 == 1) continue;
        if (pattern == kMotif && row >= kMotifRows) {
            chart.rows.replace(static_cast<std::size_t>(row),
                               chart.rows[static_cast<std::size_t>(row % kMotifRows)]);
            continue;
        }
        std::vector<StitchIndex> cells = chart.row(row).cells();
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (pattern == kMotif && i >= kMotifColumns) {
                cells[i] = cells[i % kMotifColumns];
            } else if (percent(random) < 27) {
                cells[i] = chart.stitches->find(kLace[which(random)]).value();
            }
        }
        chart.rows.replace(static_cast<std::size_t>(row),
                           makeRow(std::move(cells), *chart.stitches));
    }
    return chart;
}

void open1000By1000(benchmark::State& state) {
    const std::string text = writeChart(laceChart(static_cast<Pattern>(state.range(0))));
    test::Fastest accept;
    test::Fastest open;
    for (auto _ : state) {
        accept.run([&text] {
            bool fine = nlohmann::json::accept(text);
            benchmark::DoNotOptimize(fine);
        });
        open.run([&text] {
            const Result<Chart> chart = readChart(text);
            if (!chart) std::abort();
            benchmark::DoNotOptimize(chart.value().width);
        });
    }
    state.counters["bytes"] = static_cast<double>(text.size());
    state.counters["accept_ms"] = 1e3 * accept.seconds();
    state.counters["open_ms"] = 1e3 * open.seconds();
    state.counters["open_to_accept"] = open.seconds() / accept.seconds();
}
BENCHMARK(open1000By1000)
    ->ArgName("pattern")
    ->Arg(kMotif)
    ->Arg(kPlainBetween)
    ->Arg(kNoTwoAlike)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(25);

void write1000By1000(benchmark::State& state) {
    const Chart chart = laceChart(kNoTwoAlike);
    for (auto _ : state) benchmark::DoNotOptimize(writeChart(chart));
}
BENCHMARK(write1000By1000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace lacewright
