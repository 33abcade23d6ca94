#pragma once

#include <vector>

#include "core/stitch/catalogue.h"

// Cells of one row while they are being changed: cells[0] is column 1, at the right edge.
namespace lacewright {

using CellRun = std::vector<StitchIndex>;

// The stitch that takes the place of what an edit cuts: knit.
StitchIndex plainStitch(const StitchCatalogue& stitches);

// Prepares the columns first..last to be overwritten, or the gap before `first` when last is
// first - 1 to be widened: wide stitches that reach in from outside become knit out there.
// Requires: 1 <= first <= last + 1, last <= cells.size().
void cutFree(CellRun& cells, int first, int last, const StitchCatalogue& stitches);

// A stitch with its rightmost cell at `column`; wide stitches that lose a cell become knit.
// Requires: it fits between `column` and the left end of the cells.
void putStitch(CellRun& cells, int column, StitchIndex stitch, const StitchCatalogue& stitches);

// Knit in place of wide stitches without all their cells and of cells without their stitch.
void makeWhole(CellRun& cells, const StitchCatalogue& stitches);

// Every cell holds a stitch of the catalogue or is covered.
bool allKnown(const CellRun& cells, const StitchCatalogue& stitches);

}  // namespace lacewright
