#include "app/panels/worked_row_strip.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScopedValueRollback>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/stitch_icon.h"
#include "app/panels/wording.h"

namespace lacewright::app {

namespace {

// Device-independent pixels.
constexpr int kCell = 26;
constexpr int kMarkers = 20;  // above the cells
constexpr int kMargin = 12;
constexpr int kBelow = 6;
constexpr int kMarkerLine = 2;
constexpr int kRing = 4;                      // radius of a marker
constexpr std::int64_t kMostCells = 1 << 24;  // what a scroll bar can reach

}  // namespace

WorkedRowStrip::WorkedRowStrip(Document& document, ViewState& view, QWidget* parent)
    : QAbstractScrollArea(parent),
      document_(document),
      view_(view),
      colours_(coloursFor(palette())) {
    setObjectName(QStringLiteral("workedRow"));
    setAccessibleName(tr("Row worked out, stitch by stitch"));
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFixedHeight(kMarkers + kCell + kBelow + horizontalScrollBar()->sizeHint().height());
    horizontalScrollBar()->setSingleStep(kCell);
    connect(&view, &ViewState::cursorMoved, this, &WorkedRowStrip::follow);
}

void WorkedRowStrip::layOutNow() {
    const Chart& chart = document_.chart();
    shownRow_ = view_.cursor().row;
    row_ = WorkedRowLayout();
    pictures_.clear();
    if (shownRow_ < chart.height()) {
        row_ = WorkedRowLayout(chart, shownRow_, chart.findSize(view_.size().toStdString()));
        if (row_.cells() > kMostCells) row_ = WorkedRowLayout();
    }
    fitScrollBar();
    follow();
    viewport()->update();
}

void WorkedRowStrip::follow() {
    if (going_ || !isVisible()) return;
    if (view_.cursor().row != shownRow_) return;  // the panel lays out anew
    const auto stitch = row_.ofColumn(view_.cursor().column, current_);
    current_ = stitch ? stitch->place : -1;
    reveal();
    viewport()->update();
}

void WorkedRowStrip::go(std::int64_t place) {
    const auto stitch = row_.at(std::clamp<std::int64_t>(place, 0, row_.cells() - 1));
    if (!stitch) return;
    current_ = stitch->place;
    const Cell cell{shownRow_, row_.columnOf(*stitch)};
    const QScopedValueRollback<bool> guard(going_, true);
    view_.moveCursor(cell);
    view_.reveal(cell);
    reveal();
    viewport()->update();
}

void WorkedRowStrip::reveal() {
    const auto stitch = current();
    if (!stitch) return setAccessibleDescription({});
    const Stitch& drawn = (*document_.chart().stitches)[row_.stitchOf(*stitch)];
    setAccessibleDescription(
        tr("%1, column %2").arg(stitchSentence(drawn)).arg(row_.columnOf(*stitch)));
    const QRect rect = rectOf(*stitch);
    QScrollBar& bar = *horizontalScrollBar();
    if (rect.left() < 2 * kCell) bar.setValue(bar.value() + rect.left() - 2 * kCell);
    const int right = viewport()->width() - 2 * kCell;
    if (rect.right() > right) bar.setValue(bar.value() + rect.right() - right);
}

void WorkedRowStrip::fitScrollBar() {
    const int wide = static_cast<int>(row_.cells()) * kCell + 2 * kMargin;
    QScrollBar& bar = *horizontalScrollBar();
    const bool wasAtStart = bar.value() == bar.maximum();
    bar.setRange(0, std::max(0, wide - viewport()->width()));
    bar.setPageStep(viewport()->width());
    if (wasAtStart) bar.setValue(bar.maximum());
}

int WorkedRowStrip::rightEnd() const {
    const int wide = static_cast<int>(row_.cells()) * kCell;
    const int room = viewport()->width();
    if (wide + 2 * kMargin <= room) return (room + wide) / 2;
    return wide + kMargin - horizontalScrollBar()->value();
}

QRect WorkedRowStrip::rectOf(const WorkedRowLayout::Stitch& stitch) const {
    const int right = rightEnd() - static_cast<int>(stitch.place) * kCell;
    return {right - stitch.span * kCell, kMarkers, stitch.span * kCell, kCell};
}

std::int64_t WorkedRowStrip::placeAt(int x) const {
    const int fromRight = rightEnd() - 1 - x;
    return fromRight < 0 ? -1 : fromRight / kCell;
}

const QPixmap& WorkedRowStrip::pictureOf(StitchIndex stitch) {
    QPixmap& picture = pictures_[stitch];
    if (picture.isNull()) {
        picture = stitchPixmap((*document_.chart().stitches)[stitch], palette(), kCell,
                               devicePixelRatioF());
    }
    return picture;
}

// A ring on a line before every pass of a repeat and after the last, and how many there are.
void WorkedRowStrip::paintMarkers(QPainter& painter, std::int64_t from, std::int64_t to) const {
    const auto mark = [&](std::int64_t place) {
        const int x = rightEnd() - static_cast<int>(place) * kCell;
        painter.fillRect(x - kMarkerLine / 2, kMarkers - 2, kMarkerLine, kCell + 4,
                         colours_.repeat);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(colours_.repeat, kMarkerLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(QPoint(x, kMarkers - 2 - kRing), kRing, kRing);
        painter.setRenderHint(QPainter::Antialiasing, false);
    };
    for (const WorkedRowLayout::Stretch& stretch : row_.stretches()) {
        if (stretch.worked.repeat < 0) continue;
        const std::int64_t first =
            std::max<std::int64_t>(0, (from - stretch.first) / stretch.width);
        const std::int64_t last =
            std::min<std::int64_t>(stretch.worked.times, (to - stretch.first) / stretch.width + 1);
        for (std::int64_t pass = first; pass <= last; ++pass) {
            const std::int64_t place = stretch.first + pass * stretch.width;
            mark(place);
            if (pass == stretch.worked.times) continue;
            const QString name = QString::fromStdString(
                document_.chart().repeats[static_cast<std::size_t>(stretch.worked.repeat)].name);
            const QString label =
                stretch.worked.open
                    ? tr("%1 × n").arg(name)
                    : tr("%1 %2 of %3").arg(name).arg(pass + 1).arg(stretch.worked.times);
            const int right = rightEnd() - static_cast<int>(place) * kCell - 2 * kRing;
            const int wide = stretch.width * kCell - 4 * kRing;
            const QString fitting =
                painter.fontMetrics().horizontalAdvance(label) <= wide ? label : QString();
            painter.setPen(colours_.textQuiet);
            painter.drawText(QRect(right - wide, 0, wide, kMarkers - 3), Qt::AlignCenter, fitting);
        }
    }
}

void WorkedRowStrip::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    painter.fillRect(event->rect(), colours_.margin);
    if (row_.cells() == 0) {
        painter.setPen(colours_.textQuiet);
        painter.drawText(viewport()->rect(), Qt::AlignCenter,
                         tr("No stitch of this row is worked."));
        return;
    }
    const std::int64_t from = std::max<std::int64_t>(0, placeAt(event->rect().right()));
    const std::int64_t to = std::min(row_.cells() - 1, placeAt(event->rect().left()));
    const auto now = current();
    for (auto stitch = row_.at(from); stitch && stitch->place <= to;
         stitch = row_.at(stitch->place + stitch->span)) {
        const QRect rect = rectOf(*stitch);
        painter.drawPixmap(rect.topLeft(), pictureOf(row_.stitchOf(*stitch)));
        if (row_.columnOf(*stitch) == view_.cursor().column) {
            painter.fillRect(rect, colours_.selection);
        }
    }
    paintMarkers(painter, from, to);
    if (!now) return;
    painter.setPen(QPen(colours_.text, hasFocus() ? 3 : 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rectOf(*now).adjusted(1, 1, -1, -1));
}

bool WorkedRowStrip::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto stitch = row_.at(placeAt(help->pos().x()));
        if (!stitch) {
            QToolTip::hideText();
            return true;
        }
        const Stitch& drawn = (*document_.chart().stitches)[row_.stitchOf(*stitch)];
        QToolTip::showText(
            help->globalPos(),
            tr("%1, column %2").arg(stitchSentence(drawn)).arg(row_.columnOf(*stitch)), viewport(),
            rectOf(*stitch));
        return true;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

void WorkedRowStrip::mousePressEvent(QMouseEvent* event) {
    const std::int64_t place = placeAt(event->position().toPoint().x());
    if (event->button() == Qt::LeftButton && row_.at(place)) go(place);
}

void WorkedRowStrip::keyPressEvent(QKeyEvent* event) {
    const auto now = current();
    switch (event->key()) {
        case Qt::Key_Left:
            return go(now ? now->place + now->span : 0);
        case Qt::Key_Right:
            return go(now ? now->place - 1 : 0);
        case Qt::Key_Home:
            return go(row_.cells() - 1);
        case Qt::Key_End:
            return go(0);
        default:
            QAbstractScrollArea::keyPressEvent(event);
    }
}

void WorkedRowStrip::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    fitScrollBar();
    reveal();
}

void WorkedRowStrip::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) {
        colours_ = coloursFor(palette());
        pictures_.clear();
        viewport()->update();
    }
    QAbstractScrollArea::changeEvent(event);
}

}  // namespace lacewright::app
