#pragma once

#include <optional>
#include <vector>

#include "core/words/box_rows.h"
#include "core/words/open_repeats.h"

namespace lacewright {

// The rows of several sizes cut at boxes that all of them share.
struct SizedBoxes {
    std::vector<std::vector<BoxRow>> rows;  // by size, in working order
    std::vector<std::vector<int>> times;    // how often a size works each box, from the right
};

// Finds the boxes by place instead of by words, for texts that do not mark their repeats on every
// row ("k8 (12, 10)" where other rows have "[yo, k2tog] 4 (6, 5) times"). One row says how often
// the sizes work its repeats; from there the boxes are followed through the fabric, up and down:
// on every row a box takes the loops of the box below, the same stitches in every size and every
// time. `bySize` has the same pattern for every size, rows that are worked again written out.
// `marks`: what counts as a repeat. Nothing when no row has one, when a size cannot be knitted or
// has no fixed count, or when the sizes do not share the boxes.
std::optional<SizedBoxes> sizedBoxes(const std::vector<const WrittenPattern*>& bySize,
                                     RepeatMarks marks);

}  // namespace lacewright
