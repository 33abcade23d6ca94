#pragma once

#include <vector>

#include "core/chart/chart.h"

namespace lacewright {

// The plain stitch that stands for another in some rows: purl for knit, or knit for purl. Nothing
// when `ground` is neither.
StitchIndex otherGround(const StitchCatalogue& stitches, StitchIndex ground);

// By row index: rows that are mostly worked in the other ground, such as the wrong-side rows of
// garter stitch. Chosen for the shortest description of the plain cells: as few as possible that
// are not ground, and as few as possible that change from one row to the next.
std::vector<bool> turnedRows(const Chart& chart, StitchIndex ground, StitchIndex other);

}  // namespace lacewright
