#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/words/prove.h"

// Written rows drawn as a chart.
namespace lacewright {

struct ChartFromRows {
    Chart chart;
    bool knittable = true;             // the verdict of proveWritten, which the chart shares
    std::vector<std::string> remarks;  // what the chart shows otherwise than the text, as sentences
};

// Draws the rows from the right side. Rows that share a text ("Row 2 and all WS rows: purl") are
// drawn one by one, so that every row keeps its number and the proof its rows; a text that numbers
// its rows 1, 3, 5 gives a chart of right-side rows. Rows worked again by name ("Rep rows 1 and 2 5
// more times") are drawn as often as they are worked.
//
// The repeat box holds what one more n adds to each row, n being the r of "multiple * r + plus" or
// how often the first starred repeat is worked; its edges are jogged where a row cannot begin its
// repeat above the row below. A fixed cast-on has a box too when the rows are starred. Rows that
// depend on n in several places are drawn in full for a small n, without a box.
//
// Several sizes make one chart: that of the size with the widest edges. Every other size works the
// box as often as it does and begins and ends at columns of its own, proven row by row against the
// text; sizes that are not worked so within the widest are refused. `size`, counted from 0, draws
// that one alone.
// A row that does not fit is drawn as written, as often as the loops there are allow.
// Refuses a text without rows, rows that cannot be counted or drawn, and charts beyond the limits
// of chart.h. Requires: size < pattern.sizeCount().
Result<ChartFromRows> chartFromRows(const WrittenPattern& pattern,
                                    std::optional<std::size_t> size = {});

}  // namespace lacewright
