#pragma once

#include <QComboBox>
#include <QDoubleSpinBox>

namespace lacewright::app {

enum class LengthUnit : std::uint8_t { Centimetres, Inches };

// "42.5" in that unit, to the nearest tenth.
QString lengthIn(LengthUnit unit, double cm);
QString unitWord(LengthUnit unit);  // "cm" or "in"
double inCm(LengthUnit unit, double value);

// A number without zeros behind it: "24", "24.5".
class ShortNumberField : public QDoubleSpinBox {
    Q_OBJECT

 public:
    using QDoubleSpinBox::QDoubleSpinBox;
    QString textFromValue(double value) const override;
};

// A length, shown and typed in centimetres or inches. A length that nobody types stays exact,
// whatever the unit.
class LengthField : public ShortNumberField {
    Q_OBJECT

 public:
    struct Span {
        double least = 0;  // cm
        double most = 0;
    };
    LengthField(double cm, const Span& span, QWidget* parent);

    double cm() const { return cm_; }
    void setCm(double cm);  // says nothing
    void setUnit(LengthUnit unit);

 Q_SIGNALS:
    void lengthChanged();

 private:
    Span span_;
    double cm_;
    LengthUnit unit_ = LengthUnit::Centimetres;
};

// Which unit lengths are shown in. The choice is remembered and holds for every dialog.
class LengthUnitField : public QComboBox {
    Q_OBJECT

 public:
    explicit LengthUnitField(QWidget* parent);
    LengthUnit unit() const;

 Q_SIGNALS:
    void unitChosen();
};

}  // namespace lacewright::app
