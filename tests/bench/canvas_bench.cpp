#include <benchmark/benchmark.h>

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QScrollBar>
#include <cstdlib>
#include <cstring>
#include <vector>

#include "app/canvas/chart_view.h"
#include "core/chart/edits.h"
#include "tests/bench/offscreen_application.h"
#include "tests/bench/seconds.h"
#include "tests/support/large_lace.h"

// Painting the chart against copying as many pixels, and one edit with everything that follows it.
namespace lacewright::app {
namespace {

constexpr QSize kView(1600, 1000);  // device pixels

struct Screen {
    explicit Screen(int side) {
        view.resize(kView);
        document.replaceWith(test::largeLace(side, side), {});
        view.show();
        QCoreApplication::processEvents();
    }
    Document document;
    ViewState state{document};
    ChartView view{document, state};
};

void repaint(benchmark::State& state) {
    test::offscreenApplication();
    Screen screen(400);
    screen.state.zoomTo(static_cast<int>(state.range(0)));
    screen.view.verticalScrollBar()->setValue(screen.view.verticalScrollBar()->maximum() / 2);
    QCoreApplication::processEvents();
    QImage canvas(kView, QImage::Format_RGB32);
    const QImage source(kView, QImage::Format_RGB32);
    std::vector<std::byte> target(static_cast<std::size_t>(source.sizeInBytes()));
    Renderer renderer;
    const auto paint = [&] {
        QPainter painter(&canvas);
        renderer.paint(painter, screen.view.scene(), QRect(QPoint(), kView));
    };
    paint();  // makes the pictures of the stitches
    test::Fastest copy;
    test::Fastest full;
    for (auto _ : state) {
        copy.run([&] {
            std::memcpy(target.data(), source.constBits(), target.size());
            benchmark::DoNotOptimize(target.data());
            benchmark::ClobberMemory();
        });
        full.run(paint);
    }
    state.counters["copy_us"] = 1e6 * copy.seconds();
    state.counters["paint_us"] = 1e6 * full.seconds();
    state.counters["paint_to_copy"] = full.seconds() / copy.seconds();
}
BENCHMARK(repaint)->ArgName("cell")->Arg(20)->Arg(8)->Unit(benchmark::kMicrosecond)->Iterations(60);

// A stitch drawn in the middle of the view: the edit, its undo step, the check and the repaint.
double editSeconds(int columns, int rows, int times) {
    Document document;
    ViewState state{document};
    ChartView view(document, state);
    view.resize(kView);
    document.replaceWith(test::largeLace(columns, rows), {});
    view.show();
    state.zoomTo(20);
    QCoreApplication::processEvents();
    const auto& stitches = *document.chart().stitches;
    const StitchIndex drawn[] = {stitches.find("k2tog").value(), stitches.find("ssk").value()};
    Cell cell{rows / 2, columns / 2};  // a decrease, to change its lean
    while (document.chart().row(cell.row).at(cell.column) != drawn[0]) ++cell.column;
    state.reveal(cell);
    QCoreApplication::processEvents();
    test::Fastest edit;
    for (int i = 0; i < times; ++i) {
        edit.run([&] {
            document.apply(QStringLiteral("Draw"),
                           drawStitch(document.chart(), cell.row, cell.column, drawn[(i + 1) % 2]));
            QCoreApplication::processEvents();
        });
    }
    return edit.seconds();
}

void oneEdit(benchmark::State& state) {
    test::offscreenApplication();
    double small = 0;
    double large = 0;
    for (auto _ : state) {
        small = editSeconds(24, 20, 4000);
        large = editSeconds(1008, 1000, 4000);
    }
    state.counters["edit_24x20_us"] = 1e6 * small;
    state.counters["edit_1008x1000_us"] = 1e6 * large;
    state.counters["large_to_small"] = large / small;
}
BENCHMARK(oneEdit)->Unit(benchmark::kMillisecond)->Iterations(1);

}  // namespace
}  // namespace lacewright::app
