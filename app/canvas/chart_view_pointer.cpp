#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "app/canvas/cell_description.h"
#include "app/canvas/chart_view.h"
#include "core/base/text.h"
#include "core/words/size_words.h"

namespace lacewright::app {
namespace {

int nextZoom(int cell, int direction) {
    const int stride = std::max(1, cell / 8);
    return cell + direction * stride;
}

}  // namespace

QPoint ChartView::toDevice(QPointF point) const {
    return {static_cast<int>(std::floor(point.x() * scale_)),
            static_cast<int>(std::floor(point.y() * scale_))};
}

PointerPlace ChartView::placeOf(QPoint device, Qt::KeyboardModifiers modifiers) const {
    const QPoint sheet = device - scene().origin();
    return {sheet, device, geometry_.nearestCell(sheet), geometry_.lineNear(sheet.x()), modifiers};
}

Hit ChartView::hitUnder(QPoint device) const {
    return hitAt(scene(), device, tool_ == Tool::Select);
}

void ChartView::pickStitch(Cell cell) {
    const Row& row = document_.chart().row(cell.row);
    const StitchIndex stitch = row.at(row.ownerOf(cell.column));
    if (stitch == kCovered) return;
    view_.chooseStitch(QString::fromStdString((*document_.chart().stitches)[stitch].id));
}

void ChartView::mousePressEvent(QMouseEvent* event) {
    if (gesture_) return;
    const Hit hit = hitUnder(toDevice(event->position()));
    const bool picks =
        hit.kind == Hit::Kind::Cell &&
        (event->button() == Qt::RightButton ? tool_ == Tool::Draw
                                            : event->modifiers().testFlag(Qt::AltModifier));
    if (picks) return pickStitch(hit.cell);
    const Chart& chart = document_.chart();
    if (event->button() == Qt::LeftButton && hit.kind == Hit::Kind::RowNumber) {
        return view_.select({hit.cell.row, hit.cell.row, 1, chart.width});
    }
    if (event->button() == Qt::LeftButton && hit.kind == Hit::Kind::ColumnNumber) {
        return view_.select({0, chart.height() - 1, hit.cell.column, hit.cell.column});
    }
    gesture_ = gestureFor(*event);
    if (gesture_) moveGesture(placeOf(toDevice(event->position()), event->modifiers()));
}

void ChartView::moveGesture(const PointerPlace& place) {
    gesture_->moveTo(place);
    if (gesture_->preview() != nullptr) {
        relayout();
    } else if (gesture_->movesCursor() && !layout_.grid.contains(place.view)) {
        reveal(view_.cursor());
    }
}

void ChartView::endGesture(bool keep) {
    if (!gesture_) return;
    const std::unique_ptr<Gesture> ended = std::move(gesture_);
    const bool previewed = ended->preview() != nullptr;
    if (keep) {
        ended->finish();
    } else {
        ended->cancel();
    }
    if (previewed) relayout();
}

void ChartView::mouseMoveEvent(QMouseEvent* event) {
    const QPoint device = toDevice(event->position());
    if (gesture_) return moveGesture(placeOf(device, event->modifiers()));
    const Hit hit = hitUnder(device);
    showPointerShape(hit);
    const bool onCell = hit.kind == Hit::Kind::Cell || hit.kind == Hit::Kind::RepeatEdge;
    hover(onCell ? std::optional<Cell>(hit.cell) : std::nullopt);
}

void ChartView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton) endGesture(true);
}

void ChartView::mouseDoubleClickEvent(QMouseEvent* event) {
    const Hit hit = hitUnder(toDevice(event->position()));
    const auto index = static_cast<std::size_t>(hit.index);
    if (hit.kind == Hit::Kind::Point) {
        Q_EMIT pointChosen(QString::fromStdString(document_.chart().points[index].name));
        return;
    }
    const bool atFoot =
        hit.kind == Hit::Kind::Lane || (hit.kind == Hit::Kind::SizeMark && !hit.onGrid);
    if (!atFoot) return mousePressEvent(event);
    const Size& size = document_.chart().sizes[index];
    const QString name = QString::fromStdString(size.name);
    view_.chooseSize(view_.size() == name ? QString() : name);
}

void ChartView::showPointerShape(const Hit& hit) {
    Qt::CursorShape shape = Qt::ArrowCursor;
    if (hit.kind == Hit::Kind::Cell && tool_ == Tool::Draw) shape = Qt::CrossCursor;
    if (hit.kind == Hit::Kind::SizeMark || hit.kind == Hit::Kind::Point) shape = Qt::SizeHorCursor;
    if (hit.kind == Hit::Kind::RepeatEdge) {
        const bool level = hit.side == BoxSide::Top || hit.side == BoxSide::Bottom;
        shape = level ? Qt::SizeVerCursor : Qt::SizeHorCursor;
    }
    if (viewport()->cursor().shape() != shape) viewport()->setCursor(shape);
}

void ChartView::wheelEvent(QWheelEvent* event) {
    if (!event->modifiers().testFlag(Qt::ControlModifier)) {
        QAbstractScrollArea::wheelEvent(event);
        return;
    }
    const int turn = event->angleDelta().y();
    if (turn != 0) {
        zoomAnchor_ = toDevice(event->position());
        view_.zoomTo(nextZoom(view_.cellSize(), turn > 0 ? 1 : -1));
        zoomAnchor_.reset();
    }
    event->accept();
}

void ChartView::contextMenuEvent(QContextMenuEvent* event) {
    if (event->reason() == QContextMenuEvent::Mouse && tool_ == Tool::Draw) return;
    QPoint at = event->globalPos();
    if (event->reason() == QContextMenuEvent::Keyboard) {
        at = viewport()->mapToGlobal(cellRect(view_.cursor()).bottomRight());
    }
    Q_EMIT menuRequested(at);
}

QString ChartView::tipFor(QPoint point) const {
    const std::optional<Cell> cell = cellAt(point);
    if (cell) return describeCell(shownChart(), document_.report(), *cell);
    const Hit hit = hitUnder(toDevice(point));
    const auto index = static_cast<std::size_t>(hit.index);
    const Chart& chart = shownChart();
    switch (hit.kind) {
        case Hit::Kind::SizeMark:
            return tr(
                "Drag to where no stitches that belong together are parted; hold Ctrl for "
                "any column");
        case Hit::Kind::Point:
            return tr("%1: drag to move it with the sizes that use it, double-click to rename it")
                .arg(QString::fromStdString(chart.points[index].name));
        case Hit::Kind::Lane:
            return QString::fromStdString(
                       join(sizeInstructionSentences(chart, chart.sizes[index]), "\n")) +
                   tr("\nDouble-click to look at this size.");
        default:
            return {};
    }
}

bool ChartView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const std::optional<Cell> cell = cellAt(help->pos());
        QToolTip::showText(help->globalPos(), tipFor(help->pos()), viewport(),
                           cell ? cellRect(*cell) : QRect());
        return true;
    }
    if (event->type() == QEvent::Leave) hover(std::nullopt);
    return QAbstractScrollArea::viewportEvent(event);
}

}  // namespace lacewright::app
