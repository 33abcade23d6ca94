#pragma once

#include <string>

#include "core/chart/chart.h"

namespace lacewright {

// A row as a sentence, in the order it is worked, for those who cannot see the chart:
// "Row 7, right side: knit 2, [repeat A: yarn over, knit 2 together], knit 1."
// Requires: 0 <= row < chart.height().
std::string rowInWords(const Chart& chart, int row);

// "row 4", "rounds 4\u20136". Requires: both are row indices.
std::string rowsInWords(const Chart& chart, int firstRow, int lastRow);

// A stitch as it is worked on one side: "knit" is "purl" on the wrong side.
std::string stitchInWords(const StitchCatalogue& stitches, StitchIndex stitch, Side side);

}  // namespace lacewright
