#pragma once

#include <optional>
#include <vector>

#include "core/words/box_rows.h"

namespace lacewright {

// The part of a wide row that a narrower size works: all but so many stitches at either edge, the
// box as often as it likes.
struct NestedRow {
    std::size_t skippedRight = 0;
    std::size_t skippedLeft = 0;
    bool operator==(const NestedRow&) const = default;
};

// Finds the narrow rows within the wide ones, row by row, so that the loops left out at the right
// edge of a row are those that the row below leaves out there: the two are one piece of knitting.
// Rows with a box are cut at it; others may lie anywhere, and of several ways the most centred one
// is taken. Nothing when some row does not lie within its wide one, or the rows do not stand above
// one another.
std::optional<std::vector<NestedRow>> nestedRows(const std::vector<BoxRow>& wide,
                                                 const std::vector<BoxRow>& narrow);

}  // namespace lacewright
