#include "app/panels/wrapped_delegate.h"

#include <QTreeView>
#include <algorithm>

namespace lacewright::app {

namespace {

// Device-independent pixels.
constexpr int kIconRoom = 28;
constexpr int kSides = 10;
constexpr int kAboveAndBelow = 10;

int depthOf(QModelIndex index) {
    int depth = 0;
    while (index.parent().isValid()) {
        index = index.parent();
        ++depth;
    }
    return depth;
}

}  // namespace

WrappedDelegate::WrappedDelegate(QTreeView& tree) : QStyledItemDelegate(&tree), tree_(tree) {}

QSize WrappedDelegate::sizeHint(const QStyleOptionViewItem& option,
                                const QModelIndex& index) const {
    const int levels = depthOf(index) + (tree_.rootIsDecorated() ? 1 : 0);
    const bool icon = !index.data(Qt::DecorationRole).isNull();
    const int width =
        tree_.viewport()->width() - levels * tree_.indentation() - kSides - (icon ? kIconRoom : 0);
    QFont font = option.font;
    if (const QVariant own = index.data(Qt::FontRole); own.isValid()) {
        font = own.value<QFont>().resolve(font);
    }
    const QRect text = QFontMetrics(font).boundingRect(QRect(0, 0, std::max(60, width), 10'000),
                                                       Qt::TextWordWrap, index.data().toString());
    return {std::max(60, width), text.height() + kAboveAndBelow};
}

void WrappedDelegate::initStyleOption(QStyleOptionViewItem* option,
                                      const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    option->features |= QStyleOptionViewItem::WrapText;
    option->decorationAlignment = Qt::AlignTop | Qt::AlignHCenter;
}

}  // namespace lacewright::app
