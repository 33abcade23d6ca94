#pragma once

#include <vector>

#include "core/check/finding.h"

namespace lacewright {

// What may mend a size whose edge parts increases from their decreases (a finding of rule
// "size-edge"). None of them is tried yet.
struct EdgeMends {
    // The stitches left without companion worked otherwise by the sizes, the rest as drawn.
    std::vector<Mend> substitutions;
    // The sizes begin or end at another column, the nearest first; a count that was expected
    // becomes the one the sizes then reach.
    std::vector<Mend> moves;
};

// Requires: the finding is one of check(chart).
EdgeMends edgeMendsFor(const Chart& chart, const Finding& finding);

}  // namespace lacewright
