#pragma once

#include <string>

#include "core/chart/cell_run.h"
#include "core/chart/chart.h"

// Steps that several edits share.
namespace lacewright {

inline Error refusal(std::string sentence) {
    return {ErrorCode::Refused, std::move(sentence), {}};
}
inline Error outOfRange(std::string sentence) {
    return {ErrorCode::OutOfRange, std::move(sentence), {}};
}
inline Error notFound(std::string sentence) {
    return {ErrorCode::NotFound, std::move(sentence), {}};
}

// The chart, unless its frame is out of order.
Result<Chart> settled(Chart chart);

// One sentence when a chart must not be so wide or high.
std::optional<Error> extentProblem(std::int64_t width, std::int64_t height);

// One sentence when the repeat shares a column with another one on some row.
// Requires: the chart has the repeat.
std::optional<Error> overlapProblem(const Chart& chart, const std::string& name);

// Other cells in one row; the same row object when they are not other. A substitution that does
// not fit the new cells goes.
// Requires: 0 <= row < height, whole stitches of this chart, as many cells as the chart is wide.
void setCells(Chart& chart, int row, CellRun cells);

// Whether the size's stitch takes exactly the cells of the stitch it replaces.
bool fits(const Substitution& substitution, const Chart& chart);
void dropUnfitSubstitutions(Chart& chart);

// Brings the points in line with the sizes: every size begins and ends at a point, and a lettered
// point that sizes referred to in `before` goes when none does any more. While the letters of
// `before` ran in order from the right they still do, names given by hand apart; else a new point
// takes the first free letter and the others keep theirs.
void settlePoints(const Chart& before, Chart& after);

}  // namespace lacewright
