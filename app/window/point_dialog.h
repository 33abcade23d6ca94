#pragma once

#include "app/window/form_dialog.h"
#include "core/chart/chart.h"

class QLineEdit;

namespace lacewright::app {

// Another name for a point at the foot of the chart.
class PointDialog : public FormDialog {
    Q_OBJECT

 public:
    PointDialog(const Chart& chart, const QString& point, QWidget* parent);
    QString name() const;

 private:
    void examine();

    const Chart& chart_;
    std::string before_;
    QLineEdit* name_;
};

}  // namespace lacewright::app
