#pragma once

#include <string>

#include "core/chart/chart.h"
#include "core/file/json_value.h"

// What a chart says about its sizes as a family. Rows are named by the number the knitter reads.
namespace lacewright {

// Takes the chart read so far: its width, its rows and the rule for uncharted rows. Throws Refusal.
Grading readGrading(const JsonValue& value, const Chart& chart);

std::string writeGrading(const Grading& grading, const Chart& chart);

}  // namespace lacewright
