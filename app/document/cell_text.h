#pragma once

#include <QString>

#include "core/chart/edits.h"

namespace lacewright::app {

// Cells as text for the clipboard: a line per row, the top row first, stitch ids as drawn from left
// to right with a blank between; "." for a cell that a wide stitch covers beside its first.
QString textOf(const CellBlock& block, const StitchCatalogue& stitches);

// Refuses text that is not such a block, and a stitch the catalogue does not know.
Result<CellBlock> cellsFrom(const QString& text, const StitchCatalogue& stitches);

}  // namespace lacewright::app
