#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "app/canvas/cell_description.h"
#include "app/canvas/chart_view.h"
#include "app/canvas/drawing.h"
#include "app/canvas/gestures.h"
#include "app/canvas/mnemonics.h"

namespace lacewright::app {
namespace {

// A row line as moveRepeatEdge counts it: the row below the line nearest to the pointer.
int rowLineNear(const ChartGeometry& geometry, QPoint sheet) {
    const QPoint half(0, geometry.cell() / 2);
    if (sheet.y() + half.y() >= geometry.cells().bottom()) return -1;
    return geometry.nearestCell(sheet + half).row;
}

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

std::unique_ptr<Gesture> ChartView::dragFor(const Hit& hit, Qt::KeyboardModifiers modifiers) {
    const Chart& chart = document_.chart();
    const auto index = static_cast<std::size_t>(hit.index);
    switch (hit.kind) {
        case Hit::Kind::RepeatEdge: {
            const bool jog = modifiers.testFlag(Qt::ShiftModifier);
            const std::optional<int> onlyRow =
                jog ? std::optional<int>(hit.cell.row) : std::nullopt;
            const bool level = hit.side == BoxSide::Top || hit.side == BoxSide::Bottom;
            return std::make_unique<EditGesture>(
                document_, jog ? tr("Shift repeat on one row") : tr("Move repeat's edge"),
                [this, name = chart.repeats[index].name, side = hit.side, level, onlyRow](
                    const Chart& before, const PointerPlace& place) {
                    const int line = level ? rowLineNear(geometry_, place.sheet) : place.line;
                    return moveRepeatEdge(before, name, side, line, onlyRow);
                });
        }
        case Hit::Kind::SizeMark:
            return std::make_unique<EditGesture>(
                document_,
                hit.edge == Edge::Start ? tr("Move start of size") : tr("Move end of size"),
                [name = chart.sizes[index].name, edge = hit.edge](const Chart& before,
                                                                  const PointerPlace& place) {
                    return moveSizeMark(before, name, edge, place.line);
                });
        case Hit::Kind::Point:
            return std::make_unique<EditGesture>(
                document_, tr("Move point"),
                [name = chart.points[index].name](const Chart& before, const PointerPlace& place) {
                    return movePoint(before, name, place.cell.column);
                });
        default:
            return nullptr;
    }
}

std::unique_ptr<Gesture> ChartView::gestureFor(const QMouseEvent& event) {
    const Hit hit = hitUnder(toDevice(event.position()));
    if (event.button() == Qt::MiddleButton) {
        return std::make_unique<PanGesture>([this](QPoint by) {
            scrollTo(QPoint(horizontalScrollBar()->value(), verticalScrollBar()->value()) + by);
        });
    }
    if (event.button() != Qt::LeftButton) return nullptr;
    if (hit.kind != Hit::Kind::Cell) return dragFor(hit, event.modifiers());
    const bool selects = tool_ == Tool::Select || event.modifiers().testFlag(Qt::ControlModifier);
    if (selects) {
        return std::make_unique<SelectGesture>(view_,
                                               event.modifiers().testFlag(Qt::ShiftModifier));
    }
    const auto stitch = document_.chart().stitches->find(view_.stitch().toStdString());
    if (!stitch) return nullptr;
    return std::make_unique<StrokeGesture>(document_, view_, *stitch);
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
    if (gesture_->preview() != nullptr) relayout();
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
    const std::optional<Cell> under = onCell ? std::optional<Cell>(hit.cell) : std::nullopt;
    if (under == hovered_) return;
    hovered_ = under;
    if (under) {
        Q_EMIT cellHovered(*under);
    } else {
        Q_EMIT hoverLeft();
    }
}

void ChartView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton) endGesture(true);
}

void ChartView::mouseDoubleClickEvent(QMouseEvent* event) {
    const Hit hit = hitUnder(toDevice(event->position()));
    if (hit.kind != Hit::Kind::Lane && hit.kind != Hit::Kind::SizeMark) {
        return mousePressEvent(event);
    }
    const Size& size = document_.chart().sizes[static_cast<std::size_t>(hit.index)];
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

bool ChartView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const std::optional<Cell> cell = cellAt(help->pos());
        const QString text =
            cell ? describeCell(shownChart(), document_.report(), *cell) : QString();
        QToolTip::showText(help->globalPos(), text, viewport(), cell ? cellRect(*cell) : QRect());
        return true;
    }
    if (event->type() == QEvent::Leave && hovered_) {
        hovered_.reset();
        Q_EMIT hoverLeft();
    }
    return QAbstractScrollArea::viewportEvent(event);
}

bool ChartView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        // While the chart has the keyboard, plain characters draw stitches.
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = (key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
        if (plain && key->text().size() == 1 && !stitchOfKey(key->text().front()).isEmpty()) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
}

bool ChartView::moveCursorByKey(const QKeyEvent& event) {
    const Chart& chart = document_.chart();
    const bool toCorner = event.modifiers().testFlag(Qt::ControlModifier);
    const int page = std::max(1, layout_.grid.height() / geometry_.cell() - 1);
    Cell cell = view_.cursor();
    switch (event.key()) {
        case Qt::Key_Left:
            cell.column += 1;
            break;
        case Qt::Key_Right:
            cell.column -= 1;
            break;
        case Qt::Key_Up:
            cell.row += 1;
            break;
        case Qt::Key_Down:
            cell.row -= 1;
            break;
        case Qt::Key_PageUp:
            cell.row += page;
            break;
        case Qt::Key_PageDown:
            cell.row -= page;
            break;
        case Qt::Key_Home:
            cell = {toCorner ? chart.height() - 1 : cell.row, chart.width};
            break;
        case Qt::Key_End:
            cell = {toCorner ? 0 : cell.row, 1};
            break;
        default:
            return false;
    }
    view_.moveCursor(cell, event.modifiers().testFlag(Qt::ShiftModifier));
    return true;
}

bool ChartView::drawByKey(const QKeyEvent& event) {
    Drawing drawing(document_, view_);
    switch (event.key()) {
        case Qt::Key_Space:
        case Qt::Key_Return:
        case Qt::Key_Enter:
            drawing.draw(view_.stitch());
            return true;
        case Qt::Key_Delete:
            drawing.fill(event.modifiers().testFlag(Qt::ShiftModifier) ? QStringLiteral("no-stitch")
                                                                       : QStringLiteral("k"));
            return true;
        case Qt::Key_Backspace:
            drawing.takeBack();
            return true;
        default:
            break;
    }
    const auto commands = Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier;
    if (event.text().size() != 1 || (event.modifiers() & commands) != 0) return false;
    const QString stitch = stitchOfKey(event.text().front());
    if (stitch.isEmpty()) return false;
    drawing.draw(stitch);
    return true;
}

void ChartView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (gesture_) {
            endGesture(false);
        } else {
            view_.moveCursor(view_.cursor());
        }
        return;
    }
    if (gesture_ || moveCursorByKey(*event) || drawByKey(*event)) return;
    QAbstractScrollArea::keyPressEvent(event);
}

}  // namespace lacewright::app
