#include "app/window/properties_dialog.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>

#include "app/window/gauge_fields.h"
#include "app/window/working_fields.h"

namespace lacewright::app {

PropertiesDialog::PropertiesDialog(const ChartProperties& now, QWidget* parent)
    : FormDialog(tr("Chart properties"), {}, tr("Change chart"), parent),
      before_(now),
      name_(new QLineEdit(QString::fromStdString(now.name), this)),
      notes_(new QPlainTextEdit(QString::fromStdString(now.notes), this)),
      source_(new QLineEdit(QString::fromStdString(now.source), this)),
      gauge_(new GaugeFields(now.gauge, this)) {
    name_->setObjectName(QStringLiteral("name"));
    notes_->setObjectName(QStringLiteral("notes"));
    source_->setObjectName(QStringLiteral("source"));
    source_->setPlaceholderText(tr("where a published chart comes from"));
    notes_->setTabChangesFocus(true);
    notes_->setMinimumHeight(70);
    gauge_->stitches()->setObjectName(QStringLiteral("gaugeStitches"));
    gauge_->rows()->setObjectName(QStringLiteral("gaugeRows"));
    gauge_->countedOver()->setObjectName(QStringLiteral("gaugeOver"));

    form().addRow(tr("&Name"), name_);
    working_ = new WorkingFields(form(), this);
    working_->show(now);
    auto* gauge = new QHBoxLayout;
    gauge->setSpacing(8);
    gauge->addWidget(gauge_->stitches(), 1);
    gauge->addWidget(gauge_->rows(), 1);
    gauge->addWidget(new QLabel(tr("over"), this));
    gauge->addWidget(gauge_->countedOver());
    form().addRow(tr("Gauge"), gauge);
    form().addRow(tr("N&otes"), notes_);
    form().addRow(tr("&Source"), source_);
}

ChartProperties PropertiesDialog::properties() const {
    ChartProperties after = before_;
    after.name = name_->text().trimmed().toStdString();
    after.notes = notes_->toPlainText().toStdString();
    after.source = source_->text().trimmed().toStdString();
    after.gauge.stitches = gauge_->gauge().stitches;
    after.gauge.rows = gauge_->gauge().rows;
    working_->readInto(after);
    return after;
}

}  // namespace lacewright::app
