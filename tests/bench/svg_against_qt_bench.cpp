#include <benchmark/benchmark.h>

#include <QBuffer>
#include <QPainter>
#include <QSvgGenerator>

#include "app/print/paint_sheet.h"
#include "core/sheet/lay_out.h"
#include "core/sheet/svg.h"
#include "tests/bench/offscreen_application.h"
#include "tests/bench/seconds.h"
#include "tests/support/large_lace.h"

namespace lacewright {
namespace {

// The same sheet written by Qt's own generator and by us, one after the other.
void svgAgainstQt(benchmark::State& state) {
    test::offscreenApplication();
    const int side = static_cast<int>(state.range(0));
    const Chart chart = test::largeLace(side, side);
    test::Fastest qts;
    test::Fastest ours;
    double qtBytes = 0;
    double ourBytes = 0;
    for (auto _ : state) {
        qts.run([&] {
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
        ours.run([&] { ourBytes = static_cast<double>(svgText(layOut(chart, {})).size()); });
    }
    state.counters["times_faster"] = qts.seconds() / ours.seconds();
    state.counters["times_smaller"] = qtBytes / ourBytes;
}
BENCHMARK(svgAgainstQt)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace lacewright
