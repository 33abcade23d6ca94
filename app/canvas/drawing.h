#pragma once

#include <QCoreApplication>
#include <QString>
#include <optional>

#include "app/document/document.h"
#include "app/document/view_state.h"

namespace lacewright::app {

// The cell worked after (or before) a stretch of `span` cells whose lower right cell is `cell`, as
// the needle goes: leftwards on right-side rows, rightwards on wrong-side rows, at the end of a row
// to the beginning of the next. Nothing past the last row or before the first.
std::optional<Cell> workedAfter(const Chart& chart, Cell cell, int span);
std::optional<Cell> workedBefore(const Chart& chart, Cell cell);

// Where the lower right cell of a stitch goes that is drawn at `cell`: there, or as near to it as
// the stitch stays inside the chart.
Cell placeFor(const Chart& chart, Cell cell, int span);

// Draws for the keyboard: at the cursor, and moves it on in the direction of work.
class Drawing {
    Q_DECLARE_TR_FUNCTIONS(lacewright::app::Drawing)

 public:
    Drawing(Document& document, ViewState& view) : document_(document), view_(view) {}

    // The stitch with that id over the selection, or else at the cursor, which moves on.
    void draw(const QString& stitch);
    // The stitch in every cell of the selection or at the cursor, which stays.
    void fill(const QString& stitch);
    // One cell back, which becomes knit.
    void takeBack();

 private:
    std::optional<StitchIndex> indexOf(const QString& stitch) const;
    QString labelFor(StitchIndex stitch) const;

    Document& document_;
    ViewState& view_;
};

}  // namespace lacewright::app
