#pragma once

#include "app/canvas/drag_edits.h"
#include "app/canvas/view_scene.h"

namespace lacewright::app {

// What lies under the pointer.
struct Hit {
    enum class Kind : std::uint8_t {
        Nothing,
        Cell,
        RepeatEdge,   // index, side
        SizeMark,     // index, edge, onGrid
        Point,        // index
        Lane,         // index: a size's lane beside its marks
        RowNumber,    // cell.row
        ColumnNumber  // cell.column
    };
    Kind kind = Kind::Nothing;
    int index = -1;  // in Chart::repeats, sizes or points
    BoxSide side = BoxSide::Right;
    Edge edge = Edge::Start;
    bool onGrid = false;  // over the cells, on the row of `cell`; else at the foot
    Cell cell;            // under the pointer, or nearest to it
    bool operator==(const Hit&) const = default;
};

// `point` in device pixels of the view; the edges of the chosen size and of repeats are found on
// the grid only when asked for, as they lie over cells.
Hit hitAt(const ViewScene& scene, QPoint point, bool edgesOnGrid);

}  // namespace lacewright::app
