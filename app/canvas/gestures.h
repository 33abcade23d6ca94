#pragma once

#include <QString>
#include <functional>
#include <optional>

#include "app/canvas/gesture.h"
#include "app/document/document.h"

namespace lacewright::app {

// Draws a stitch in every cell the pointer passes; one undo step from press to release. With Shift
// the cells lie on a level, upright or slanting line from the first. Cancelling takes the stroke
// back.
class StrokeGesture : public Gesture {
 public:
    StrokeGesture(Document& document, ViewState& view, StitchIndex stitch);
    void moveTo(const PointerPlace& place) override;
    void cancel() override;
    bool movesCursor() const override { return true; }

 private:
    void drawIn(Cell cell);

    Document& document_;
    ViewState& view_;
    StitchIndex stitch_;
    int stroke_;
    Chart before_;
    std::optional<Cell> first_;
    std::optional<Cell> last_;
};

// Stretches the selection from the cell first touched, or from the one that was the anchor.
class SelectGesture : public Gesture {
 public:
    SelectGesture(ViewState& view, bool extend) : view_(view), extending_(extend) {}
    void moveTo(const PointerPlace& place) override;
    bool movesCursor() const override { return true; }

 private:
    ViewState& view_;
    bool extending_;
};

// Drags something of the chart to another place: previews the edit while the pointer moves and
// makes it when it is released.
class EditGesture : public Gesture {
 public:
    using Edit = std::function<Result<Chart>(const Chart& before, const PointerPlace& place)>;
    EditGesture(Document& document, const QString& label, Edit edit);
    void moveTo(const PointerPlace& place) override;
    void finish() override;
    void cancel() override { preview_.reset(); }
    const Chart* preview() const override { return preview_ ? &*preview_ : nullptr; }

 private:
    Document& document_;
    QString label_;
    Edit edit_;
    std::optional<Chart> preview_;
};

// Moves the sheet with the pointer.
class PanGesture : public Gesture {
 public:
    explicit PanGesture(std::function<void(QPoint by)> scroll) : scroll_(std::move(scroll)) {}
    void moveTo(const PointerPlace& place) override;

 private:
    std::function<void(QPoint)> scroll_;
    std::optional<QPoint> last_;
};

// The cells from one to another without gaps, the first left out, the last included.
std::vector<Cell> cellsBetween(Cell from, Cell to);
// The cell on a level, upright or slanting line from `from` that is nearest to `to`.
Cell straightened(Cell from, Cell to);

}  // namespace lacewright::app
