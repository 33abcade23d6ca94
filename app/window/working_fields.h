#pragma once

#include <QObject>

#include "core/chart/edits.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QSpinBox;
class QWidget;

namespace lacewright::app {

// The fields that say how a chart is worked: flat or in the round, what is not drawn, the cast-on.
// Shared by the dialogs for a new chart and for a chart's properties.
class WorkingFields : public QObject {
    Q_OBJECT

 public:
    WorkingFields(QFormLayout& form, QWidget* parent);

    void show(const ChartProperties& properties);
    // Writes the fields into `properties` and leaves the rest of it alone.
    void readInto(ChartProperties& properties) const;

 private:
    void adapt();

    QComboBox* worked_;
    QComboBox* firstSide_;
    QComboBox* uncharted_;
    QComboBox* castOn_;
    QWidget* castOnNumbers_;
    QLabel* plusWord_;
    QSpinBox* multiple_;
    QSpinBox* plus_;
};

}  // namespace lacewright::app
