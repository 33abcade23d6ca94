#pragma once

#include <algorithm>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/text.h"
#include "core/chart/chart.h"

// Rows as text for tests: stitch ids as drawn, from left to right, a wide stitch named once.
namespace lacewright::test {

inline StitchIndex stitch(std::string_view id) {
    const auto found = builtInStitches()->find(id);
    if (!found) throw std::invalid_argument("no stitch " + std::string(id));
    return *found;
}

inline std::vector<StitchIndex> cellsOf(std::string_view drawn) {
    std::vector<StitchIndex> cells;
    for (const std::string_view id : splitWords(drawn)) {
        // Built from the left and turned round, so the covered cells of a stitch come first.
        const StitchIndex index = stitch(id);
        cells.insert(cells.end(), static_cast<std::size_t>(builtInStitches()->spans()[index] - 1),
                     kCovered);
        cells.push_back(index);
    }
    std::reverse(cells.begin(), cells.end());
    return cells;
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

// Rows from the bottom, all equally wide.
inline Chart chartOf(const std::vector<std::string>& rows) {
    std::vector<RowPtr> built;
    for (const std::string& row : rows) built.push_back(makeRow(cellsOf(row), *builtInStitches()));
    Chart chart;
    chart.width = built.front()->width();
    chart.rows = RowList(built);
    return chart;
}

}  // namespace lacewright::test
