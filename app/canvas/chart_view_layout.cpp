#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "app/canvas/chart_view.h"
#include "app/canvas/foot_layout.h"
#include "app/canvas/side_painter.h"

namespace lacewright::app {
namespace {

// Device-independent pixels.
constexpr double kBorder = 4;
constexpr double kTopBorder = 20;  // room for the names of repeats
constexpr double kText = 11.5;

}  // namespace

int ChartView::stepPixels() const {
    return std::max(1, static_cast<int>(std::lround(scale_)));
}

void ChartView::relayout() {
    scale_ = devicePixelRatioF();
    font_ = font();
    font_.setPixelSize(std::max(6, static_cast<int>(std::lround(kText * scale_))));
    const ViewScene before = scene();
    const int cell = std::max(1, static_cast<int>(std::lround(view_.cellSize() * scale_)));
    const Chart& chart = shownChart();
    geometry_ = ChartGeometry(chart.width, std::max(1, chart.height()), cell,
                              {before.px(kBorder), before.px(kTopBorder)});
    const QSize view(static_cast<int>(viewport()->width() * scale_),
                     static_cast<int>(viewport()->height() * scale_));
    const SideWidths sides = sideWidths(before);
    const MarginSizes margins{sides.left, sides.right, footHeight(before, view.height() / 2)};
    layout_ = layOut(view, geometry_.size(), margins, stepPixels());
    horizontalScrollBar()->setPageStep(layout_.grid.width());
    verticalScrollBar()->setPageStep(layout_.grid.height());
    horizontalScrollBar()->setSingleStep(cell);
    verticalScrollBar()->setSingleStep(cell);
    horizontalScrollBar()->setRange(0, layout_.scrollRange.width());
    verticalScrollBar()->setRange(0, layout_.scrollRange.height());
    marks_.refresh(scene());
    viewport()->update();
}

void ChartView::scrollTo(QPoint position) {
    horizontalScrollBar()->setValue(position.x());
    verticalScrollBar()->setValue(position.y());
}

void ChartView::reveal(Cell cell) {
    const QPoint scrolled(horizontalScrollBar()->value(), verticalScrollBar()->value());
    scrollTo(scrolledTo(layout_, scrolled, geometry_.rectOf(cell), geometry_.cell()));
}

void ChartView::zoomToFit() {
    const ViewScene now = scene();
    const MarginSizes margins{layout_.left.width(), layout_.right.width(), layout_.foot.height()};
    const double width = viewport()->width() * scale_ - margins.left - margins.right;
    const double height = viewport()->height() * scale_ - margins.foot;
    const double across = (width - 2 * now.px(kBorder)) / geometry_.columns();
    const double upward = (height - now.px(kBorder) - now.px(kTopBorder)) / geometry_.rows();
    view_.zoomTo(static_cast<int>(std::floor(std::min(across, upward) / scale_)));
}

void ChartView::onZoomed() {
    const ViewScene before = scene();
    const QPoint cursor = areaInView({before.cursor.row, before.cursor.row, before.cursor.column,
                                      before.cursor.column})
                              .center();
    const QPoint middle = layout_.grid.contains(cursor) ? cursor : layout_.grid.center();
    const QPoint anchor = zoomAnchor_.value_or(middle);
    zoomAnchor_.reset();
    const double cell = geometry_.cell();
    const QPoint sheet = anchor - before.origin() - geometry_.cells().topLeft();
    relayout();
    const QPointF wanted = QPointF(sheet) * (geometry_.cell() / cell) + geometry_.cells().topLeft();
    scrollTo(layout_.grid.topLeft() + wanted.toPoint() - anchor);
}

}  // namespace lacewright::app
