#pragma once

#include <QAbstractTableModel>
#include <QIcon>
#include <map>

#include "core/check/finding.h"

namespace lacewright::app {

class Document;
class ViewState;

// What every row takes and makes. Model row 0 is the TOP row of the chart, as one sees it. Works
// the numbers out when they are looked at, so it costs nothing for rows out of sight.
class CountsModel : public QAbstractTableModel {
    Q_OBJECT

 public:
    enum Column { kRow, kTakes, kMakes, kChange, kColumns };

    CountsModel(Document& document, ViewState& view, QObject* parent);

    int chartRow(int modelRow) const;  // row index in the chart
    int modelRow(int chartRow) const;
    void setPalette(const QPalette& palette);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
    void rebuild();
    void refresh();
    void findWorst();

    Document& document_;
    ViewState& view_;
    int rows_ = 0;
    std::map<int, Severity> worst_;  // by row index
    std::map<Severity, QIcon> icons_;
};

}  // namespace lacewright::app
