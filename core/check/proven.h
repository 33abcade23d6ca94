#pragma once

#include <string>

#include "core/check/check.h"

namespace lacewright {

// What is proven where nothing is at fault and nothing limits how often repeats are worked.
std::string provenSentence(bool hasSizes, bool hasRepeats);
// What a chart without faults and warnings is proven for: "Proven for every size and any number of
// repeats." Requires: `report` is that of the chart.
std::string provenSentence(const Chart& chart, const Report& report);

}  // namespace lacewright
