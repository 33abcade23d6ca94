#include "app/canvas/gestures.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/canvas/drawing.h"
#include "core/chart/edits.h"

namespace lacewright::app {

std::vector<Cell> cellsBetween(Cell from, Cell to) {
    const int rows = to.row - from.row;
    const int columns = to.column - from.column;
    const int steps = std::max(std::abs(rows), std::abs(columns));
    std::vector<Cell> cells;
    for (int i = 1; i <= steps; ++i) {
        const double part = static_cast<double>(i) / steps;
        cells.push_back({from.row + static_cast<int>(std::lround(rows * part)),
                         from.column + static_cast<int>(std::lround(columns * part))});
    }
    return cells;
}

Cell straightened(Cell from, Cell to) {
    const int rows = to.row - from.row;
    const int columns = to.column - from.column;
    if (2 * std::abs(rows) < std::abs(columns)) return {from.row, to.column};
    if (2 * std::abs(columns) < std::abs(rows)) return {to.row, from.column};
    const int length = std::min(std::abs(rows), std::abs(columns));
    return {from.row + (rows < 0 ? -length : length),
            from.column + (columns < 0 ? -length : length)};
}

StrokeGesture::StrokeGesture(Document& document, ViewState& view, StitchIndex stitch)
    : document_(document),
      view_(view),
      stitch_(stitch),
      stroke_(document.newStroke()),
      before_(document.chart()) {}

void StrokeGesture::moveTo(const PointerPlace& place) {
    Cell target = place.cell;
    if (first_ && place.modifiers.testFlag(Qt::ShiftModifier)) {
        target = straightened(*first_, target);
    }
    if (!first_) {
        first_ = target;
        drawIn(target);
    } else {
        for (const Cell cell : cellsBetween(*last_, target)) drawIn(cell);
    }
    last_ = target;
    view_.moveCursor(target);
}

void StrokeGesture::drawIn(Cell cell) {
    const Chart& chart = document_.chart();
    const Row& row = chart.row(cell.row);
    // Passing over the cells of a wide stitch just drawn must not draw it again beside itself.
    if (row.at(row.ownerOf(cell.column)) == stitch_) return;
    const Stitch& stitch = (*chart.stitches)[stitch_];
    const Cell place = placeFor(chart, cell, stitch.span);
    const QString label = QCoreApplication::translate("StrokeGesture", "Draw %1")
                              .arg(QString::fromStdString(stitch.name));
    document_.apply(label, drawStitch(chart, place.row, place.column, stitch_), stroke_);
}

void StrokeGesture::cancel() {
    document_.apply(QCoreApplication::translate("StrokeGesture", "Draw"), before_, stroke_);
}

void SelectGesture::moveTo(const PointerPlace& place) {
    view_.moveCursor(place.cell, extending_);
    extending_ = true;
}

EditGesture::EditGesture(Document& document, const QString& label, Edit edit)
    : document_(document), label_(label), edit_(std::move(edit)) {}

void EditGesture::moveTo(const PointerPlace& place) {
    Result<Chart> edited = edit_(document_.chart(), place);
    if (edited) preview_ = *std::move(edited);
}

void EditGesture::finish() {
    if (!preview_) return;
    Chart chart = *std::move(preview_);
    preview_.reset();
    document_.apply(label_, std::move(chart));
}

void PanGesture::moveTo(const PointerPlace& place) {
    if (last_) scroll_(*last_ - place.view);
    last_ = place.view;
}

}  // namespace lacewright::app
