#include <benchmark/benchmark.h>

#include <QBuffer>
#include <QGuiApplication>
#include <QPainter>
#include <QSvgGenerator>
#include <chrono>

#include "app/print/paint_sheet.h"
#include "core/sheet/lay_out.h"
#include "core/sheet/svg.h"
#include "tests/support/large_lace.h"

namespace lacewright {
namespace {

using Clock = std::chrono::steady_clock;

template <class Work>
double seconds(Work work) {
    const auto start = Clock::now();
    work();
    return std::chrono::duration<double>(Clock::now() - start).count();
}

// The same sheet written by Qt's own generator and by us, one after the other.
void svgAgainstQt(benchmark::State& state) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    char name[] = "benchmarks";
    char* arguments[] = {name, nullptr};
    int count = 1;
    const QGuiApplication application(count, arguments);
    const int side = static_cast<int>(state.range(0));
    const Chart chart = test::largeLace(side, side);
    double qtSeconds = 0;
    double ourSeconds = 0;
    double qtBytes = 0;
    double ourBytes = 0;
    for (auto _ : state) {
        qtSeconds += seconds([&] {
            const Sheet sheet = layOut(chart, {});
            QBuffer buffer;
            buffer.open(QIODevice::WriteOnly);
            QSvgGenerator generator;
            generator.setOutputDevice(&buffer);
            generator.setViewBox(QRect(0, 0, sheet.pages[0].width, sheet.pages[0].height));
            QPainter painter(&generator);
            app::paintSheet(painter, sheet, 0);
            painter.end();
            qtBytes = static_cast<double>(buffer.size());
        });
        ourSeconds +=
            seconds([&] { ourBytes = static_cast<double>(svgText(layOut(chart, {})).size()); });
    }
    state.counters["times_faster"] = qtSeconds / ourSeconds;
    state.counters["times_smaller"] = qtBytes / ourBytes;
}
BENCHMARK(svgAgainstQt)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace lacewright
