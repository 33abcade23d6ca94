#pragma once

#include <string>

#include "core/chart/chart.h"
#include "core/file/json_value.h"
#include "core/file/stitch_table.h"

// Sizes. Rows are named by the number the knitter reads, columns by number or by a point's name.
namespace lacewright {

// Takes the chart read so far: its width, rows and points. Stitches that a substitution names join
// the table when they are unknown. Throws Refusal.
Size readSize(const JsonValue& value, const Chart& chart, StitchTable& table);

std::string writeSize(const Size& size, const Chart& chart);

}  // namespace lacewright
