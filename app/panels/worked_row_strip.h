#pragma once

#include <QAbstractScrollArea>
#include <QPixmap>
#include <map>

#include "app/canvas/colours.h"
#include "app/panels/worked_row_layout.h"

namespace lacewright::app {

class Document;
class ViewState;

// The row of the cursor as the size looked at works it: every stitch across the needle, repeats
// unrolled, a marker between one repeat and the next. Scrolls; a click or the arrow keys lead to
// the cell.
class WorkedRowStrip : public QAbstractScrollArea {
    Q_OBJECT

 public:
    WorkedRowStrip(Document& document, ViewState& view, QWidget* parent = nullptr);

    const WorkedRowLayout& row() const { return row_; }
    // The stitch of the cursor among all that are worked from its column.
    std::optional<WorkedRowLayout::Stitch> current() const { return row_.at(current_); }
    // Where the stitch at a place is drawn in the viewport; may lie out of sight.
    QRect rectOf(const WorkedRowLayout::Stitch& stitch) const;

    void layOutNow();  // the chart, the row or the size is another

 protected:
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

 private:
    void follow();
    void go(std::int64_t place);
    void reveal();
    void fitScrollBar();
    int rightEnd() const;  // x of the right edge of the row
    std::int64_t placeAt(int x) const;
    const QPixmap& pictureOf(StitchIndex stitch);
    void paintMarkers(QPainter& painter, std::int64_t from, std::int64_t to) const;

    Document& document_;
    ViewState& view_;
    WorkedRowLayout row_;
    std::int64_t current_ = 0;
    int shownRow_ = -1;
    std::map<StitchIndex, QPixmap> pictures_;
    ChartColours colours_;
    bool going_ = false;
};

}  // namespace lacewright::app
