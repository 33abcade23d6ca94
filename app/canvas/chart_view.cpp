#include "app/canvas/chart_view.h"

#include <QAccessible>
#include <QEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "app/canvas/chart_accessible.h"
#include "app/canvas/companion_painter.h"
#include "app/canvas/foot_layout.h"
#include "app/canvas/overlay_painter.h"

namespace lacewright::app {
namespace {

CellArea asArea(Cell cell) {
    return {cell.row, cell.row, cell.column, cell.column};
}

}  // namespace

ChartView::ChartView(Document& document, ViewState& view, QWidget* parent)
    : QAbstractScrollArea(parent), document_(document), view_(view) {
    // Before anything asks for the view's accessible interface, which is made once.
    QAccessible::installFactory(makeChartAccessible);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    viewport()->setMouseTracking(true);
    setAccessibleName(tr("Chart"));
    colours_ = coloursFor(palette());
    connectSources();
    relayout();
}

ChartView::~ChartView() = default;

void ChartView::connectSources() {
    connect(&document_, &Document::changed, this, &ChartView::onChanged);
    connect(&document_, &Document::replaced, this, [this] {
        relayout();
        scrollTo({layout_.scrollRange.width(), layout_.scrollRange.height()});
    });
    connect(&view_, &ViewState::cursorMoved, this, &ChartView::onCursorMoved);
    connect(&view_, &ViewState::zoomed, this, &ChartView::onZoomed);
    connect(&view_, &ViewState::sizeChosen, viewport(), qOverload<>(&QWidget::update));
    connect(&view_, &ViewState::companionsToggled, viewport(), qOverload<>(&QWidget::update));
    connect(&view_, &ViewState::revealRequested, this, &ChartView::reveal);
}

void ChartView::setTool(Tool tool) {
    if (tool == tool_) return;
    tool_ = tool;
    Q_EMIT toolChanged(tool);
}

const Chart& ChartView::shownChart() const {
    const Chart* preview = gesture_ ? gesture_->preview() : nullptr;
    return preview != nullptr ? *preview : document_.chart();
}

ViewScene ChartView::scene() const {
    const Chart& chart = shownChart();
    return {chart,
            document_.report(),
            colours_,
            geometry_,
            layout_,
            QPoint(horizontalScrollBar()->value(), verticalScrollBar()->value()),
            scale_,
            font_,
            chart.findSize(view_.size().toStdString()),
            view_.cursor(),
            view_.selection(),
            view_.hasSelection(),
            hasFocus(),
            view_.showsCompanions(),
            gesture_ ? std::nullopt : hovered_};
}

void ChartView::updateDevice(const QRect& device) {
    const QRectF logical(device.x() / scale_, device.y() / scale_, device.width() / scale_,
                         device.height() / scale_);
    viewport()->update(logical.toAlignedRect());
}

QRect ChartView::areaInView(const CellArea& area) const {
    return geometry_.rectOf(area).translated(scene().origin());
}

// The row across the whole view, its number included.
void ChartView::updateRow(int row, int reach) {
    const QRect cells = areaInView({row, row, 1, geometry_.columns()});
    updateDevice(cells.adjusted(0, -reach, 0, reach) & layout_.grid);
    const int text = 2 * stepPixels() + font_.pixelSize() / 2;
    const QRect around(layout_.left.left(), cells.center().y() - text, layout_.foot.width(),
                       2 * text);
    updateDevice(around & layout_.left);
    updateDevice(around & layout_.right);
}

void ChartView::onChanged(const ChartChange& change) {
    if (change.frame) {
        relayout();
        return;
    }
    const ViewScene now = scene();
    for (const CellArea& cells : change.cells) {
        const int row = cells.firstRow;
        updateDevice(areaInView(cells) & layout_.grid);
        const bool arcs = now.showsCompanions || (now.hovered && now.hovered->row == row);
        if (arcs) updateRow(row, companionReach(now));
    }
    for (const int row : marks_.refresh(now)) updateRow(row, overlayReach(now));
}

void ChartView::onCursorMoved() {
    const ViewScene now = scene();
    const int reach = overlayReach(now) + 1;
    for (const CellArea& area :
         {asArea(shownCursor_), asArea(now.cursor), shownSelection_, now.selection}) {
        updateDevice(areaInView(area).adjusted(-reach, -reach, reach, reach) & layout_.grid);
    }
    if (shownCursor_.row != now.cursor.row) {
        updateDevice(layout_.left);
        updateDevice(layout_.right);
    }
    if (shownCursor_.column != now.cursor.column) updateDevice(footLayout(now).numbers);
    shownCursor_ = now.cursor;
    shownSelection_ = now.selection;
    if (!gesture_) reveal(now.cursor);
    announceCursor(*this);
}

// The arcs of the stitch under the pointer come and go with it.
void ChartView::hover(std::optional<Cell> cell) {
    if (cell == hovered_) return;
    const int reach = companionReach(scene());
    for (const std::optional<Cell>& changed : {hovered_, cell}) {
        if (!changed || changed->row >= document_.chart().height()) continue;
        if (document_.chart().row(changed->row).traits().hasShaping) updateRow(changed->row, reach);
    }
    hovered_ = cell;
    if (cell) {
        Q_EMIT cellHovered(*cell);
    } else {
        Q_EMIT hoverLeft();
    }
}

void ChartView::scrollContentsBy(int dx, int dy) {
    const int step = stepPixels();
    const bool exact = std::abs(scale_ - step) < 1e-9 && dx % step == 0 && dy % step == 0;
    if (!exact) {
        viewport()->update();
    } else {
        const auto logical = [step](const QRect& device) {
            return QRect(device.topLeft() / step, device.size() / step);
        };
        viewport()->scroll(dx / step, dy / step, logical(layout_.grid));
        if (dy != 0) {
            viewport()->scroll(0, dy / step, logical(layout_.right));
            updateDevice(layout_.left);
        }
        if (dx != 0) updateDevice(layout_.foot);
    }
    marks_.refresh(scene());
}

void ChartView::paintEvent(QPaintEvent* event) {
    if (devicePixelRatioF() != scale_) {
        // Moved to a screen of another density; laying out now would paint within painting.
        QMetaObject::invokeMethod(
            this, [this] { relayout(); }, Qt::QueuedConnection);
    }
    QPainter painter(viewport());
    painter.scale(1 / scale_, 1 / scale_);
    const ViewScene now = scene();
    QRegion exposed;
    for (const QRect& rect : event->region()) {
        const QRectF device(rect.x() * scale_, rect.y() * scale_, rect.width() * scale_,
                            rect.height() * scale_);
        exposed += device.toAlignedRect();
    }
    renderer_.paint(painter, now, exposed);
}

void ChartView::resizeEvent(QResizeEvent*) {
    relayout();
}

void ChartView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) colours_ = coloursFor(palette());
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) relayout();
}

void ChartView::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    updateDevice(layout_.grid);
}

void ChartView::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    updateDevice(layout_.grid);
}

std::optional<Cell> ChartView::cellAt(QPoint point) const {
    const QPoint device = toDevice(point);
    if (!layout_.grid.contains(device)) return std::nullopt;
    return geometry_.cellAt(device - scene().origin());
}

QRect ChartView::cellRect(Cell cell) const {
    const QRect device = areaInView(asArea(cell));
    return QRectF(device.x() / scale_, device.y() / scale_, device.width() / scale_,
                  device.height() / scale_)
        .toRect();
}

}  // namespace lacewright::app
