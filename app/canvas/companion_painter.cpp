#include "app/canvas/companion_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cstdlib>

#include "core/check/companions.h"

namespace lacewright::app {
namespace {

constexpr double kPen = 1.6;      // device-independent pixels
constexpr double kFoot = 0.14;    // of a cell, below the upper edge of the row
constexpr double kLowest = 0.22;  // rise of the shortest arc, of a cell
constexpr double kHighest = 0.62;

QPen penOf(const ViewScene& scene, bool dashed) {
    QPen pen(scene.colours.companion, scene.px(kPen), Qt::SolidLine, Qt::RoundCap);
    if (dashed) pen.setDashPattern({2, 2.4});
    return pen;
}

QPointF footOf(const ViewScene& scene, int row, int column) {
    const double cell = scene.geometry.cell();
    return QPointF(scene.origin()) + QPointF(scene.geometry.leftOf(column) + cell / 2,
                                             scene.geometry.topOf(row) + kFoot * cell);
}

// From a stitch to the place `offset` columns to its left, ending in a dot at the decrease.
void paintArc(QPainter& painter, const ViewScene& scene, int row, int from, int offset) {
    const double cell = scene.geometry.cell();
    const double rise = std::min(kHighest, kLowest + 0.07 * std::abs(offset)) * cell;
    const QPointF start = footOf(scene, row, from);
    const QPointF end = footOf(scene, row, from + offset);
    QPainterPath arc(start);
    const QPointF lift(0, -rise * 4 / 3);  // a cubic rises to 3/4 of its handles
    arc.cubicTo(start + lift, end + lift, end);
    painter.drawPath(arc);
}

void paintOrphan(QPainter& painter, const ViewScene& scene, int row, int column) {
    const QRect cell = scene.geometry.rectOf(Cell{row, column}).translated(scene.origin());
    const int inset = std::max(1, cell.width() / 10);
    painter.setPen(penOf(scene, true));
    painter.drawEllipse(cell.adjusted(inset, inset, -inset, -inset));
}

void paintRow(QPainter& painter, const ViewScene& scene, int row, std::optional<int> onlyColumn) {
    if (!scene.chart.row(row).traits().hasShaping) return;
    const Companions companions = companionsOn(scene.chart, row);
    const auto wanted = [&](int column) { return !onlyColumn || *onlyColumn == column; };
    for (const CompanionPair& pair : companions.pairs) {
        if (!wanted(pair.increase) && !wanted(pair.decrease)) continue;
        painter.setPen(penOf(scene, pair.acrossRepeats));
        paintArc(painter, scene, row, pair.increase, pair.offset);
        if (pair.acrossRepeats) paintArc(painter, scene, row, pair.decrease, -pair.offset);
    }
    for (const int column : companions.orphans) {
        if (wanted(column)) paintOrphan(painter, scene, row, column);
    }
}

}  // namespace

void paintCompanions(QPainter& painter, const ViewScene& scene, const CellArea& seen) {
    const bool none = !scene.showsCompanions && !scene.hovered;
    if (none || scene.geometry.cell() < scene.px(8)) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    if (scene.showsCompanions) {
        // The arcs of the row below reach into the lowest row seen.
        for (int row = std::max(0, seen.firstRow - 1); row <= seen.lastRow; ++row) {
            paintRow(painter, scene, row, std::nullopt);
        }
    } else if (scene.hovered->row < scene.chart.height()) {
        const Row& row = scene.chart.row(scene.hovered->row);
        const int column = std::min(scene.hovered->column, scene.chart.width);
        paintRow(painter, scene, scene.hovered->row, row.ownerOf(column));
    }
    painter.restore();
}

int companionReach(const ViewScene& scene) {
    return static_cast<int>(scene.geometry.cell() * kHighest) + scene.px(kPen);
}

}  // namespace lacewright::app
