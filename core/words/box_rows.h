#pragma once

#include <vector>

#include "core/words/right_side_stitch.h"

namespace lacewright {

// A row cut at the repeat box, as seen from the right side: from right to left `before`, the box n
// times, `after`. The same n for every row of a chart.
struct BoxRow {
    std::vector<RowStitch> before;
    std::vector<RowStitch> box;  // empty: the row has no part that depends on n
    std::vector<RowStitch> after;
    bool starred = false;  // the text marks the box itself: "*..; rep from *"
};

// The same work, wherever it stands in the text.
bool sameStitch(const RowStitch& a, const RowStitch& b);

// Moves the cuts of each row so that the box begins above the box of the row below wherever the
// row's stitches allow it. A box may begin one stitch further on when the stitch it leaves stands
// again behind its last copy; the knitting stays the same for every n. Chosen for all rows together
// by dynamic programming: least sum of the steps between boxes, then least moved from
// where the text marks them.
void lineUpBoxes(std::vector<BoxRow>& rows);

}  // namespace lacewright
