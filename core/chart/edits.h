#pragma once

#include <string>
#include <vector>

#include "core/chart/chart.h"

// Edits are pure functions: they give the changed chart, or one sentence why not. Row arguments are
// row indices from the bottom, columns count from the right. Rows whose cells stay the same stay
// the same objects. Edits of cells cost as much as the rows they touch, whatever the chart's size;
// a substitution goes when its cell no longer holds a stitch as wide as its own. Requires,
// everywhere: a chart without frameProblem whose rows hold whole stitches.
namespace lacewright {

// A stitch with its rightmost cell at (row, column). Wide stitches that lose a cell are replaced
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
// What reaches outside the chart is left away by all three.
CellBlock copyCells(const Chart& chart, const CellArea& area);
// The block's lower right cell comes to (row, column).
Result<Chart> pasteCells(const Chart& chart, int row, int column, const CellBlock& block);
// Stitch beside stitch from the right; cells left over beside the last whole one become knit.
Result<Chart> fillCells(const Chart& chart, const CellArea& area, StitchIndex stitch);
// The cells seen in a mirror: order reversed and every stitch replaced by its mirror stitch, if the
// catalogue has one of the same width. Requires: stitches of this catalogue.
CellBlock mirrored(const CellBlock& block, const StitchCatalogue& stitches);

// Rows and columns. New cells are knit, a wide stitch that is cut becomes knit. Repeats, jogs, row
// repeat, points, sizes, their changes and substitutions, and shoulders move along:
// - put in inside a span (a box, a reach, a row span): it grows; at its first row or right edge: it
//   moves; beyond its last row or left edge: it stays.
// - taken out: it shrinks to what is left, so an edge moves to the nearest column left inside. What
//   has nothing left goes: a repeat with its times, a size, a change, a row repeat, a jog, a
//   shoulder; so does the substitution of a cell taken out.
// - a point whose column is taken out follows the size that began or ended there, or else goes.
// Refuses to take out the last row or column, and columns whose loss would make repeats overlap.
Result<Chart> insertRows(const Chart& chart, int beforeRow, int count);
Result<Chart> removeRows(const Chart& chart, int firstRow, int count);
Result<Chart> insertColumns(const Chart& chart, int beforeColumn, int count);
Result<Chart> removeColumns(const Chart& chart, int firstColumn, int count);
// Refuses cells that are not as many as the chart is wide, or not whole stitches.
Result<Chart> replaceRow(const Chart& chart, int row, std::vector<StitchIndex> cells);

// Repeats. Refuses one outside the chart or overlapping another on any row. Without a name a new
// repeat gets the first free letter and an old one keeps its name. Every size works a new repeat
// once, so that its count stays a number; renaming and removing follow in the sizes' times.
Result<Chart> addRepeat(const Chart& chart, Repeat repeat);
Result<Chart> changeRepeat(const Chart& chart, const std::string& name, Repeat repeat);
Result<Chart> removeRepeat(const Chart& chart, const std::string& name);
Result<Chart> setRowRepeat(const Chart& chart, std::optional<RowRepeat> rowRepeat);

// Sizes. A new size works once every repeat it gives no times for. Points are made where a size
// begins or ends and none stands there. As long as the letters run in order from the right they
// are kept so, names given by hand apart; else a new point takes the first free letter. A lettered
// point goes when the last size leaves it; one with a name given by hand stays until removed.
Result<Chart> addSize(const Chart& chart, Size size);
Result<Chart> changeSize(const Chart& chart, const std::string& name, Size size);
Result<Chart> removeSize(const Chart& chart, const std::string& name);
// Moves the size in the list, by so many places toward its end.
Result<Chart> moveSize(const Chart& chart, const std::string& name, int places);
// Renames a point, or removes it when the new name is empty. Refuses to remove one that a size
// needs.
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
// In the round the first row is a right-side row, whatever the properties say.
Result<Chart> setProperties(const Chart& chart, const ChartProperties& properties);
// What holds of the sizes as a family.
Result<Chart> setGrading(const Chart& chart, Grading grading);
// Adds a stitch of the chart's own.
Result<Chart> defineStitch(const Chart& chart, Stitch stitch);

// One sentence when the chart is larger than allowed, when repeats, sizes, points, row repeat or
// substitutions name places outside the chart, or names twice, when a substitution does not fit its
// cell or a text or number is out of bounds; nothing when all is in order. Every edit ends in a
// chart without problem. Repeats that overlap and times of repeats that do not exist are left to
// the checks: no edit makes them, but a chart from a file that has them can be edited.
// Requires: rows as wide as the chart.
std::optional<Error> frameProblem(const Chart& chart);

}  // namespace lacewright
