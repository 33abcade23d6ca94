#pragma once

#include <QAbstractScrollArea>
#include <memory>
#include <optional>

#include "app/canvas/gesture.h"
#include "app/canvas/hit_test.h"
#include "app/canvas/renderer.h"
#include "app/canvas/visible_marks.h"
#include "app/document/document.h"

namespace lacewright::app {

// The chart on screen, with its numbers, points and sizes around it: shows the document, and draws,
// selects and drags in it by pointer and keyboard. Row 1 at the bottom, column 1 at the right.
// Everything inside is reckoned in device pixels; only Qt's events and updates are not.
class ChartView : public QAbstractScrollArea {
    Q_OBJECT

 public:
    enum class Tool { Draw, Select };

    // Document and view state must live longer.
    ChartView(Document& document, ViewState& view, QWidget* parent = nullptr);
    ~ChartView() override;

    Tool tool() const { return tool_; }
    void setTool(Tool tool);
    // The largest cells at which the whole chart can be seen.
    void zoomToFit();

    // The chart as it is shown: while something is dragged, the chart it would become.
    const Chart& shownChart() const;
    // The cell at a point of the viewport, in device-independent pixels.
    std::optional<Cell> cellAt(QPoint point) const;
    // Where a cell is shown in the viewport, in device-independent pixels; may lie out of sight.
    QRect cellRect(Cell cell) const;
    // What is shown around the chart and where, for tests and for pointing at things.
    ViewScene scene() const;
    const Renderer& renderer() const { return renderer_; }

    QSize sizeHint() const override { return {900, 640}; }

 Q_SIGNALS:
    void toolChanged(lacewright::app::ChartView::Tool tool);
    void cellHovered(lacewright::app::Cell cell);
    void hoverLeft();
    // A point at the foot was double-clicked.
    void pointChosen(const QString& name);
    // A menu is wanted for the selection.
    void menuRequested(QPoint globalPosition);

 protected:
    bool event(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

 private:
    // Repainting: chart_view.cpp. Layout: chart_view_layout.cpp.
    void connectSources();
    void relayout();
    void scrollTo(QPoint sheetPosition);
    void reveal(Cell cell);
    void onChanged(const ChartChange& change);
    void onCursorMoved();
    void onZoomed();
    void hover(std::optional<Cell> cell);
    void updateDevice(const QRect& device);
    void updateRow(int row, int reach);
    QRect areaInView(const CellArea& area) const;
    int stepPixels() const;

    // Input: chart_view_pointer.cpp, chart_view_gestures.cpp, chart_view_keys.cpp.
    PointerPlace placeOf(QPoint point, Qt::KeyboardModifiers modifiers) const;
    QPoint toDevice(QPointF point) const;
    Hit hitUnder(QPoint device) const;
    std::unique_ptr<Gesture> gestureFor(const QMouseEvent& event);
    std::unique_ptr<Gesture> dragFor(const Hit& hit, Qt::KeyboardModifiers modifiers);
    std::unique_ptr<Gesture> sizeMarkDrag(const Hit& hit);
    QString tipFor(QPoint point) const;
    void moveGesture(const PointerPlace& place);
    void endGesture(bool keep);
    void pickStitch(Cell cell);
    void showPointerShape(const Hit& hit);
    bool moveCursorByKey(const QKeyEvent& event);
    bool drawByKey(const QKeyEvent& event);

    Document& document_;
    ViewState& view_;
    Tool tool_ = Tool::Draw;

    ChartColours colours_;
    ChartGeometry geometry_;
    ViewLayout layout_;
    QFont font_;  // sized in device pixels
    double scale_ = 1;
    Renderer renderer_;
    VisibleMarks marks_;
    CellArea shownSelection_;
    Cell shownCursor_;
    std::optional<QPoint> zoomAnchor_;  // device pixels in the view

    std::unique_ptr<Gesture> gesture_;
    std::optional<Cell> hovered_;
};

}  // namespace lacewright::app
