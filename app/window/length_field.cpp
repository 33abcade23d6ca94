#include "app/window/length_field.h"

#include <QSettings>
#include <QSignalBlocker>

#include "core/plan/gauge.h"

namespace lacewright::app {

namespace {

const QString kInchesKey = QStringLiteral("plan/inches");
constexpr int kInchesPlace = 1;  // in the list of units

}  // namespace

QString lengthIn(LengthUnit unit, double cm) {
    return QString::fromStdString(tenths(unit == LengthUnit::Inches ? inchesOf(cm) : cm));
}

QString unitWord(LengthUnit unit) {
    return unit == LengthUnit::Inches ? QStringLiteral("in") : QStringLiteral("cm");
}

double inCm(LengthUnit unit, double value) {
    return unit == LengthUnit::Inches ? cmOf(value) : value;
}

LengthField::LengthField(double cm, const Span& span, QWidget* parent)
    : ShortNumberField(parent), span_(span), cm_(cm) {
    setDecimals(2);
    setAccelerated(true);
    setUnit(unit_);
    connect(this, &QDoubleSpinBox::valueChanged, this, [this](double value) {
        cm_ = inCm(unit_, value);
        Q_EMIT lengthChanged();
    });
}

void LengthField::setUnit(LengthUnit unit) {
    const QSignalBlocker quiet(this);
    unit_ = unit;
    const bool inches = unit == LengthUnit::Inches;
    setRange(inches ? inchesOf(span_.least) : span_.least,
             inches ? inchesOf(span_.most) : span_.most);
    setSingleStep(inches ? 0.25 : 0.5);
    setSuffix(QLatin1Char(' ') + unitWord(unit));
    setValue(inches ? inchesOf(cm_) : cm_);
}

void LengthField::setCm(double cm) {
    cm_ = cm;
    setUnit(unit_);
}

QString ShortNumberField::textFromValue(double value) const {
    QString text = QDoubleSpinBox::textFromValue(value);
    const QString point = locale().decimalPoint();
    if (!text.contains(point)) return text;
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(point)) text.chop(point.size());
    return text;
}

LengthUnitField::LengthUnitField(QWidget* parent) : QComboBox(parent) {
    addItems({tr("cm"), tr("inches")});
    if (QSettings().value(kInchesKey).toBool()) setCurrentIndex(kInchesPlace);
    connect(this, &QComboBox::currentIndexChanged, this, [this](int place) {
        QSettings().setValue(kInchesKey, place == kInchesPlace);
        Q_EMIT unitChosen();
    });
}

LengthUnit LengthUnitField::unit() const {
    return currentIndex() == kInchesPlace ? LengthUnit::Inches : LengthUnit::Centimetres;
}

}  // namespace lacewright::app
