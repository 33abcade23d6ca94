#pragma once

#include "core/words/box_rows.h"

namespace lacewright {

// Cells, stitches and the repeats, A, B and so on from the right, of rows cut at their boxes: gives
// a chart whose other members are to be filled in. Columns are found by layOut; the edges of a box
// stand in one column where the stitches leave room, and are jogged elsewhere.
// Stitches worked as they present themselves show what stands below them.
Result<Chart> rowsOnGrid(const std::vector<BoxRow>& rows);

}  // namespace lacewright
