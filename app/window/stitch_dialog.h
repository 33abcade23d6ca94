#pragma once

#include "app/window/form_dialog.h"
#include "core/chart/chart.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace lacewright::app {

// A stitch of the chart's own. Its symbol begins as that of a known stitch, because a symbol of
// one's own is drawn in a file, not in a dialog.
class StitchDialog : public FormDialog {
    Q_OBJECT

 public:
    StitchDialog(const Chart& chart, QWidget* parent);
    Stitch stitch() const;

 private:
    void examine();
    void offerSymbols();

    const Chart& chart_;
    QLineEdit* name_;
    QLineEdit* rightSide_;
    QLineEdit* wrongSide_;
    QSpinBox* takes_;
    QSpinBox* makes_;
    QSpinBox* span_;
    QComboBox* symbol_;
};

}  // namespace lacewright::app
