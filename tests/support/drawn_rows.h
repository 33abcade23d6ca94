#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "tests/support/charts.h"

// Rows back as text for tests: stitch ids as drawn, from left to right, a wide stitch named once.
namespace lacewright::test {

// Requires: a stitch built in.
inline StitchIndex stitch(std::string_view id) {
    return builtInStitches()->find(id).value();
}

inline std::vector<StitchIndex> cellsOf(const std::string& drawn) {
    return rowOf(drawn)->cells();
}

inline std::string drawn(const std::vector<StitchIndex>& cells, const StitchCatalogue& stitches) {
    std::vector<std::string> ids;
    for (auto cell = cells.rbegin(); cell != cells.rend(); ++cell) {
        if (*cell != kCovered) ids.push_back(stitches[*cell].id);
    }
    return join(ids, " ");
}

inline std::string drawn(const Chart& chart, int row) {
    return drawn(chart.row(row).cells(), *chart.stitches);
}

}  // namespace lacewright::test
