#include <QKeyEvent>
#include <algorithm>

#include "app/canvas/chart_view.h"
#include "app/canvas/drawing.h"
#include "app/canvas/mnemonics.h"

namespace lacewright::app {

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
