#pragma once

#include <vector>

#include "core/check/alphabet.h"

namespace lacewright {

// Cells without a stitch make areas: above a gap there is mostly another. By x of row `y` of the
// grid: log odds for a gap against a stitch because of the rows above and below it, learnt from the
// pairs of neighbouring rows that it is no part of. Empty where the chart knows no gaps.
// Requires: 0 <= y < grid.height().
std::vector<float> gapOdds(const LetterGrid& grid, Alphabet::Letter noStitch, int y);

}  // namespace lacewright
