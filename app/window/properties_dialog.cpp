#include "app/window/properties_dialog.h"

#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>

#include "app/window/working_fields.h"

namespace lacewright::app {

namespace {

QDoubleSpinBox* gaugeField(QWidget* parent, const char* name, const QString& suffix) {
    auto* box = new QDoubleSpinBox(parent);
    box->setObjectName(QLatin1String(name));
    box->setRange(0, 200);
    box->setDecimals(1);
    box->setSingleStep(0.5);
    box->setSuffix(suffix);
    box->setSpecialValueText(QObject::tr("not known"));
    return box;
}

}  // namespace

PropertiesDialog::PropertiesDialog(const ChartProperties& now, QWidget* parent)
    : FormDialog(tr("Chart properties"), {}, tr("Change chart"), parent),
      before_(now),
      name_(new QLineEdit(QString::fromStdString(now.name), this)),
      notes_(new QPlainTextEdit(QString::fromStdString(now.notes), this)),
      source_(new QLineEdit(QString::fromStdString(now.source), this)),
      gaugeStitches_(gaugeField(this, "gaugeStitches", tr(" sts"))),
      gaugeRows_(gaugeField(this, "gaugeRows", tr(" rows"))) {
    name_->setObjectName(QStringLiteral("name"));
    notes_->setObjectName(QStringLiteral("notes"));
    source_->setObjectName(QStringLiteral("source"));
    source_->setPlaceholderText(tr("where a published chart comes from"));
    notes_->setTabChangesFocus(true);
    notes_->setMinimumHeight(70);
    gaugeStitches_->setValue(now.gauge.stitches);
    gaugeRows_->setValue(now.gauge.rows);
    gaugeStitches_->setAccessibleName(tr("Stitches to 10 centimetres"));
    gaugeRows_->setAccessibleName(tr("Rows to 10 centimetres"));

    form().addRow(tr("&Name"), name_);
    working_ = new WorkingFields(form(), this);
    working_->show(now);
    auto* gauge = new QHBoxLayout;
    gauge->addWidget(gaugeStitches_, 1);
    gauge->addWidget(gaugeRows_, 1);
    form().addRow(tr("Gauge to 10 cm"), gauge);
    form().addRow(tr("N&otes"), notes_);
    form().addRow(tr("&Source"), source_);
}

ChartProperties PropertiesDialog::properties() const {
    ChartProperties after = before_;
    after.name = name_->text().trimmed().toStdString();
    after.notes = notes_->toPlainText().toStdString();
    after.source = source_->text().trimmed().toStdString();
    after.gauge.stitches = gaugeStitches_->value();
    after.gauge.rows = gaugeRows_->value();
    working_->readInto(after);
    return after;
}

}  // namespace lacewright::app
