#include <algorithm>
#include <utility>

#include "core/chart/edit_steps.h"
#include "core/chart/edits.h"

namespace lacewright {
namespace {

bool isRow(const Chart& chart, int row) {
    return row >= 0 && row < chart.height();
}
bool isStitch(const Chart& chart, StitchIndex stitch) {
    return stitch != kCovered && stitch <= chart.stitches->size();
}

Error noSuchStitch() {
    return notFound("The chart does not have this stitch.");
}

// The part of the area inside the chart; its last row or left column lies before the first or
// right one when there is none.
CellArea clipped(const CellArea& area, const Chart& chart) {
    return {std::max(area.firstRow, 0), std::min(area.lastRow, chart.height() - 1),
            std::max(area.right, 1), std::min(area.left, chart.width)};
}

CellRun cellsBetween(const CellRun& cells, int right, int left) {
    return {cells.begin() + (right - 1), cells.begin() + left};
}

}  // namespace

Result<Chart> drawStitch(const Chart& chart, int row, int column, StitchIndex stitch) {
    if (!isStitch(chart, stitch)) return noSuchStitch();
    const int span = chart.stitches->spans()[stitch];
    if (!isRow(chart, row) || column < 1 || column > chart.width) {
        return outOfRange("This cell lies outside the chart.");
    }
    if (span > chart.width - column + 1) {
        return refusal("The stitch " + (*chart.stitches)[stitch].id + " spans " +
                       std::to_string(span) + " cells and would reach outside the chart.");
    }
    CellRun cells = chart.row(row).cells();
    putStitch(cells, column, stitch, *chart.stitches);
    Chart changed = chart;
    setCells(changed, row, std::move(cells));
    return changed;
}

CellBlock copyCells(const Chart& chart, const CellArea& wanted) {
    const CellArea area = clipped(wanted, chart);
    CellBlock block;
    if (area.right > area.left) return block;
    for (int row = area.firstRow; row <= area.lastRow; ++row) {
        CellRun cells = cellsBetween(chart.row(row).cells(), area.right, area.left);
        makeWhole(cells, *chart.stitches);
        block.rows.push_back(std::move(cells));
    }
    return block;
}

Result<Chart> pasteCells(const Chart& chart, int row, int column, const CellBlock& block) {
    for (const CellRun& cells : block.rows) {
        if (!allKnown(cells, *chart.stitches)) return noSuchStitch();
    }
    Chart changed = chart;
    for (int up = 0; up < block.height(); ++up) {
        const CellRun& source = block.rows[static_cast<std::size_t>(up)];
        const std::int64_t left =
            std::int64_t{column} + static_cast<std::int64_t>(source.size()) - 1;
        const std::int64_t target = std::int64_t{row} + up;
        const CellArea area = clipped(
            {0, 0, column, static_cast<int>(std::clamp<std::int64_t>(left, -1, kMaxWidth))}, chart);
        if (target < 0 || target >= chart.height() || area.right > area.left) continue;
        const int at = static_cast<int>(target);
        CellRun patch = cellsBetween(source, area.right - column + 1, area.left - column + 1);
        makeWhole(patch, *chart.stitches);
        CellRun cells = chart.row(at).cells();
        cutFree(cells, area.right, area.left, *chart.stitches);
        std::copy(patch.begin(), patch.end(), cells.begin() + (area.right - 1));
        setCells(changed, at, std::move(cells));
    }
    return changed;
}

Result<Chart> fillCells(const Chart& chart, const CellArea& wanted, StitchIndex stitch) {
    if (!isStitch(chart, stitch)) return noSuchStitch();
    const CellArea area = clipped(wanted, chart);
    if (area.right > area.left || area.firstRow > area.lastRow) return chart;
    const int span = chart.stitches->spans()[stitch];
    CellRun row(static_cast<std::size_t>(area.left - area.right + 1), plainStitch(*chart.stitches));
    for (int at = 1; at + span - 1 <= static_cast<int>(row.size()); at += span) {
        putStitch(row, at, stitch, *chart.stitches);
    }
    const CellBlock block{
        std::vector<CellRun>(static_cast<std::size_t>(area.lastRow - area.firstRow + 1), row)};
    return pasteCells(chart, area.firstRow, area.right, block);
}

CellBlock mirrored(const CellBlock& block, const StitchCatalogue& stitches) {
    const auto mirrorOf = [&](StitchIndex stitch) {
        const auto mirror = stitches.find(stitches[stitch].mirror);
        return mirror && stitches.spans()[*mirror] == stitches.spans()[stitch] ? *mirror : stitch;
    };
    CellBlock mirror;
    for (const CellRun& cells : block.rows) {
        CellRun turned(cells.size(), kCovered);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i] == kCovered) continue;
            // Its leftmost cell comes to lie rightmost.
            const std::size_t end =
                std::min<std::size_t>(i + stitches.spans()[cells[i]], cells.size());
            turned[cells.size() - end] = mirrorOf(cells[i]);
        }
        mirror.rows.push_back(std::move(turned));
    }
    return mirror;
}

Result<Chart> replaceRow(const Chart& chart, int row, std::vector<StitchIndex> cells) {
    if (!isRow(chart, row)) return outOfRange("The chart has no such row.");
    if (static_cast<int>(cells.size()) != chart.width) {
        return refusal("A row of this chart has " + std::to_string(chart.width) + " cells, not " +
                       std::to_string(cells.size()) + ".");
    }
    if (!allKnown(cells, *chart.stitches)) return noSuchStitch();
    CellRun whole = cells;
    makeWhole(whole, *chart.stitches);
    if (whole != cells) return refusal("A stitch that spans several cells must have all of them.");
    Chart changed = chart;
    setCells(changed, row, std::move(cells));
    return changed;
}

}  // namespace lacewright
