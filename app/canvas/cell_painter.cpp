#include "app/canvas/cell_painter.h"

#include <QPainter>
#include <algorithm>
#include <vector>

#include "app/canvas/row_states.h"

namespace lacewright::app {
namespace {

// Draws the columns right..left of one row cell by cell; of a wide stitch the part in each cell, as
// its cells may differ in state. `x` is the left edge of column `left`.
void paintRow(QPainter& painter, TileCache& tiles, const Row& row, const CellArea& area,
              const std::vector<TileState>& states, QPoint at, int cell,
              const StitchCatalogue& stitches) {
    for (int column = area.left; column >= area.right; --column, at.rx() += cell) {
        const TileState state = states[static_cast<std::size_t>(column - area.right)];
        const int owner = row.at(column) == kCovered ? row.ownerOf(column) : column;
        const StitchIndex stitch = row.at(owner);
        const int span = stitch == kCovered ? 1 : stitches.spans()[stitch];
        const QImage& tile = tiles.tile(stitch, state);
        if (span == 1) {
            painter.drawImage(at, tile);
        } else {
            const int part = span - 1 - (column - owner);  // cells to the left of this one
            painter.drawImage(at, tile, QRect(part * cell, 0, cell, cell));
        }
    }
}

// Lines between every n-th cell, counted from the lower right corner as knitters count.
void paintLines(QPainter& painter, const ViewScene& scene, const CellArea& area, int every,
                int thickness, const QColor& colour) {
    const ChartGeometry& geometry = scene.geometry;
    const QRect cells = geometry.rectOf(area).translated(scene.origin());
    const int shift = thickness / 2;
    for (int column = area.right / every * every; column <= area.left; column += every) {
        const int x = geometry.leftOf(column) + scene.origin().x() - shift;
        if (column > 0) painter.fillRect(x, cells.top(), thickness, cells.height(), colour);
    }
    for (int row = (area.firstRow + 1) / every * every; row <= area.lastRow + 1; row += every) {
        const int y = geometry.topOf(row - 1) + scene.origin().y() - shift;
        if (row > 0) painter.fillRect(cells.left(), y, cells.width(), thickness, colour);
    }
}

void paintFrame(QPainter& painter, const ViewScene& scene) {
    const int line = scene.px(1.6);
    const QRect cells = scene.geometry.cells().translated(scene.origin());
    const QRect outer = cells.adjusted(-line + 1, -line + 1, line, line);
    painter.fillRect(outer.left(), outer.top(), outer.width(), line, scene.colours.frame);
    painter.fillRect(outer.left(), outer.bottom() + 1 - line, outer.width(), line,
                     scene.colours.frame);
    painter.fillRect(outer.left(), outer.top(), line, outer.height(), scene.colours.frame);
    painter.fillRect(outer.right() + 1 - line, outer.top(), line, outer.height(),
                     scene.colours.frame);
}

}  // namespace

int paintCells(QPainter& painter, const ViewScene& scene, TileCache& tiles, const QRect& exposed) {
    const QPoint origin = scene.origin();
    const std::optional<CellArea> area = scene.geometry.cellsIn(exposed.translated(-origin));
    if (!area) return 0;
    const QPainter::CompositionMode mode = painter.compositionMode();
    painter.setCompositionMode(QPainter::CompositionMode_Source);
    std::vector<TileState> states;
    for (int row = area->firstRow; row <= area->lastRow; ++row) {
        fillStates(scene, row, area->right, area->left, states);
        const QPoint at =
            QPoint(scene.geometry.leftOf(area->left), scene.geometry.topOf(row)) + origin;
        paintRow(painter, tiles, scene.chart.row(row), *area, states, at, scene.geometry.cell(),
                 *scene.chart.stitches);
    }
    painter.setCompositionMode(mode);
    paintGridLines(painter, scene, exposed);
    return (area->left - area->right + 1) * (area->lastRow - area->firstRow + 1);
}

void paintGridLines(QPainter& painter, const ViewScene& scene, const QRect& exposed) {
    const std::optional<CellArea> area =
        scene.geometry.cellsIn(exposed.translated(-scene.origin()));
    if (area) {
        const int cell = scene.geometry.cell();
        const bool roomy = cell >= scene.px(14);
        const bool tight = cell < scene.px(7);
        if (!tight) paintLines(painter, scene, *area, 5, scene.px(1), scene.colours.gridFive);
        paintLines(painter, scene, *area, 10, scene.px(roomy ? 1.5 : 1),
                   tight ? scene.colours.gridFive : scene.colours.gridTen);
    }
    paintFrame(painter, scene);
}

}  // namespace lacewright::app
