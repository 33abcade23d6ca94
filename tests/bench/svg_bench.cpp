#include "core/sheet/svg.h"

#include <benchmark/benchmark.h>

#include "core/sheet/lay_out.h"
#include "tests/support/large_lace.h"

namespace lacewright {
namespace {

void writeSvg(benchmark::State& state) {
    const int side = static_cast<int>(state.range(0));
    const Chart chart = test::largeLace(side, side);
    std::size_t bytes = 0;
    for (auto _ : state) bytes = svgText(layOut(chart, {})).size();
    state.counters["bytes_per_cell"] = static_cast<double>(bytes) / test::cellsNotPlain(chart);
}
BENCHMARK(writeSvg)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

void layOutPages(benchmark::State& state) {
    const Chart chart = test::largeLace(400, 400);
    SheetOptions options;
    options.paper = kA4;
    for (auto _ : state) benchmark::DoNotOptimize(layOut(chart, options));
}
BENCHMARK(layOutPages)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace lacewright
