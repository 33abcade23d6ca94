#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "app/document/view_state.h"
#include "core/chart/edits.h"

namespace lacewright::app {

// Which side of a repeat's box.
enum class BoxSide : std::uint8_t { Right, Left, Top, Bottom };

// What dragging does to a chart. A line between columns is named by the column on its right (0 is
// the right edge of the chart), a line between rows by the row below it (-1 is the lower edge).

// `onlyRow`: the edge jogs there and stays elsewhere.
Result<Chart> moveRepeatEdge(const Chart& chart, const std::string& repeat, BoxSide side, int line,
                             std::optional<int> onlyRow = std::nullopt);
// A size begins or ends at that line: on all rows without a reach of their own, or, for a row that
// has one, on the rows that share it.
Result<Chart> moveSizeMark(const Chart& chart, const std::string& size, Edge edge, int line,
                           std::optional<int> onRow = std::nullopt);
// It begins or ends there on these rows only: shaping.
Result<Chart> shapeSizeMark(const Chart& chart, const std::string& size, Edge edge, int line,
                            const RowSpan& rows);
// A point and every size that begins or ends at it.
Result<Chart> movePoint(const Chart& chart, const std::string& point, int column);
// The column nearest to `column` at which the sizes of the point part nothing; `clean` is of
// cleanLines. `column` itself when there is none.
int cleanColumn(const Chart& chart, const Point& point, const std::vector<bool>& clean, int column);

}  // namespace lacewright::app
