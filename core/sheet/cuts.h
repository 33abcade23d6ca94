#pragma once

#include <vector>

#include "core/sheet/drawing.h"

namespace lacewright {

// A chart cut into pieces for sheets of paper.
struct Cuts {
    std::vector<int> columns;  // the leftmost column of every piece, ascending; ends with the width
    std::vector<int> rows;  // the topmost row index of every piece, ascending; ends with the last

    int across() const { return static_cast<int>(columns.size()); }
    int upward() const { return static_cast<int>(rows.size()); }
    int count() const { return across() * upward(); }
    // Counted from the right and from the bottom, both from 0.
    Piece piece(int fromRight, int fromBottom) const;
};

// Cuts so that no piece is larger than the limits. Columns are cut at the edge of a repeat when one
// lies in the outer part of the sheet, else at a multiple of `every`, and never through a stitch
// that spans several cells (unless it is wider than the sheet). Rows likewise, at the row repeat or
// the first row of a repeat.
// Requires: both limits >= 1.
Cuts cutChart(const Chart& chart, int mostColumns, int mostRows, int every);

}  // namespace lacewright
