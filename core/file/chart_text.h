#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/chart/chart.h"

// A chart as the JSON text of a `NAME.lacewright` file, described member by member in
// resources/chart.schema.json.
//
// Rows stand one on a line, row 1 first. Every row that another member speaks of is named by its
// number as the knitter reads it, so a chart of right-side rows only has the rows 1, 3, 5. Members
// that this version does not know are kept and written after those it knows.
namespace lacewright {

// `fileName` only serves to say where an error is. A stitch that is defined nowhere is no error: it
// becomes one of kind Unknown. The text may begin with a byte order mark.
Result<Chart> readChart(std::string_view text, std::string_view fileName = {});

// The one text of this chart: reading it gives the chart again, writing that the same bytes.
// Requires: a chart with at least one row, within the limits of core/chart/chart.h.
std::string writeChart(const Chart& chart);

}  // namespace lacewright
