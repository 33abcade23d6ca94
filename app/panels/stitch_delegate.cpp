#include "app/panels/stitch_delegate.h"

#include <QApplication>
#include <QPainter>
#include <algorithm>

#include "app/panels/stitch_icon.h"
#include "app/panels/stitch_list_model.h"

namespace lacewright::app {

namespace {

// Device-independent pixels.
constexpr int kCell = 22;
constexpr int kWidestSymbol = 66;
constexpr int kPad = 8;
constexpr int kLine = 34;  // two lines of a long name
constexpr int kKeyEdge = 18;

void drawHeading(QPainter& painter, const QStyleOptionViewItem& option, const QString& text) {
    QFont font = option.font;
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(option.palette.color(QPalette::Active, QPalette::Text));
    painter.drawText(option.rect.adjusted(kPad, 0, -kPad, -4), Qt::AlignLeft | Qt::AlignBottom,
                     text);
}

// On one line or broken into two; cut short only where that does not do.
void drawName(QPainter& painter, const QStyleOptionViewItem& option, const QRect& room,
              const QString& name) {
    constexpr int kFlags = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;
    const QRect needed = option.fontMetrics.boundingRect(room, kFlags, name);
    if (needed.height() <= room.height() && needed.width() <= room.width()) {
        painter.drawText(room, kFlags, name);
        return;
    }
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                     option.fontMetrics.elidedText(name, Qt::ElideRight, room.width()));
}

// The number as a small key cap at the right end; gives the room it took.
int drawKey(QPainter& painter, const QStyleOptionViewItem& option, int key, const QColor& ink) {
    if (key == 0) return 0;
    const QRect cap(option.rect.right() - kPad - kKeyEdge + 1,
                    option.rect.center().y() - kKeyEdge / 2 + 1, kKeyEdge, kKeyEdge);
    painter.setRenderHint(QPainter::Antialiasing);
    QColor line = ink;
    line.setAlphaF(0.55F);
    painter.setPen(line);
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(cap).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(ink);
    painter.drawText(cap, Qt::AlignCenter, QString::number(key));
    return kKeyEdge + kPad;
}

}  // namespace

const QPixmap& StitchDelegate::picture(const QString& id, const QStyleOptionViewItem& option,
                                       const QModelIndex& index) const {
    const auto known = pictures_.find(id);
    if (known != pictures_.end()) return known->second;
    const auto* model = qobject_cast<const StitchListModel*>(index.model());
    const Stitch* stitch = model->stitchAt(index.row());
    const int cell = std::min(kCell, kWidestSymbol / stitch->span);
    const double ratio = option.widget ? option.widget->devicePixelRatioF() : 1.0;
    return pictures_.emplace(id, stitchPixmap(*stitch, option.palette, std::max(4, cell), ratio))
        .first->second;
}

void StitchDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    painter->save();
    if (index.data(StitchListModel::kIsHeading).toBool()) {
        drawHeading(*painter, option, index.data().toString());
        painter->restore();
        return;
    }
    QStyleOptionViewItem ground = option;
    const QStyle* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &ground, painter, option.widget);

    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const auto group =
        option.state.testFlag(QStyle::State_Active) ? QPalette::Active : QPalette::Inactive;
    const QColor ink =
        option.palette.color(group, selected ? QPalette::HighlightedText : QPalette::Text);

    const QPixmap& symbol = picture(index.data(StitchListModel::kId).toString(), option, index);
    const QSize size = symbol.deviceIndependentSize().toSize();
    const QRect line = option.rect;
    painter->drawPixmap(line.left() + kPad, line.center().y() - size.height() / 2 + 1, symbol);

    const int keyRoom = drawKey(*painter, option, index.data(StitchListModel::kKey).toInt(), ink);
    const int left = line.left() + kPad + std::max(size.width(), kCell) + kPad + 2;
    const QRect text(left, line.top(), line.right() - kPad - keyRoom - left, line.height());
    const QString abbreviation = index.data(StitchListModel::kAbbreviation).toString();
    const QString shortForm =
        option.fontMetrics.elidedText(abbreviation, Qt::ElideRight, std::max(40, text.width() / 3));
    const int shortWidth = option.fontMetrics.horizontalAdvance(shortForm);
    painter->setPen(ink);
    drawName(*painter, option, text.adjusted(0, 0, -shortWidth - kPad, 0), index.data().toString());
    QColor quiet = ink;
    quiet.setAlphaF(0.75F);
    painter->setPen(quiet);
    painter->drawText(text, Qt::AlignRight | Qt::AlignVCenter, shortForm);
    painter->restore();
}

QSize StitchDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const bool heading = index.data(StitchListModel::kIsHeading).toBool();
    return {option.rect.width(), heading ? option.fontMetrics.height() + 16 : kLine};
}

}  // namespace lacewright::app
