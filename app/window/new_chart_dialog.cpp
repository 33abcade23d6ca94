#include "app/window/new_chart_dialog.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>

#include "app/window/working_fields.h"

namespace lacewright::app {

NewChartDialog::NewChartDialog(QWidget* parent)
    : FormDialog(tr("New chart"),
                 tr("The chart begins as plain knitting. Everything here can be changed later."),
                 tr("Create chart"), parent),
      name_(new QLineEdit(this)),
      width_(new QSpinBox(this)),
      rows_(new QSpinBox(this)) {
    name_->setObjectName(QStringLiteral("name"));
    name_->setPlaceholderText(tr("for example Fern border"));
    width_->setObjectName(QStringLiteral("width"));
    width_->setRange(1, kMaxWidth);
    width_->setValue(13);
    width_->setSuffix(tr(" stitches"));
    rows_->setObjectName(QStringLiteral("rows"));
    rows_->setRange(1, kMaxRows);
    rows_->setValue(12);
    rows_->setSuffix(tr(" rows"));
    form().addRow(tr("&Name"), name_);
    form().addRow(tr("W&idth"), width_);
    form().addRow(tr("&Height"), rows_);
    working_ = new WorkingFields(form(), this);
    working_->show({});
    connect(width_, &QSpinBox::valueChanged, this, &NewChartDialog::examine);
    connect(rows_, &QSpinBox::valueChanged, this, &NewChartDialog::examine);
}

void NewChartDialog::examine() {
    const qint64 cells = qint64{width_->value()} * rows_->value();
    setProblem(cells > kMaxCells ? tr("A chart can have at most %L1 cells; this would have %L2.")
                                       .arg(kMaxCells)
                                       .arg(cells)
                                 : QString());
}

Chart NewChartDialog::chart() const {
    Chart chart = blankChart(width_->value(), rows_->value());
    ChartProperties properties = propertiesOf(chart);
    properties.name = name_->text().trimmed().toStdString();
    working_->readInto(properties);
    Result<Chart> result = setProperties(chart, properties);
    // A blank chart has nothing that its properties could contradict.
    return result ? *std::move(result) : chart;
}

}  // namespace lacewright::app
