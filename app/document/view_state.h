#pragma once

#include <QObject>
#include <QString>
#include <optional>

#include "core/chart/edits.h"

namespace lacewright::app {

class Document;

// One cell. Row index from the bottom, column from the right, as in the chart.
struct Cell {
    int row = 0;
    int column = 1;
    bool operator==(const Cell&) const = default;
};

struct RowSpan {
    int first = 0;  // row index
    int last = 0;   // inclusive
    bool holds(int row) const { return row >= first && row <= last; }
};

// What the person looks at: never part of the chart, never on the undo stack. Kept inside the
// chart's bounds when the chart changes.
class ViewState : public QObject {
    Q_OBJECT

 public:
    explicit ViewState(Document& document, QObject* parent = nullptr);

    // The cell that the keyboard works on; the corner a selection grows from is `anchor`.
    Cell cursor() const { return cursor_; }
    Cell anchor() const { return anchor_; }
    CellArea selection() const;
    bool hasSelection() const { return !(cursor_ == anchor_); }
    // The rows that are selected as rows: several, or one over its whole width, but not all rows.
    std::optional<RowSpan> selectedRows() const;
    void moveCursor(Cell cell, bool extendSelection = false);
    void select(const CellArea& area);

    // The stitch that is drawn next, by id.
    const QString& stitch() const { return stitch_; }
    void chooseStitch(const QString& id);

    // The size that is looked at; empty: the whole chart.
    const QString& size() const { return size_; }
    void chooseSize(const QString& name);

    // Cell edge in device-independent pixels, kSmallestCell..kLargestCell.
    static constexpr int kSmallestCell = 4;
    static constexpr int kLargestCell = 64;
    int cellSize() const { return cellSize_; }
    void zoomTo(int cellSize);

    bool showsCompanions() const { return companions_; }
    void showCompanions(bool on);

    void reveal(Cell cell) { Q_EMIT revealRequested(cell); }

 Q_SIGNALS:
    void cursorMoved();  // cursor or selection
    void stitchChosen();
    void sizeChosen();
    void zoomed();
    void companionsToggled();
    void revealRequested(lacewright::app::Cell cell);  // scroll there

 private:
    void keepInside();

    Document& document_;
    Cell cursor_;
    Cell anchor_;
    QString stitch_ = QStringLiteral("yo");
    QString size_;
    int cellSize_ = 24;
    bool companions_ = false;
};

}  // namespace lacewright::app
