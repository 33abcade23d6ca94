#include "app/document/view_state.h"

#include <algorithm>

#include "app/document/document.h"

namespace lacewright::app {

namespace {

Cell inside(Cell cell, const Chart& chart) {
    return {std::clamp(cell.row, 0, std::max(0, chart.height() - 1)),
            std::clamp(cell.column, 1, std::max(1, chart.width))};
}

}  // namespace

ViewState::ViewState(Document& document, QObject* parent) : QObject(parent), document_(document) {
    connect(&document, &Document::changed, this, [this](const ChartChange& change) {
        if (change.frame) keepInside();
    });
    connect(&document, &Document::replaced, this, [this] {
        chooseSize({});
        moveCursor({});
        keepInside();
    });
}

CellArea ViewState::selection() const {
    return {std::min(cursor_.row, anchor_.row), std::max(cursor_.row, anchor_.row),
            std::min(cursor_.column, anchor_.column), std::max(cursor_.column, anchor_.column)};
}

std::optional<RowSpan> ViewState::selectedRows() const {
    const CellArea area = selection();
    const bool several = area.lastRow > area.firstRow;
    const bool whole = hasSelection() && area.left - area.right + 1 == document_.chart().width;
    const bool all = area.lastRow - area.firstRow + 1 == document_.chart().height();
    if (all || !(several || whole)) return std::nullopt;
    return RowSpan{area.firstRow, area.lastRow};
}

void ViewState::moveCursor(Cell cell, bool extendSelection) {
    const Cell target = inside(cell, document_.chart());
    const Cell corner = extendSelection ? anchor_ : target;
    if (target == cursor_ && corner == anchor_) return;
    cursor_ = target;
    anchor_ = corner;
    Q_EMIT cursorMoved();
}

void ViewState::select(const CellArea& area) {
    const Cell first = inside({area.firstRow, area.right}, document_.chart());
    const Cell last = inside({area.lastRow, area.left}, document_.chart());
    if (first == anchor_ && last == cursor_) return;
    anchor_ = first;
    cursor_ = last;
    Q_EMIT cursorMoved();
}

void ViewState::chooseStitch(const QString& id) {
    if (id == stitch_) return;
    stitch_ = id;
    Q_EMIT stitchChosen();
}

void ViewState::chooseSize(const QString& name) {
    if (name == size_) return;
    size_ = name;
    Q_EMIT sizeChosen();
}

void ViewState::zoomTo(int cellSize) {
    const int wanted = std::clamp(cellSize, kSmallestCell, kLargestCell);
    if (wanted == cellSize_) return;
    cellSize_ = wanted;
    Q_EMIT zoomed();
}

void ViewState::showCompanions(bool on) {
    if (on == companions_) return;
    companions_ = on;
    Q_EMIT companionsToggled();
}

void ViewState::keepInside() {
    const Chart& chart = document_.chart();
    if (!chart.findSize(size_.toStdString())) chooseSize({});
    if (!chart.stitches->find(stitch_.toStdString())) chooseStitch(QStringLiteral("yo"));
    const Cell cursor = inside(cursor_, chart);
    const Cell anchor = inside(anchor_, chart);
    if (cursor == cursor_ && anchor == anchor_) return;
    cursor_ = cursor;
    anchor_ = anchor;
    Q_EMIT cursorMoved();
}

}  // namespace lacewright::app
