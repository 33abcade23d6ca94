#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/chart/chart.h"

// Shaping: rows on which a size begins or ends at columns of its own. Edits as in edits.h.
namespace lacewright {

// From `firstRow` to `lastRow` (row indices) the size works the columns of `reach`; where that is
// what it works on its other rows, the rows are no longer shaped. Spans that lie next to one
// another and work alike become one. Refuses rows and columns outside the chart.
Result<Chart> shapeSize(const Chart& chart, const std::string& name, int firstRow, int lastRow,
                        const Reach& reach);

// Columns that a size works, and the rows on which it does: spans of row indices, upward.
struct WorkedReach {
    Reach reach;
    std::vector<std::pair<int, int>> rows;
    bool operator==(const WorkedReach&) const = default;
};
// Every reach of the size once, those of lower rows first. Requires: a chart with rows.
std::vector<WorkedReach> workedReaches(const Chart& chart, const Size& size);

}  // namespace lacewright
