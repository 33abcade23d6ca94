#include "app/canvas/stepped_line.h"

#include <QPainter>
#include <algorithm>

namespace lacewright::app {
namespace {

// Leaves corners out that lie on the way, so that a straight edge is one line.
void append(QPolygon& corners, QPoint corner) {
    const auto count = corners.size();
    if (count >= 1 && corners[count - 1] == corner) return;
    if (count >= 2) {
        const QPoint last = corners[count - 1];
        const QPoint before = corners[count - 2];
        const bool upright = before.x() == last.x() && last.x() == corner.x();
        const bool level = before.y() == last.y() && last.y() == corner.y();
        if (upright || level) {
            corners[count - 1] = corner;
            return;
        }
    }
    corners.append(corner);
}

}  // namespace

QPolygon steppedOutline(const ChartGeometry& geometry, int firstRow, int lastRow,
                        const std::function<Box(int row)>& boxOn) {
    QPolygon corners;
    for (int row = firstRow; row <= lastRow; ++row) {
        const int x = geometry.rightOf(boxOn(row).right);
        append(corners, {x, geometry.bottomOf(row)});
        append(corners, {x, geometry.topOf(row)});
    }
    for (int row = lastRow; row >= firstRow; --row) {
        const int x = geometry.leftOf(boxOn(row).left);
        append(corners, {x, geometry.topOf(row)});
        append(corners, {x, geometry.bottomOf(row)});
    }
    append(corners, corners.front());
    return corners;
}

void paintSteps(QPainter& painter, const QPolygon& corners, int thickness, const QColor& colour) {
    const int before = thickness / 2;
    const int after = thickness - before;
    for (qsizetype i = 0; i + 1 < corners.size(); ++i) {
        const QPoint a = corners[i];
        const QPoint b = corners[i + 1];
        const QPoint upper(std::min(a.x(), b.x()) - before, std::min(a.y(), b.y()) - before);
        const QPoint lower(std::max(a.x(), b.x()) + after, std::max(a.y(), b.y()) + after);
        painter.fillRect(QRect(upper, lower - QPoint(1, 1)), colour);
    }
}

void paintBox(QPainter& painter, const QRect& cells, int thickness, const QColor& colour,
              int dash) {
    const QRect edge = cells.adjusted(0, 0, 1, 1);
    const QPolygon corners({edge.topLeft(), QPoint(edge.right(), edge.top()), edge.bottomRight(),
                            QPoint(edge.left(), edge.bottom()), edge.topLeft()});
    if (dash == 0) {
        paintSteps(painter, corners, thickness, colour);
        return;
    }
    QPen pen(colour, thickness, Qt::CustomDashLine, Qt::FlatCap, Qt::MiterJoin);
    pen.setDashPattern(
        {static_cast<qreal>(dash) / thickness, static_cast<qreal>(dash) / thickness});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(edge.adjusted(0, 0, -1, -1));
}

}  // namespace lacewright::app
