#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "app/window/length_field.h"
#include "core/plan/planner.h"

namespace lacewright::app {

// One size in the table of a plan.
struct PlanLine {
    WantedWidth wanted;  // finished
    bool included = true;
    std::optional<PlannedSize> planned;  // absent while nothing fits or it is not included
    QString start;                       // "B (2)": the point and its column
    QString end;
    std::optional<int> rows;  // absent: no length is planned
};

// A plan for all sizes at once. Sizes are ticked to be planned; a wanted width can be typed.
class PlanModel : public QAbstractTableModel {
    Q_OBJECT

 public:
    enum Column {
        kName,
        kWanted,
        kWidth,
        kDifference,
        kStitches,
        kTimes,
        kStart,
        kEnd,
        kRows,
        kLies,
        kColumns
    };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<PlanLine> lines, LengthUnit unit);
    const std::vector<PlanLine>& lines() const { return lines_; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

 Q_SIGNALS:
    void ticked(int line, bool included);
    void widthTyped(int line, double cm);

 private:
    QVariant text(const PlanLine& line, int column) const;

    std::vector<PlanLine> lines_;
    LengthUnit unit_ = LengthUnit::Centimetres;
};

}  // namespace lacewright::app
