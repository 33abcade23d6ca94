#include "app/canvas/cell_painter.h"

#include <QPainter>
#include <algorithm>
#include <vector>

#include "app/canvas/row_states.h"

namespace lacewright::app {
namespace {

// The part of a stitch that stands in one cell.
struct CellPart {
    StitchIndex stitch = kCovered;
    int cellsToTheLeft = 0;  // that the stitch spans beside this one
    bool operator==(const CellPart&) const = default;
};

CellPart partAt(const Row& row, int column, const StitchCatalogue& stitches) {
    if (row.at(column) != kCovered) {
        const StitchIndex stitch = row.at(column);
        return {stitch, stitches.spans()[stitch] - 1};
    }
    const int owner = row.ownerOf(column);
    const StitchIndex stitch = row.at(owner);
    const int toTheLeft = stitches.spans()[stitch] - 1 - (column - owner);
    return toTheLeft < 0 ? CellPart() : CellPart{stitch, toTheLeft};  // it may have lost its stitch
}

// Puts the columns left..right of one row together, cell by cell; of a wide stitch the part in each
// cell, as its cells may differ in state.
void composeRow(RowStrip& strip, TileCache& tiles, const Row& row, const CellArea& area,
                const std::vector<TileState>& states, int cell, const StitchCatalogue& stitches) {
    strip.begin(area.left - area.right + 1, cell);
    const auto stateAt = [&](int column) {
        return states[static_cast<std::size_t>(column - area.right)];
    };
    CellPart part = partAt(row, area.left, stitches);
    for (int column = area.left; column >= area.right;) {
        const TileState state = stateAt(column);
        CellPart next;
        int end = column - 1;  // of a run of equal cells, to the right of it
        for (; end >= area.right; --end) {
            next = partAt(row, end, stitches);
            if (next != part || stateAt(end) != state) break;
        }
        strip.append(tiles.pixels(part.stitch, state), part.cellsToTheLeft * cell, column - end);
        column = end;
        part = next;
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

int paintCells(QPainter& painter, const ViewScene& scene, TileCache& tiles, RowStrip& strip,
               const QRect& exposed) {
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
        composeRow(strip, tiles, scene.chart.row(row), *area, states, scene.geometry.cell(),
                   *scene.chart.stitches);
        painter.drawImage(at, strip.image(), QRect(0, 0, strip.width(), scene.geometry.cell()));
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
