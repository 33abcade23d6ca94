#pragma once

#include <string>
#include <vector>

#include "core/chart/chart.h"

// Edits are pure functions: they give the changed chart, or one sentence why not. Row arguments are
// row indices from the bottom, columns count from the right.
namespace lacewright {

// A stitch with its lower right cell at (row, column). Wide stitches that lose a cell are replaced
// by knit stitches in the cells that remain. Refuses a stitch that reaches outside the chart.
Result<Chart> drawStitch(const Chart& chart, int row, int column, StitchIndex stitch);

// A rectangle of cells, rows bottom to top, each from the right. No cell may be cut off from a wide
// stitch: what is cut becomes knit.
struct CellBlock {
    std::vector<std::vector<StitchIndex>> rows;
    int width() const { return rows.empty() ? 0 : static_cast<int>(rows.front().size()); }
    int height() const { return static_cast<int>(rows.size()); }
    bool operator==(const CellBlock&) const = default;
};
struct CellArea {
    int firstRow = 0;  // row index
    int lastRow = 0;   // inclusive
    int right = 1;
    int left = 1;  // inclusive
    bool operator==(const CellArea&) const = default;
};
CellBlock copyCells(const Chart& chart, const CellArea& area);
// What reaches outside the chart is left away.
Result<Chart> pasteCells(const Chart& chart, int row, int column, const CellBlock& block);
Result<Chart> fillCells(const Chart& chart, const CellArea& area, StitchIndex stitch);
// The cells seen in a mirror: order reversed and every stitch replaced by its mirror stitch.
CellBlock mirrored(const CellBlock& block, const StitchCatalogue& stitches);

// Rows and columns. New cells are knit; repeats, points, sizes and row repeats move along.
Result<Chart> insertRows(const Chart& chart, int beforeRow, int count);
Result<Chart> removeRows(const Chart& chart, int firstRow, int count);
Result<Chart> insertColumns(const Chart& chart, int beforeColumn, int count);
Result<Chart> removeColumns(const Chart& chart, int firstColumn, int count);
Result<Chart> replaceRow(const Chart& chart, int row, std::vector<StitchIndex> cells);

// Repeats. The name is chosen when empty: the first free letter.
Result<Chart> addRepeat(const Chart& chart, Repeat repeat);
Result<Chart> changeRepeat(const Chart& chart, const std::string& name, Repeat repeat);
Result<Chart> removeRepeat(const Chart& chart, const std::string& name);
Result<Chart> setRowRepeat(const Chart& chart, std::optional<RowRepeat> rowRepeat);

// Sizes. Points are made where a size begins or ends and none stands there, and named by letters
// in order from the right; points no size refers to any more stay until removed.
Result<Chart> addSize(const Chart& chart, Size size);
Result<Chart> changeSize(const Chart& chart, const std::string& name, Size size);
Result<Chart> removeSize(const Chart& chart, const std::string& name);
Result<Chart> moveSize(const Chart& chart, const std::string& name, int places);
// Renames a point, or removes it when the new name is empty.
Result<Chart> renamePoint(const Chart& chart, const std::string& name, const std::string& newName);

// Everything that is not rows, repeats or sizes.
struct ChartProperties {
    std::string name;
    std::string notes;
    std::string source;
    Worked worked = Worked::Flat;
    Side firstSide = Side::Right;
    Uncharted uncharted = Uncharted::None;
    std::optional<CastOn> castOn;
    Gauge gauge;
    bool operator==(const ChartProperties&) const = default;
};
ChartProperties propertiesOf(const Chart& chart);
Result<Chart> setProperties(const Chart& chart, const ChartProperties& properties);
// Adds a stitch of the chart's own.
Result<Chart> defineStitch(const Chart& chart, Stitch stitch);

// One sentence when repeats, sizes, points, row repeat or substitutions name places outside the
// chart or names twice; nothing when all is in order. Every edit ends in a chart without problem.
std::optional<Error> frameProblem(const Chart& chart);

}  // namespace lacewright
