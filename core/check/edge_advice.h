#pragma once

#include "core/check/mend_trial.h"

namespace lacewright {

// Mends for a size's edge that parts companions: a stitch worked otherwise, the edge moved; both
// edges in one edit where one makes up for the other. `all` are the findings of the chart.
void adviseOnEdge(const Chart& chart, MendTrial& trial, Finding& finding,
                  const std::vector<Finding>& all);

}  // namespace lacewright
