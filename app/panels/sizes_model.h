#pragma once

#include <QAbstractTableModel>
#include <QIcon>

#include "core/chart/chart.h"
#include "core/check/finding.h"

namespace lacewright::app {

class Document;

// The sizes of the chart. Model row 0 is the whole chart, a size follows in every further row.
// Columns: name, start, end, how often each repeat is worked, expected count, computed count.
class SizesModel : public QAbstractTableModel {
    Q_OBJECT

 public:
    enum FixedColumn { kName, kStart, kEnd, kFirstRepeat };

    SizesModel(Document& document, QObject* parent);

    int expectedColumn() const { return kFirstRepeat + repeats_; }
    int computedColumn() const { return expectedColumn() + 1; }
    // The size of a model row; null for the whole chart.
    const Size* sizeAt(int row) const;
    int rowOf(const QString& size) const;  // 0 for the whole chart
    void setPalette(const QPalette& palette);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

 Q_SIGNALS:
    void renamed(const QString& name);  // a size has this new name now

 private:
    void refresh();
    QVariant text(const Size& size, int column, bool editing) const;
    QVariant wholeChart(int column, int role) const;
    // Worst severity of findings that name the size; Note when there are none.
    Severity verdictOn(const Size& size) const;

    Document& document_;
    int rows_ = 0;
    int repeats_ = 0;
    QIcon proven_;
    QIcon warned_;
    QIcon faulty_;
};

}  // namespace lacewright::app
