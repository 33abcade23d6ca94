#include "app/window/gauge_fields.h"

#include <QComboBox>
#include <QSignalBlocker>

#include "app/window/length_field.h"
#include "core/plan/gauge.h"

namespace lacewright::app {

namespace {

constexpr int kOverFourInches = 1;  // place in its list

QDoubleSpinBox* gaugeField(QWidget* parent, const QString& suffix) {
    auto* box = new ShortNumberField(parent);
    box->setRange(0, kMaxGauge);
    box->setDecimals(2);
    box->setSingleStep(0.5);
    box->setSuffix(suffix);
    box->setSpecialValueText(GaugeFields::tr("not known"));
    return box;
}

}  // namespace

GaugeFields::GaugeFields(const Gauge& gauge, QWidget* over)
    : QObject(over),
      gauge_(gauge),
      stitches_(gaugeField(over, tr(" sts"))),
      rows_(gaugeField(over, tr(" rows"))),
      over_(new QComboBox(over)) {
    over_->addItems({tr("10 cm"), tr("4 in")});
    stitches_->setAccessibleName(tr("Gauge, stitches"));
    rows_->setAccessibleName(tr("Gauge, rows"));
    over_->setAccessibleName(tr("Gauge is counted over"));
    show();
    connect(stitches_, &QDoubleSpinBox::valueChanged, this, &GaugeFields::read);
    connect(rows_, &QDoubleSpinBox::valueChanged, this, &GaugeFields::read);
    connect(over_, &QComboBox::currentIndexChanged, this, &GaugeFields::show);
}

void GaugeFields::show() {
    const QSignalBlocker quietStitches(stitches_);
    const QSignalBlocker quietRows(rows_);
    const double part = over_->currentIndex() == kOverFourInches ? 4 * kCmPerInch / 10 : 1;
    stitches_->setValue(gauge_.stitches * part);
    rows_->setValue(gauge_.rows * part);
}

void GaugeFields::read() {
    const double stitches = stitches_->value();
    const double rows = rows_->value();
    const Gauge typed = over_->currentIndex() == kOverFourInches
                            ? gaugeOverFourInches(stitches, rows)
                            : Gauge{stitches, rows, {}};
    if (sender() == stitches_) gauge_.stitches = typed.stitches;
    if (sender() == rows_) gauge_.rows = typed.rows;
    Q_EMIT changed();
}

}  // namespace lacewright::app
