#include "app/canvas/chart_geometry.h"

#include <algorithm>
#include <cassert>

namespace lacewright::app {
namespace {

// Rounds towards minus infinity, so that points left of and above the cells do not land in them.
int floorDivide(int value, int divisor) {
    return value >= 0 ? value / divisor : -((-value + divisor - 1) / divisor);
}

}  // namespace

ChartGeometry::ChartGeometry(int columns, int rows, int cell, Border border)
    : columns_(columns), rows_(rows), cell_(cell), border_(border) {
    assert(columns > 0 && rows > 0 && cell > 0);
}

QSize ChartGeometry::size() const {
    return {columns_ * cell_ + 2 * border_.side, rows_ * cell_ + border_.top + border_.side};
}

QRect ChartGeometry::cells() const {
    return {border_.side, border_.top, columns_ * cell_, rows_ * cell_};
}

QRect ChartGeometry::rectOf(Cell cell) const {
    return {leftOf(cell.column), topOf(cell.row), cell_, cell_};
}

QRect ChartGeometry::rectOf(const CellArea& area) const {
    return {QPoint(leftOf(area.left), topOf(area.lastRow)),
            QPoint(rightOf(area.right) - 1, bottomOf(area.firstRow) - 1)};
}

std::optional<Cell> ChartGeometry::cellAt(QPoint point) const {
    if (!cells().contains(point)) return std::nullopt;
    return nearestCell(point);
}

Cell ChartGeometry::nearestCell(QPoint point) const {
    const int fromLeft = floorDivide(point.x() - border_.side, cell_);
    const int fromTop = floorDivide(point.y() - border_.top, cell_);
    return {std::clamp(rows_ - 1 - fromTop, 0, rows_ - 1),
            std::clamp(columns_ - fromLeft, 1, columns_)};
}

std::optional<CellArea> ChartGeometry::cellsIn(const QRect& rect) const {
    const QRect touched = rect.intersected(cells());
    if (touched.isEmpty()) return std::nullopt;
    const Cell upperLeft = nearestCell(touched.topLeft());
    const Cell lowerRight = nearestCell(touched.bottomRight());
    return CellArea{lowerRight.row, upperLeft.row, lowerRight.column, upperLeft.column};
}

int ChartGeometry::lineNear(int x) const {
    const int fromLeft = floorDivide(x - border_.side + cell_ / 2, cell_);
    return std::clamp(columns_ - fromLeft, 0, columns_);
}

}  // namespace lacewright::app
