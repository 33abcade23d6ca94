#include "app/window/working_fields.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>

namespace lacewright::app {

namespace {

enum CastOnKind { kNotSaid, kFixed, kMultiple };

template <class Value>
QComboBox* choice(QWidget* parent, const char* name,
                  std::initializer_list<std::pair<QString, Value>> items) {
    auto* box = new QComboBox(parent);
    box->setObjectName(QLatin1String(name));
    for (const auto& [text, value] : items) box->addItem(text, static_cast<int>(value));
    return box;
}

template <class Value>
Value chosen(const QComboBox& box) {
    return static_cast<Value>(box.currentData().toInt());
}

void choose(QComboBox& box, int value) {
    box.setCurrentIndex(box.findData(value));
}

QSpinBox* stitchCount(QWidget* parent, const char* name, int low) {
    auto* box = new QSpinBox(parent);
    box->setObjectName(QLatin1String(name));
    box->setRange(low, 1'000'000);
    return box;
}

}  // namespace

WorkingFields::WorkingFields(QFormLayout& form, QWidget* parent)
    : QObject(parent),
      worked_(choice<Worked>(
          parent, "worked",
          {{tr("Flat, back and forth"), Worked::Flat}, {tr("In the round"), Worked::InTheRound}})),
      firstSide_(choice<Side>(parent, "firstSide",
                              {{tr("Right side"), Side::Right}, {tr("Wrong side"), Side::Wrong}})),
      uncharted_(
          choice<Uncharted>(parent, "uncharted",
                            {{tr("Every row is drawn"), Uncharted::None},
                             {tr("Every second row; between, work stitches as they present"),
                              Uncharted::AsTheyPresent},
                             {tr("Every second row; between, purl across"), Uncharted::Purl},
                             {tr("Every second row; between, knit across"), Uncharted::Knit}})),
      castOn_(choice<CastOnKind>(parent, "castOn",
                                 {{tr("Not said"), kNotSaid},
                                  {tr("A number of stitches"), kFixed},
                                  {tr("A multiple, plus some"), kMultiple}})),
      castOnNumbers_(new QWidget(parent)),
      plusWord_(new QLabel(tr("plus"), castOnNumbers_)),
      multiple_(stitchCount(parent, "castOnMultiple", 1)),
      plus_(stitchCount(parent, "castOnPlus", 0)) {
    form.addRow(tr("&Worked"), worked_);
    form.addRow(tr("&First row faces the"), firstSide_);
    form.addRow(tr("&Rows drawn"), uncharted_);
    form.addRow(tr("&Cast-on"), castOn_);

    auto* numbers = new QHBoxLayout(castOnNumbers_);
    numbers->setContentsMargins(0, 0, 0, 0);
    multiple_->setAccessibleName(tr("Cast on a multiple of"));
    plus_->setAccessibleName(tr("Cast-on stitches, or stitches beside the multiple"));
    multiple_->setPrefix(tr("multiple of "));
    plus_->setSuffix(tr(" sts"));
    numbers->addWidget(multiple_);
    numbers->addWidget(plusWord_);
    numbers->addWidget(plus_);
    numbers->addStretch(1);
    form.addRow(QString(), castOnNumbers_);

    connect(worked_, &QComboBox::currentIndexChanged, this, &WorkingFields::adapt);
    connect(castOn_, &QComboBox::currentIndexChanged, this, &WorkingFields::adapt);
    adapt();
}

void WorkingFields::adapt() {
    const bool round = chosen<Worked>(*worked_) == Worked::InTheRound;
    if (round) choose(*firstSide_, static_cast<int>(Side::Right));
    firstSide_->setEnabled(!round);
    const auto kind = chosen<CastOnKind>(*castOn_);
    castOnNumbers_->setVisible(kind != kNotSaid);
    multiple_->setVisible(kind == kMultiple);
    plusWord_->setVisible(kind == kMultiple);
}

void WorkingFields::show(const ChartProperties& properties) {
    choose(*worked_, static_cast<int>(properties.worked));
    choose(*firstSide_, static_cast<int>(properties.firstSide));
    choose(*uncharted_, static_cast<int>(properties.uncharted));
    if (!properties.castOn) {
        choose(*castOn_, kNotSaid);
    } else {
        const CastOn& castOn = *properties.castOn;
        choose(*castOn_, castOn.multiple > 0 ? kMultiple : kFixed);
        multiple_->setValue(castOn.multiple);
        plus_->setValue(castOn.plus);
    }
    adapt();
}

void WorkingFields::readInto(ChartProperties& properties) const {
    properties.worked = chosen<Worked>(*worked_);
    properties.firstSide = chosen<Side>(*firstSide_);
    properties.uncharted = chosen<Uncharted>(*uncharted_);
    const auto kind = chosen<CastOnKind>(*castOn_);
    if (kind == kNotSaid) {
        properties.castOn.reset();
        return;
    }
    CastOn castOn = properties.castOn.value_or(CastOn{});
    castOn.multiple = kind == kMultiple ? multiple_->value() : 0;
    castOn.plus = plus_->value();
    properties.castOn = castOn;
}

}  // namespace lacewright::app
