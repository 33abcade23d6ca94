#pragma once

#include "app/window/form_dialog.h"
#include "core/chart/edits.h"

class QCheckBox;
class QSpinBox;
class QTableWidget;
class QToolButton;

namespace lacewright::app {

class LengthField;
class LengthUnitField;

// What must hold from size to size; the checks judge what is said here.
class GradingDialog : public FormDialog {
    Q_OBJECT

 public:
    // A shoulder that is added begins as the selected columns of the last selected row.
    GradingDialog(const Chart& chart, const CellArea& selected, QWidget* parent);
    Grading grading() const;

 private:
    void addFamily();
    void addEase();
    void addShoulders();
    void addLine(const Shoulder& shoulder);
    void examine();
    // The shoulders as typed. Refuses what is no number of a row or column.
    Result<std::vector<Shoulder>> shoulders() const;

    const Chart& chart_;
    CellArea selected_;
    QCheckBox* rising_;
    QCheckBox* halved_;
    QSpinBox* pieces_;
    QSpinBox* edge_;
    LengthUnitField* unit_;
    LengthField* leastEase_;
    LengthField* mostEase_;
    QCheckBox* hasLeast_ = nullptr;
    QCheckBox* hasMost_ = nullptr;
    QTableWidget* table_;
    QToolButton* remove_;
};

}  // namespace lacewright::app
