#pragma once

#include <vector>

#include "core/chart/chart.h"

namespace lacewright {

// A run of columns that is worked one after the other. Order and columns as on a right-side row:
// from `first` (right) to `last` (left), first <= last.
struct Segment {
    enum class Part : std::uint8_t {
        Plain,        // outside every repeat, worked once
        Box,          // a whole repeat, worked as often as the repeat says
        StartOfSize,  // the part of a box that a size works before the full passes
        EndOfSize     // the part of a box that a size works after them
    };
    int first = 1;
    int last = 1;
    Part part = Part::Plain;
    int repeat = -1;  // index in Chart::repeats, for every part of a box

    bool isBox() const { return part == Part::Box; }
    bool operator==(const Segment&) const = default;
};

// What one size works on one row, or what the whole width is without a size. A wrong-side row works
// the same cells in the opposite order.
using Path = std::vector<Segment>;

// Requires: 0 <= rowIndex < height. `size` may be null: the whole width of the chart.
// A repeat the size does not reach is left out; where boxes overlap, each column belongs to the
// first box from the right.
Path pathOn(const Chart& chart, int rowIndex, const Size* size);

// Rows that share a path.
struct PathBand {
    int firstRow = 0;  // row index
    int lastRow = 0;   // inclusive
    Path path;
    Reach reach;
};

// The paths of all rows, bottom to top, neighbours with the same path taken together.
std::vector<PathBand> pathBands(const Chart& chart, const Size* size);

// One worked cell of a path.
struct WorkedCell {
    int column = 1;
    int segment = 0;  // index in the path
    int pass = 0;     // 0-based pass of a box; 0 outside
};

// Every cell in the order a right-side row works it, with the box passes of `times[repeat index]`.
std::vector<WorkedCell> unrolled(const Path& path, const std::vector<int>& times);

}  // namespace lacewright
