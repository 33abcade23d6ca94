#pragma once

#include <vector>

#include "app/window/form_dialog.h"
#include "core/chart/chart.h"

class QCheckBox;
class QLineEdit;
class QSpinBox;

namespace lacewright::app {

class LengthField;

// A size: its name, the columns it works, how often it works each repeat, its stitch count, and the
// body it is for.
class SizeDialog : public FormDialog {
    Q_OBJECT

 public:
    SizeDialog(const Chart& chart, const Size& now, QWidget* parent);
    Size size() const;

 private:
    void addMeasures(const Size& now);
    void examine();

    Size before_;
    QLineEdit* name_;
    QSpinBox* start_;
    QSpinBox* end_;
    std::vector<QSpinBox*> times_;  // by repeat
    std::vector<std::string> repeats_;
    QCheckBox* knowsCount_;
    QSpinBox* count_;
    QCheckBox* hasBody_;
    LengthField* body_;
    QCheckBox* hasShoulder_;
    QSpinBox* shoulder_;
};

}  // namespace lacewright::app
