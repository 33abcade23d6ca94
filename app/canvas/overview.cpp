#include "app/canvas/overview.h"

#include <QPainter>
#include <utility>

#include "app/canvas/cell_painter.h"

namespace lacewright::app {
namespace {

QRgb inkOf(const Stitch& stitch, const ChartColours& colours) {
    switch (stitch.kind) {
        case StitchKind::Plain:
            return colours.ground.rgb();
        case StitchKind::YarnOver:
            return colours.hole.rgb();
        case StitchKind::NoStitch:
            return colours.groundNoStitch.rgb();
        case StitchKind::Unknown:
            return colours.fault.rgb();
        default:
            return colours.shaping.rgb();
    }
}

// Everything beside the chosen size is laid under a veil.
void paintVeil(QPainter& painter, const ViewScene& scene, const CellArea& area) {
    QColor veil = scene.colours.groundOutside;
    veil.setAlpha(180);
    for (int row = area.firstRow; row <= area.lastRow; ++row) {
        const Reach reach = scene.chosen->on(row);
        const QRect line = scene.geometry.rectOf(CellArea{row, row, area.right, area.left})
                               .translated(scene.origin());
        const int start = scene.geometry.rightOf(reach.start) + scene.origin().x();
        const int end = scene.geometry.leftOf(reach.end) + scene.origin().x();
        if (start <= line.right()) {
            painter.fillRect(QRect(QPoint(start, line.top()), line.bottomRight()), veil);
        }
        if (end > line.left()) {
            painter.fillRect(QRect(line.topLeft(), QPoint(end - 1, line.bottom())), veil);
        }
    }
}

}  // namespace

void Overview::drawRow(int row, const Chart& chart) {
    QRgb* pixel = reinterpret_cast<QRgb*>(image_.scanLine(chart.height() - 1 - row)) + chart.width;
    QRgb ink = colours_.ground.rgb();
    for (const StitchIndex stitch : chart.row(row).cells()) {
        if (stitch != kCovered) ink = inks_[stitch];
        *--pixel = ink;
    }
}

void Overview::update(const ViewScene& scene) {
    const Chart& chart = scene.chart;
    const QSize size(chart.width, chart.height());
    if (image_.size() != size || stitches_ != chart.stitches || colours_ != scene.colours) {
        image_ = QImage(size, QImage::Format_RGB32);
        stitches_ = chart.stitches;
        colours_ = scene.colours;
        inks_.assign(1, colours_.ground.rgb());
        for (std::size_t i = 1; i <= stitches_->size(); ++i) {
            inks_.push_back(inkOf((*stitches_)[static_cast<StitchIndex>(i)], colours_));
        }
        for (int row = 0; row < chart.height(); ++row) drawRow(row, chart);
    } else {
        rows_.forEachDifference(chart.rows,
                                [&](std::size_t row) { drawRow(static_cast<int>(row), chart); });
    }
    rows_ = chart.rows;
}

void Overview::paint(QPainter& painter, const ViewScene& scene, const QRect& exposed) {
    const auto area = scene.geometry.cellsIn(exposed.translated(-scene.origin()));
    if (!area) return;
    update(scene);
    const QRect source(scene.chart.width - area->left, scene.chart.height() - 1 - area->lastRow,
                       area->left - area->right + 1, area->lastRow - area->firstRow + 1);
    painter.drawImage(scene.geometry.rectOf(*area).translated(scene.origin()), image_, source);
    if (scene.chosen != nullptr) paintVeil(painter, scene, *area);
    paintGridLines(painter, scene, exposed);
}

}  // namespace lacewright::app
