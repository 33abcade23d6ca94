#pragma once

#include <ostream>
#include <string>
#include <vector>

#include "app/cli/text_table.h"
#include "core/file/object_writer.h"
#include "core/plan/gauge.h"
#include "core/plan/planner.h"

namespace lacewright::cli {

// A plan with what goes with it.
struct PlanReport {
    Plan plan;
    std::vector<std::string> lost;     // sentences: what the chart's own sizes lose
    std::optional<LengthPlan> length;  // where one was asked for
    double wantedLengthCm = 0;
};

// What was wanted, what is reached and what was given up, in words.
void tellPlan(std::ostream& out, const PlanReport& report);
// The members "plan", "length" and "lost".
void addPlan(ObjectWriter& out, const PlanReport& report);
// More columns of a table that has a line for every size planned.
void addPlanColumns(TextTable& table, const Plan& plan);

}  // namespace lacewright::cli
