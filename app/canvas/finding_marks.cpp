#include "app/canvas/finding_marks.h"

#include <QPainter>
#include <array>
#include <cmath>

#include "app/canvas/row_states.h"
#include "app/canvas/stepped_line.h"

namespace lacewright::app {
namespace {

constexpr double kFaultLine = 2.0;  // device-independent pixels
constexpr double kWarningLine = 1.0;
constexpr int kShortRun = 6;  // cells; longer runs are outlined thinly, or they drown the chart
constexpr double kSmallestMarked = 6;  // cell size below which only the signs beside the rows speak

// The outline of neighbouring cells in one state; columns right..left.
void outline(QPainter& painter, const ViewScene& scene, int row, int right, int left,
             TileState state) {
    const QRect cells =
        scene.geometry.rectOf(CellArea{row, row, right, left}).translated(scene.origin());
    if (state == TileState::Guilty) {
        const bool isShort = left - right < kShortRun;
        paintBox(painter, cells, scene.px(isShort ? kFaultLine : 1), scene.colours.fault);
    } else {
        paintBox(painter, cells, scene.px(kWarningLine), scene.colours.text, scene.px(3));
    }
}

QPolygonF regular(QRectF square, int corners, double turn) {
    QPolygonF polygon;
    const QPointF middle = square.center();
    const double radius = square.width() / 2;
    for (int i = 0; i < corners; ++i) {
        const double angle = turn + 2 * 3.14159265358979 * i / corners;
        polygon << middle + QPointF(radius * std::sin(angle), -radius * std::cos(angle));
    }
    return polygon;
}

// An exclamation mark, drawn rather than written so that no font decides its place.
void exclaim(QPainter& painter, QRectF square, const QColor& colour) {
    const double unit = square.height() / 16;
    const double x = square.center().x() - unit;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRect(QRectF(x, square.top() + 4 * unit, 2 * unit, 5.5 * unit));
    painter.drawRect(QRectF(x, square.top() + 10.7 * unit, 2 * unit, 2 * unit));
}

}  // namespace

void paintFindingMarks(QPainter& painter, const ViewScene& scene, const CellArea& seen) {
    if (scene.geometry.cell() < scene.px(kSmallestMarked)) return;
    // Always the whole row, so that dashes fall on the same place whatever part is repainted.
    const int right = 1;
    const int left = scene.chart.width;
    std::vector<TileState> states;
    for (int row = seen.firstRow; row <= seen.lastRow; ++row) {
        const auto grave = gravest(findingsOfRow(scene.report, scene.chart.rowNumber(row)));
        if (!grave || *grave < Severity::Warning) continue;
        fillStates(scene, row, right, left, states);
        for (int column = right; column <= left;) {
            const TileState state = states[static_cast<std::size_t>(column - right)];
            int end = column;
            while (end < left && states[static_cast<std::size_t>(end + 1 - right)] == state) ++end;
            // An outline may reach into the cell beside it, no further.
            const bool isSeen = end + 1 >= seen.right && column - 1 <= seen.left;
            if (isSeen && state >= TileState::Warned)
                outline(painter, scene, row, column, end, state);
            column = end + 1;
        }
    }
}

void paintSign(QPainter& painter, const ViewScene& scene, Severity severity, const QRect& square) {
    const QRectF area(square);
    const QColor edge = scene.colours.text;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (severity == Severity::Fault) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(scene.colours.fault);
        painter.drawPolygon(regular(area, 8, 3.14159265358979 / 8));
        exclaim(painter, area, scene.colours.margin);
    } else if (severity == Severity::Warning) {
        const double line = scene.px(1);
        painter.setPen(QPen(edge, line, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.setBrush(scene.colours.warning);
        const QRectF inner = area.adjusted(line, line, -line, -line);
        painter.drawPolygon(QPolygonF(
            {QPointF(inner.center().x(), inner.top()), inner.bottomRight(), inner.bottomLeft()}));
        exclaim(painter, area.translated(0, area.height() / 10), QColor(Qt::black));
    } else {
        const double inset = area.width() * 0.3;
        painter.setPen(QPen(scene.colours.note, scene.px(1.4)));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(area.adjusted(inset, inset, -inset, -inset));
    }
    painter.restore();
}

}  // namespace lacewright::app
