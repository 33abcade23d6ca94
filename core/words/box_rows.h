#pragma once

#include <vector>

#include "core/words/right_side_stitch.h"

namespace lacewright {

// One repeat box of a row and what stands behind it, up to the next box or the left edge.
struct RowBox {
    std::vector<RowStitch> stitches;  // empty: nothing on this row depends on the box's count
    std::vector<RowStitch> after;
    bool starred = false;  // the text marks the box itself: "*..; rep from *"
};

// A row cut at the repeat boxes, as seen from the right side: from right to left `before`, then
// each box as often as it is worked with what stands behind it. Every row of a chart has the same
// boxes, each with a count that is the same on all rows.
struct BoxRow {
    std::vector<RowStitch> before;
    std::vector<RowBox> boxes;

    bool hasBox() const;  // one that holds a stitch
    // Stitches outside the boxes, from right to left; every stitch with each box worked once.
    std::vector<RowStitch> edges() const;
    std::vector<RowStitch> all() const;
};

// The same work, wherever it stands in the text.
bool sameStitch(const RowStitch& a, const RowStitch& b);

// Moves the cuts of each row so that every box begins above the same box of the row below wherever
// the row's stitches allow it. A box may begin one stitch further on when the stitch it leaves
// stands again behind its last copy; the knitting stays the same for every count. Chosen for all
// rows together by dynamic programming, one box after the other: least sum of the steps between
// boxes, then least moved from where the text marks them. Requires: rows have the same boxes.
void lineUpBoxes(std::vector<BoxRow>& rows);

}  // namespace lacewright
