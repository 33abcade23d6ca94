#pragma once

#include <QPoint>
#include <QRect>
#include <QSize>
#include <optional>

#include "app/document/view_state.h"

namespace lacewright::app {

// Where the cells lie on the chart's own sheet, in whole device pixels: x to the right, y downward,
// (0, 0) the upper left corner of a border around the cells that lines and tags may reach into.
// Row 0 lies at the bottom, column 1 at the right. A value; nothing here knows the window.
class ChartGeometry {
 public:
    struct Border {
        int side = 0;  // left, right and bottom
        int top = 0;
    };

    ChartGeometry() = default;
    // Requires: all sizes positive.
    ChartGeometry(int columns, int rows, int cell, Border border);

    int columns() const { return columns_; }
    int rows() const { return rows_; }
    int cell() const { return cell_; }
    // The whole sheet with its border.
    QSize size() const;
    // The cells alone.
    QRect cells() const;

    // Left edge of a column; columns() + 1 gives the left border's. Any whole number is allowed.
    int leftOf(int column) const { return border_.side + (columns_ - column) * cell_; }
    int rightOf(int column) const { return leftOf(column) + cell_; }
    // Upper edge of a row. Any whole number is allowed.
    int topOf(int row) const { return border_.top + (rows_ - 1 - row) * cell_; }
    int bottomOf(int row) const { return topOf(row) + cell_; }

    QRect rectOf(Cell cell) const;
    QRect rectOf(const CellArea& area) const;

    std::optional<Cell> cellAt(QPoint point) const;
    // The cell at the point, or the one nearest to it when it lies outside.
    Cell nearestCell(QPoint point) const;
    // All cells that a rectangle touches; nothing when it touches none.
    std::optional<CellArea> cellsIn(const QRect& rect) const;

    // The line between columns nearest to x, named by the column on its right: 0 is the right edge
    // of the chart, columns() the left one.
    int lineNear(int x) const;

 private:
    int columns_ = 1;
    int rows_ = 1;
    int cell_ = 1;
    Border border_;
};

}  // namespace lacewright::app
