#pragma once

#include <QStyledItemDelegate>

class QTreeView;

namespace lacewright::app {

// Items of a tree with long sentences: broken into lines at the width of the tree.
class WrappedDelegate : public QStyledItemDelegate {
 public:
    explicit WrappedDelegate(QTreeView& tree);

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;

 private:
    QTreeView& tree_;
};

}  // namespace lacewright::app
