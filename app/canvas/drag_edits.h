#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/chart/edits.h"

namespace lacewright::app {

// Which side of a repeat's box.
enum class BoxSide : std::uint8_t { Right, Left, Top, Bottom };

// What dragging does to a chart. A line between columns is named by the column on its right (0 is
// the right edge of the chart), a line between rows by the row below it (-1 is the lower edge).

// `onlyRow`: the edge jogs there and stays elsewhere.
Result<Chart> moveRepeatEdge(const Chart& chart, const std::string& repeat, BoxSide side, int line,
                             std::optional<int> onlyRow = std::nullopt);
// A size begins or ends at that line.
Result<Chart> moveSizeMark(const Chart& chart, const std::string& size, Edge edge, int line);
// A point and every size that begins or ends at it.
Result<Chart> movePoint(const Chart& chart, const std::string& point, int column);

}  // namespace lacewright::app
