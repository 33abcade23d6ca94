#include "core/check/turned_rows.h"

#include <algorithm>
#include <array>

namespace lacewright {

StitchIndex otherGround(const StitchCatalogue& stitches, StitchIndex ground) {
    const auto k = stitches.find("k");
    const auto p = stitches.find("p");
    if (!k || !p || (ground != *k && ground != *p)) return kCovered;
    return ground == *k ? *p : *k;
}

// Two states a row, as drawn or turned; the cheapest way through them.
std::vector<bool> turnedRows(const Chart& chart, StitchIndex ground, StitchIndex other) {
    const auto rows = static_cast<std::size_t>(chart.height());
    std::vector<std::array<bool, 2>> alikeBelow(rows);  // the row below is turned as this one is
    std::array<int, 2> cost{};
    for (std::size_t row = 0; row < rows; ++row) {
        const auto& cells = chart.rows[row]->cells();
        const auto* below = row > 0 ? &chart.rows[row - 1]->cells() : nullptr;
        std::array<int, 2> notGround{};  // as drawn, turned
        std::array<int, 2> changed{};    // while the rows are turned alike, while they are not
        for (std::size_t x = 0; x < cells.size(); ++x) {
            const StitchIndex cell = cells[x];
            if (cell != ground && cell != other) continue;
            ++notGround[cell == ground ? 1 : 0];
            if (below == nullptr || ((*below)[x] != ground && (*below)[x] != other)) continue;
            ++changed[(*below)[x] == cell ? 1 : 0];
        }
        std::array<int, 2> next{};
        for (const std::size_t turned : {std::size_t{0}, std::size_t{1}}) {
            const int alike = cost[turned] + changed[0];
            const int unlike = cost[1 - turned] + changed[1];
            alikeBelow[row][turned] = alike <= unlike;
            next[turned] = std::min(alike, unlike) + notGround[turned];
        }
        cost = next;
    }
    std::vector<bool> turned(rows);
    bool here = cost[1] < cost[0];
    for (std::size_t row = rows; row-- > 0;) {
        turned[row] = here;
        if (!alikeBelow[row][here ? 1 : 0]) here = !here;
    }
    return turned;
}

}  // namespace lacewright
