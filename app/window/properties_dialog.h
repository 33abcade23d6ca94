#pragma once

#include "app/window/form_dialog.h"
#include "core/chart/edits.h"

class QLineEdit;
class QPlainTextEdit;

namespace lacewright::app {

class GaugeFields;
class WorkingFields;

// Everything about a chart that is not rows, repeats or sizes.
class PropertiesDialog : public FormDialog {
    Q_OBJECT

 public:
    PropertiesDialog(const ChartProperties& now, QWidget* parent);
    ChartProperties properties() const;

 private:
    ChartProperties before_;
    QLineEdit* name_;
    QPlainTextEdit* notes_;
    QLineEdit* source_;
    GaugeFields* gauge_;
    WorkingFields* working_;
};

}  // namespace lacewright::app
