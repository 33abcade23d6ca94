#include <algorithm>
#include <utility>

#include "core/chart/edit_steps.h"
#include "core/chart/edits.h"
#include "core/chart/letter_names.h"
#include "core/chart/shift.h"

namespace lacewright {
namespace {

// Every row rewritten by `rewrite`; rows that share one object still do.
template <class Rewrite>
void rewriteRows(Chart& chart, Rewrite rewrite) {
    std::vector<RowPtr> rows = chart.rows.toVector();
    RowPtr lastOld;
    RowPtr lastNew;
    for (RowPtr& row : rows) {
        if (row != lastOld) {
            CellRun cells = row->cells();
            rewrite(cells);
            lastOld = row;
            lastNew = makeRow(std::move(cells), *chart.stitches);
        }
        row = lastNew;
    }
    chart.rows = RowList(rows);
}

// Moves every item; those of which nothing is left, so that `move` says false, go.
template <class T, class Move>
void moveEach(std::vector<T>& items, Move move) {
    std::vector<T> kept;
    kept.reserve(items.size());
    for (T& item : items) {
        if (move(item)) kept.push_back(std::move(item));
    }
    items = std::move(kept);
}

bool movePlace(int& place, const Shift& shift) {
    const auto moved = shift.place(place);
    place = moved.value_or(place);
    return moved.has_value();
}

// A repeat's box and, row by row, its jogged boxes. False when the repeat has no column left. A jog
// whose own box has none left goes: the row is then worked as the others.
bool moveColumns(Repeat& repeat, const Shift& shift) {
    const Repeat old = repeat;
    if (!shift.span(repeat.right, repeat.left)) return false;
    repeat.jogs.clear();
    for (auto [row, jog] : old.jogs) {
        Box box = old.on(row);
        if (!shift.span(box.right, box.left)) continue;
        jog.right = box.right - repeat.right;
        jog.left = box.left - repeat.left;
        repeat.jogs.emplace(row, std::move(jog));
    }
    return true;
}

bool moveColumns(Size& size, const Shift& shift) {
    if (!shift.span(size.reach.start, size.reach.end)) return false;
    moveEach(size.changes,
             [&](ReachChange& change) { return shift.span(change.reach.start, change.reach.end); });
    moveEach(size.substitutions, [&](Substitution& s) { return movePlace(s.column, shift); });
    return true;
}

// A point whose column was taken out goes where the size has gone that began or ended there.
std::optional<int> columnOfPoint(int old, const Chart& before, const Shift& shift) {
    if (const auto kept = shift.place(old)) return kept;
    for (const Size& size : before.sizes) {
        Reach reach = size.reach;
        if (!shift.span(reach.start, reach.end)) continue;
        if (size.reach.start == old) return reach.start;
        if (size.reach.end == old) return reach.end;
    }
    return std::nullopt;
}

void movePoints(Chart& chart, const Chart& before, const Shift& shift) {
    chart.points.clear();
    for (Point point : before.points) {
        const bool stays = shift.place(point.column).has_value();
        const auto column = columnOfPoint(point.column, before, shift);
        if (!column) continue;
        point.column = *column;
        // A letter that lost its column gives way to a point that stands there already.
        if (!stays && isLetterName(point.name) && chart.pointAt(*column) != nullptr) continue;
        chart.points.push_back(std::move(point));
    }
}

void removeTimes(Chart& chart) {
    for (Size& size : chart.sizes) {
        std::erase_if(size.times,
                      [&](const auto& entry) { return !chart.findRepeat(entry.first); });
    }
}

void moveColumns(Chart& chart, const Chart& before, const Shift& shift) {
    moveEach(chart.repeats, [&](Repeat& repeat) { return moveColumns(repeat, shift); });
    moveEach(chart.sizes, [&](Size& size) { return moveColumns(size, shift); });
    moveEach(chart.grading.shoulders,
             [&](Shoulder& shoulder) { return shift.span(shoulder.right, shoulder.left); });
    removeTimes(chart);
    movePoints(chart, before, shift);
    dropUnfitSubstitutions(chart);
}

bool moveRows(Repeat& repeat, const Shift& shift) {
    if (!shift.span(repeat.firstRow, repeat.lastRow)) return false;
    std::map<int, Jog> moved;
    for (auto& [row, jog] : repeat.jogs) {
        if (const auto place = shift.place(row)) moved.emplace(*place, std::move(jog));
    }
    repeat.jogs = std::move(moved);
    return true;
}

void moveRows(Size& size, const Shift& shift) {
    moveEach(size.changes,
             [&](ReachChange& change) { return shift.span(change.firstRow, change.lastRow); });
    moveEach(size.substitutions, [&](Substitution& s) { return movePlace(s.row, shift); });
}

void moveRows(Chart& chart, const Shift& shift) {
    moveEach(chart.repeats, [&](Repeat& repeat) { return moveRows(repeat, shift); });
    for (Size& size : chart.sizes) moveRows(size, shift);
    moveEach(chart.grading.shoulders,
             [&](Shoulder& shoulder) { return movePlace(shoulder.row, shift); });
    removeTimes(chart);
    if (chart.rowRepeat && !shift.span(chart.rowRepeat->firstRow, chart.rowRepeat->lastRow)) {
        chart.rowRepeat.reset();
    }
}

std::optional<Error> anyOverlap(const Chart& chart) {
    for (const Repeat& repeat : chart.repeats) {
        if (auto problem = overlapProblem(chart, repeat.name)) return problem;
    }
    return std::nullopt;
}

// One sentence when `count` places from `first` on are not all among those from `base` to `end`.
std::optional<Error> placeProblem(int first, int count, int base, int end) {
    if (count < 0) return outOfRange("How many rows or columns must not be negative.");
    if (first >= base && first <= end + 1 && count <= end + 1 - first) return std::nullopt;
    return outOfRange("This place lies outside the chart.");
}

}  // namespace

Result<Chart> insertRows(const Chart& chart, int beforeRow, int count) {
    if (auto problem = placeProblem(beforeRow, std::min(count, 0), 0, chart.height() - 1)) {
        return *std::move(problem);
    }
    if (auto problem = extentProblem(chart.width, std::int64_t{chart.height()} + count)) {
        return *std::move(problem);
    }
    if (count == 0) return chart;
    const CellRun knit(static_cast<std::size_t>(chart.width), plainStitch(*chart.stitches));
    std::vector<RowPtr> rows = chart.rows.toVector();
    rows.insert(rows.begin() + beforeRow, static_cast<std::size_t>(count),
                makeRow(knit, *chart.stitches));
    Chart changed = chart;
    changed.rows = RowList(rows);
    moveRows(changed, Shift::inserted(beforeRow, count));
    return settled(std::move(changed));
}

Result<Chart> removeRows(const Chart& chart, int firstRow, int count) {
    if (auto problem = placeProblem(firstRow, count, 0, chart.height() - 1)) {
        return *std::move(problem);
    }
    if (count == chart.height()) return refusal("A chart keeps at least one row.");
    if (count == 0) return chart;
    std::vector<RowPtr> rows = chart.rows.toVector();
    rows.erase(rows.begin() + firstRow, rows.begin() + firstRow + count);
    Chart changed = chart;
    changed.rows = RowList(rows);
    moveRows(changed, Shift::removed(firstRow, count));
    return settled(std::move(changed));
}

Result<Chart> insertColumns(const Chart& chart, int beforeColumn, int count) {
    if (auto problem = placeProblem(beforeColumn, std::min(count, 0), 1, chart.width)) {
        return *std::move(problem);
    }
    if (auto problem = extentProblem(std::int64_t{chart.width} + count, chart.height())) {
        return *std::move(problem);
    }
    if (count == 0) return chart;
    Chart changed = chart;
    changed.width += count;
    rewriteRows(changed, [&](CellRun& cells) {
        cutFree(cells, beforeColumn, beforeColumn - 1, *chart.stitches);
        cells.insert(cells.begin() + (beforeColumn - 1), static_cast<std::size_t>(count),
                     plainStitch(*chart.stitches));
    });
    moveColumns(changed, chart, Shift::inserted(beforeColumn, count));
    return settled(std::move(changed));
}

Result<Chart> removeColumns(const Chart& chart, int firstColumn, int count) {
    if (auto problem = placeProblem(firstColumn, count, 1, chart.width)) {
        return *std::move(problem);
    }
    if (count == chart.width) return refusal("A chart keeps at least one column.");
    if (count == 0) return chart;
    Chart changed = chart;
    changed.width -= count;
    rewriteRows(changed, [&](CellRun& cells) {
        cutFree(cells, firstColumn, firstColumn + count - 1, *chart.stitches);
        const auto first = cells.begin() + (firstColumn - 1);
        cells.erase(first, first + count);
    });
    moveColumns(changed, chart, Shift::removed(firstColumn, count));
    // A jog that is lost can bring its box back over another one.
    auto overlap = anyOverlap(changed);
    if (overlap && !anyOverlap(chart)) return *std::move(overlap);
    settlePoints(chart, changed);
    return settled(std::move(changed));
}

}  // namespace lacewright
