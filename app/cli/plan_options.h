#pragma once

#include "app/cli/verb.h"
#include "core/plan/planner.h"

namespace lacewright::cli {

struct PlanOptions {
    PlanRequest request;
    double lengthCm = 0;  // 0: not asked for
};

// What "sizes" is asked to plan. Lengths are centimetres, or inches with "in" after the number.
// Without --gauge the chart's own is used.
Result<PlanOptions> readPlanOptions(const Call& call, const Chart& chart);

}  // namespace lacewright::cli
