#pragma once

#include "core/check/finding.h"

namespace lacewright {

// The chart with all steps of a mend done. Refuses when a step no longer fits the chart.
Result<Chart> applyMend(const Chart& chart, const Mend& mend);

// The cells that hold another stitch in `after`. Requires: charts of one size and catalogue.
std::vector<RedrawnCell> redrawnCells(const Chart& before, const Chart& after);

}  // namespace lacewright
