#pragma once

#include <vector>

#include "core/words/loop_look.h"
#include "core/words/written.h"

// The row above a charted one that the chart's rule for uncharted rows speaks of.
namespace lacewright {

// Requires, of all of these: the rule is not None.
Side sideBetween(const Chart& chart, int rowIndex);

// What is worked there, in working order. `open`: how often the repeats are worked without a size.
std::vector<ChartedStitch> chartedBetween(const Chart& chart, int rowIndex, const Size* size,
                                          const OpenTimes& open);

// The written row is that row for every one of the sizes, or without sizes for every number of
// repeats; `row` is of `pattern`, and size i of the list is size i of the pattern.
bool provenBetween(const Chart& chart, int rowIndex, const std::vector<const Size*>& sizes,
                   const WrittenPattern& pattern, const WrittenRow& row);

}  // namespace lacewright
