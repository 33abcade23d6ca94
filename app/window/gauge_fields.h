#pragma once

#include <QObject>

#include "core/chart/chart.h"

class QComboBox;
class QDoubleSpinBox;
class QWidget;

namespace lacewright::app {

// The fields of a gauge: stitches, rows, and what they are counted over. The dialog places them. A
// figure that nobody types stays exact, whatever it is counted over.
class GaugeFields : public QObject {
    Q_OBJECT

 public:
    // `over` is the parent of the fields.
    GaugeFields(const Gauge& gauge, QWidget* over);

    const Gauge& gauge() const { return gauge_; }  // over 10 cm; 0 where it is not known
    QDoubleSpinBox* stitches() const { return stitches_; }
    QDoubleSpinBox* rows() const { return rows_; }
    QComboBox* countedOver() const { return over_; }

 Q_SIGNALS:
    void changed();

 private:
    void show();
    void read();

    Gauge gauge_;
    QDoubleSpinBox* stitches_;
    QDoubleSpinBox* rows_;
    QComboBox* over_;
};

}  // namespace lacewright::app
