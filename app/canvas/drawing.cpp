#include "app/canvas/drawing.h"

#include <algorithm>

#include "core/chart/edits.h"

namespace lacewright::app {
namespace {

Cell beginningOf(const Chart& chart, int row) {
    return {row, chart.sideOf(row) == Side::Right ? 1 : chart.width};
}

Cell endOf(const Chart& chart, int row) {
    return {row, chart.sideOf(row) == Side::Right ? chart.width : 1};
}

}  // namespace

std::optional<Cell> workedAfter(const Chart& chart, Cell cell, int span) {
    const int next = chart.sideOf(cell.row) == Side::Right ? cell.column + span : cell.column - 1;
    if (next >= 1 && next <= chart.width) return Cell{cell.row, next};
    if (cell.row + 1 >= chart.height()) return std::nullopt;
    return beginningOf(chart, cell.row + 1);
}

std::optional<Cell> workedBefore(const Chart& chart, Cell cell) {
    const int before = chart.sideOf(cell.row) == Side::Right ? cell.column - 1 : cell.column + 1;
    if (before >= 1 && before <= chart.width) return Cell{cell.row, before};
    if (cell.row == 0) return std::nullopt;
    return endOf(chart, cell.row - 1);
}

Cell placeFor(const Chart& chart, Cell cell, int span) {
    return {cell.row, std::clamp(cell.column, 1, std::max(1, chart.width - span + 1))};
}

std::optional<StitchIndex> Drawing::indexOf(const QString& stitch) const {
    return document_.chart().stitches->find(stitch.toStdString());
}

QString Drawing::labelFor(StitchIndex stitch) const {
    return tr("Draw %1").arg(QString::fromStdString((*document_.chart().stitches)[stitch].name));
}

void Drawing::draw(const QString& stitch) {
    const std::optional<StitchIndex> index = indexOf(stitch);
    if (!index) return;
    if (view_.hasSelection()) return fill(stitch);
    const Chart& chart = document_.chart();
    const int span = (*chart.stitches)[*index].span;
    Cell cell = view_.cursor();
    // A wrong-side row is worked rightwards: the cursor stands on the stitch's leftmost cell.
    if (chart.sideOf(cell.row) == Side::Wrong) cell.column -= span - 1;
    cell = placeFor(chart, cell, span);
    if (!document_.apply(labelFor(*index), drawStitch(chart, cell.row, cell.column, *index)))
        return;
    if (const auto next = workedAfter(document_.chart(), cell, span)) view_.moveCursor(*next);
}

void Drawing::fill(const QString& stitch) {
    const std::optional<StitchIndex> index = indexOf(stitch);
    if (!index) return;
    document_.apply(labelFor(*index), fillCells(document_.chart(), view_.selection(), *index));
}

void Drawing::takeBack() {
    const auto before = workedBefore(document_.chart(), view_.cursor());
    if (!before) return;
    view_.moveCursor(*before);
    fill(QStringLiteral("k"));
}

}  // namespace lacewright::app
