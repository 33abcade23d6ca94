#pragma once

#include "app/window/form_dialog.h"
#include "core/chart/edits.h"

class QLineEdit;
class QSpinBox;

namespace lacewright::app {

class WorkingFields;

// Asks for the width, the rows and the way of working of a new chart.
class NewChartDialog : public FormDialog {
    Q_OBJECT

 public:
    explicit NewChartDialog(QWidget* parent);
    Chart chart() const;

 private:
    void examine();

    QLineEdit* name_;
    QSpinBox* width_;
    QSpinBox* rows_;
    WorkingFields* working_;
};

}  // namespace lacewright::app
