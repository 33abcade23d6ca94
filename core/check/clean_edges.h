#pragma once

#include <vector>

#include "core/chart/chart.h"

namespace lacewright {

// For every line between columns, named by the column on its right (0 is the right edge of the
// chart, `width` the left one): an edge of a size there parts no companions on any row.
// Requires: a chart with rows. Cost: rows x columns, for rows out of balance times their pairs.
std::vector<bool> cleanLines(const Chart& chart);
// The same for this edge of a size: where it works a companion otherwise, nothing is parted.
std::vector<bool> cleanLines(const Chart& chart, const Size& size, Edge edge);

// The clean line nearest to `line`; of two as near, the one to the right. `clean` is of cleanLines.
int nearestClean(const std::vector<bool>& clean, int line);
// The next clean line to the left (direction 1) or right (-1); `line` itself when there is none.
int nextClean(const std::vector<bool>& clean, int line, int direction);

}  // namespace lacewright
