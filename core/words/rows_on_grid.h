#pragma once

#include "core/words/box_rows.h"

namespace lacewright {

// Cells, stitches and the repeat of rows cut at a box: gives a chart whose other members are to be
// filled in. Without a box on any row it has no repeat. Columns are found by layOut; the box's
// edges stand in one column where the stitches leave room, and are jogged elsewhere.
// Stitches worked as they present themselves show what stands below them.
Result<Chart> rowsOnGrid(const std::vector<BoxRow>& rows);

}  // namespace lacewright
