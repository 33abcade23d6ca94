#pragma once

#include <optional>
#include <vector>

#include "core/words/box_rows.h"

namespace lacewright {

// A stitch of the wide row that the narrower size works otherwise.
struct OwnCell {
    std::size_t stitch = 0;  // of the wide row's, from the right edge
    bool nearStart = true;   // nearer to the narrow row's right edge than to its left one
    std::string id;
    bool operator==(const OwnCell&) const = default;
};

// The part of a wide row that a narrower size works: all but so many stitches at either edge, each
// box as often as it likes, a few stitches perhaps otherwise. An edge within a box works the rest
// of it besides the full passes.
struct NestedRow {
    std::size_t skippedRight = 0;
    std::size_t skippedLeft = 0;
    std::vector<OwnCell> own;
    bool cut = false;  // an edge stands within a box
    bool operator==(const NestedRow&) const = default;
};

struct NestedRows {
    std::vector<NestedRow> rows;
    std::optional<std::size_t> notWithin;  // index of the first row that cannot be placed
};

// Finds the narrow rows within the wide ones, row by row, so that the loops left out at the right
// edge of a row are those that the row below leaves out there: the two are one piece of knitting.
// Rows with a box are cut at it; others may lie anywhere. Of several ways the one with the fewest
// stitches of the narrow size's own is taken (a size that shapes at its own edges has some), then
// the most centred one.
NestedRows nestedRows(const std::vector<BoxRow>& wide, const std::vector<BoxRow>& narrow);

}  // namespace lacewright
