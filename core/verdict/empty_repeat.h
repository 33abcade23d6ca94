#pragma once

#include <vector>

#include "core/check/finding.h"
#include "core/words/written.h"

namespace lacewright {

// Where a stitch may be missing from a row that cannot be counted because its repeat uses up no
// loops, such as "*yo; rep from * to end": any place of the repeat, as worked, from 1. Empty when
// the row has no such repeat. `size` counts from 0.
std::vector<Suspect> suspectsInEmptyRepeat(const WrittenRow& row, std::size_t size);

}  // namespace lacewright
