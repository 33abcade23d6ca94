#pragma once

#include <vector>

#include "core/check/companions.h"

namespace lacewright {

// Companions on one row that an edge between the columns `right` and `right + 1` parts, paired over
// the whole width as drawn once across; none at the edges of the chart.
// Requires: 0 <= row < height.
std::vector<CompanionPair> partedPairs(const Chart& chart, int row, int right);

}  // namespace lacewright
