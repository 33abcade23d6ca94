#include "app/window/pick_up_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>
#include <algorithm>

#include "app/window/gauge_fields.h"
#include "app/window/length_field.h"
#include "core/base/length.h"
#include "core/plan/gauge.h"
#include "core/plan/pick_up.h"

namespace lacewright::app {

namespace {

constexpr int kBetween = 8;  // device-independent pixels
constexpr int kMostRows = 100'000;
constexpr double kLongest = 10'000;  // cm

QLabel* between(const QString& text, QWidget* field) {
    auto* label = new QLabel(text, field->parentWidget());
    label->setBuddy(field);
    return label;
}

}  // namespace

PickUpDialog::PickUpDialog(const Gauge& gauge, int rows, QWidget* parent)
    : RecipeDialog(tr("Pick up stitches"),
                   tr("How many stitches to pick up along the side of a piece, and in which rows, "
                      "so that a band in the stitch gauge lies as long as the edge in the row "
                      "gauge."),
                   parent),
      gauge_(new GaugeFields(gauge, this)),
      rows_(new QSpinBox(this)),
      length_(new LengthField(0, {0, kLongest}, this)),
      unit_(new LengthUnitField(this)) {
    setObjectName(QStringLiteral("pickUpDialog"));
    gauge_->stitches()->setObjectName(QStringLiteral("gaugeStitches"));
    gauge_->rows()->setObjectName(QStringLiteral("gaugeRows"));
    gauge_->countedOver()->setObjectName(QStringLiteral("gaugeOver"));
    unit_->setObjectName(QStringLiteral("unit"));
    unit_->setAccessibleName(tr("Lengths in"));
    rows_->setObjectName(QStringLiteral("rows"));
    rows_->setRange(1, kMostRows);
    rows_->setSuffix(tr(" rows"));
    rows_->setValue(rows);
    length_->setObjectName(QStringLiteral("length"));
    length_->setUnit(unit_->unit());

    auto* perTen = new QHBoxLayout;
    perTen->setSpacing(kBetween);
    perTen->addWidget(gauge_->stitches(), 1);
    perTen->addWidget(between(tr("of the &band,"), gauge_->stitches()));
    perTen->addWidget(gauge_->rows(), 1);
    perTen->addWidget(between(tr("of the &piece"), gauge_->rows()));
    form().addRow(tr("Gauge"), perTen);
    form().addRow(tr("&Over"), gauge_->countedOver());
    auto* edge = new QHBoxLayout;
    edge->setSpacing(kBetween);
    edge->addWidget(rows_, 1);
    edge->addWidget(between(tr("or &length"), length_));
    edge->addWidget(length_, 1);
    edge->addWidget(unit_);
    form().addRow(tr("&Along"), edge);
    static_cast<QLabel*>(form().labelForField(edge))->setBuddy(rows_);
    connect(gauge_, &GaugeFields::changed, this, &PickUpDialog::rowsGiven);
    connect(rows_, &QSpinBox::valueChanged, this, &PickUpDialog::rowsGiven);
    connect(length_, &LengthField::lengthChanged, this, &PickUpDialog::lengthGiven);
    connect(unit_, &LengthUnitField::unitChosen, this, [this] { length_->setUnit(unit_->unit()); });
    addRecipe();
    rowsGiven();
    (gauge.stitches > 0 && gauge.rows > 0 ? rows_
                                          : static_cast<QAbstractSpinBox*>(gauge_->stitches()))
        ->setFocus();
}

void PickUpDialog::lengthGiven() {
    const double perTen = gauge_->gauge().rows;
    if (perTen <= 0) return;
    const QSignalBlocker quiet(rows_);
    rows_->setValue(std::clamp(countNearest(length_->cm(), perTen), 1, kMostRows));
    refresh();
}

void PickUpDialog::rowsGiven() {
    const double perTen = gauge_->gauge().rows;
    length_->setEnabled(perTen > 0);
    if (perTen > 0) length_->setCm(lengthOf(rows_->value(), perTen));
    refresh();
}

void PickUpDialog::refresh() {
    const Gauge& gauge = gauge_->gauge();
    if (gauge.stitches <= 0 || gauge.rows <= 0) {
        showRecipe(Error{ErrorCode::Refused,
                         "Enter the gauge: stitches of the band and rows of the piece.",
                         {}});
        return;
    }
    const Result<PickUp> plan = planPickUp(gauge.stitches, gauge.rows, rows_->value());
    showRecipe(plan ? Result<std::string>(pickUpSentence(*plan) +
                                          ".\nBy heart: " + ratioWords(plan->simple) + ".")
                    : plan.error());
}

}  // namespace lacewright::app
