#include "app/window/size_dialog.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <algorithm>

#include "app/window/length_field.h"
#include "app/window/optional_field.h"

namespace lacewright::app {

namespace {

constexpr double kLeastBody = 1;   // cm
constexpr double kUsualBody = 90;  // cm, to begin with

}  // namespace

SizeDialog::SizeDialog(const Chart& chart, const Size& now, QWidget* parent)
    : FormDialog(tr("Size"),
                 tr("A size works the columns from its start, at the right, to its end. It works "
                    "each repeat in full as often as said here."),
                 now.name.empty() ? tr("Add size") : tr("Change size"), parent),
      before_(now),
      name_(new QLineEdit(QString::fromStdString(now.name), this)),
      start_(new QSpinBox(this)),
      end_(new QSpinBox(this)),
      count_(new QSpinBox(this)),
      body_(new LengthField(now.body.value_or(kUsualBody), {kLeastBody, kMaxBody}, this)),
      shoulder_(new QSpinBox(this)) {
    name_->setObjectName(QStringLiteral("name"));
    name_->setPlaceholderText(tr("for example M or 86 cm"));
    start_->setObjectName(QStringLiteral("start"));
    end_->setObjectName(QStringLiteral("end"));
    for (QSpinBox* box : {start_, end_}) {
        box->setRange(1, chart.width);
        box->setPrefix(tr("column "));
    }
    start_->setValue(now.reach.start);
    end_->setValue(now.reach.end);
    form().addRow(tr("&Name"), name_);
    form().addRow(tr("&Starts with"), start_);
    form().addRow(tr("&Ends with"), end_);
    for (const Repeat& repeat : chart.repeats) {
        auto* box = new QSpinBox(this);
        const auto known = now.times.find(repeat.name);
        box->setRange(0, kMaxTimes);
        box->setValue(known == now.times.end() ? 1 : known->second);
        box->setSuffix(tr(" times"));
        box->setObjectName(QStringLiteral("times-") + QString::fromStdString(repeat.name));
        form().addRow(tr("Works repeat %1").arg(QString::fromStdString(repeat.name)), box);
        times_.push_back(box);
        repeats_.push_back(repeat.name);
    }
    count_->setObjectName(QStringLiteral("count"));
    count_->setRange(0, 1'000'000);
    count_->setValue(now.stitches.value_or(0));
    count_->setSuffix(tr(" stitches"));
    count_->setAccessibleName(tr("Expected stitches on the needle before row 1"));
    knowsCount_ =
        optionalField(form(), tr("Before row 1"), tr("I expect"), count_, now.stitches.has_value());
    addMeasures(now);

    connect(name_, &QLineEdit::textChanged, this, &SizeDialog::examine);
    connect(start_, &QSpinBox::valueChanged, this, &SizeDialog::examine);
    connect(end_, &QSpinBox::valueChanged, this, &SizeDialog::examine);
    examine();
}

void SizeDialog::addMeasures(const Size& now) {
    body_->setObjectName(QStringLiteral("body"));
    body_->setAccessibleName(tr("Measure around the body this size is for"));
    auto* unit = new LengthUnitField(this);
    unit->setAccessibleName(tr("Lengths in"));
    body_->setUnit(unit->unit());
    connect(unit, &LengthUnitField::unitChosen, this,
            [this, unit] { body_->setUnit(unit->unit()); });
    hasBody_ = optionalField(form(), tr("Around the body"), tr("I know"), body_,
                             now.body.has_value(), unit);
    shoulder_->setObjectName(QStringLiteral("shoulder"));
    shoulder_->setAccessibleName(tr("Stitches of the shoulder that it is joined to"));
    shoulder_->setRange(0, 1'000'000);
    shoulder_->setValue(now.shoulder.value_or(0));
    shoulder_->setSuffix(tr(" stitches"));
    hasShoulder_ = optionalField(form(), tr("Shoulder it is joined to"), tr("I expect"), shoulder_,
                                 now.shoulder.has_value());
    hasBody_->setToolTip(tr("The ease of the size is its width around less this"));
    hasShoulder_->setToolTip(
        tr("The shoulders of the chart, named in the rules for the sizes, must have as many"));
}

void SizeDialog::examine() {
    if (name_->text().trimmed().isEmpty()) {
        setProblem(tr("A size needs a name."));
    } else if (end_->value() < start_->value()) {
        setProblem(tr("A size ends at or to the left of where it starts."));
    } else {
        setProblem({});
    }
}

Size SizeDialog::size() const {
    Size after = before_;
    after.name = name_->text().trimmed().toStdString();
    after.reach = {start_->value(), end_->value()};
    for (std::size_t i = 0; i < times_.size(); ++i) after.times[repeats_[i]] = times_[i]->value();
    after.stitches.reset();
    if (knowsCount_->isChecked()) after.stitches = count_->value();
    after.body.reset();
    if (hasBody_->isChecked()) after.body = body_->cm();
    after.shoulder.reset();
    if (hasShoulder_->isChecked()) after.shoulder = shoulder_->value();
    return after;
}

}  // namespace lacewright::app
