#pragma once

#include <QPixmap>
#include <QStyledItemDelegate>
#include <map>

namespace lacewright::app {

// Draws a line of the stitch list: symbol, name, abbreviation and number key; or a heading.
class StitchDelegate : public QStyledItemDelegate {
 public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    // Symbols are kept as pictures; to be called when colours or stitches change.
    void forgetPictures() { pictures_.clear(); }

 private:
    const QPixmap& picture(const QString& id, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const;
    mutable std::map<QString, QPixmap> pictures_;
};

}  // namespace lacewright::app
