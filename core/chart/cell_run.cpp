#include "core/chart/cell_run.h"

#include <algorithm>
#include <cstddef>

namespace lacewright {

StitchIndex plainStitch(const StitchCatalogue& stitches) {
    return stitches.find("k").value_or(1);
}

void cutFree(CellRun& cells, int first, int last, const StitchCatalogue& stitches) {
    auto right = static_cast<std::size_t>(first - 1);
    auto left = static_cast<std::size_t>(last);
    const bool cutRight = right < cells.size() && cells[right] == kCovered;
    const bool cutLeft = left < cells.size() && cells[left] == kCovered;
    if (!cutRight && !cutLeft) return;
    const StitchIndex plain = plainStitch(stitches);
    if (cutRight) {
        while (right > 0 && cells[--right] == kCovered) cells[right] = plain;
        cells[right] = plain;
    }
    for (; left < cells.size() && cells[left] == kCovered; ++left) cells[left] = plain;
}

void putStitch(CellRun& cells, int column, StitchIndex stitch, const StitchCatalogue& stitches) {
    const int span = stitches.spans()[stitch];
    cutFree(cells, column, column + span - 1, stitches);
    const auto at = cells.begin() + (column - 1);
    *at = stitch;
    std::fill(at + 1, at + span, kCovered);
}

void makeWhole(CellRun& cells, const StitchCatalogue& stitches) {
    const StitchIndex plain = plainStitch(stitches);
    for (std::size_t i = 0; i < cells.size();) {
        std::size_t covered = 0;
        while (i + covered + 1 < cells.size() && cells[i + covered + 1] == kCovered) ++covered;
        const std::size_t span = stitches.spans()[cells[i]];
        const std::size_t end = i + covered + 1;
        // A stitch that has all its cells keeps them; cells covered beyond those have no stitch.
        const std::size_t keep = span >= 1 && span <= covered + 1 ? span : 0;
        std::fill(cells.begin() + static_cast<std::ptrdiff_t>(i + keep),
                  cells.begin() + static_cast<std::ptrdiff_t>(end), plain);
        i = end;
    }
}

bool allKnown(const CellRun& cells, const StitchCatalogue& stitches) {
    return std::all_of(cells.begin(), cells.end(),
                       [&](StitchIndex cell) { return cell <= stitches.size(); });
}

}  // namespace lacewright
