#include "app/window/point_dialog.h"

#include <QFormLayout>
#include <QLineEdit>

#include "core/chart/edits.h"

namespace lacewright::app {

PointDialog::PointDialog(const Chart& chart, const QString& point, QWidget* parent)
    : FormDialog(tr("Rename point"),
                 tr("A point with a name given by hand keeps it, whatever the sizes do."),
                 tr("Rename"), parent),
      chart_(chart),
      before_(point.toStdString()),
      name_(new QLineEdit(point, this)) {
    name_->setObjectName(QStringLiteral("name"));
    form().addRow(tr("&Name"), name_);
    connect(name_, &QLineEdit::textChanged, this, &PointDialog::examine);
    name_->selectAll();
    examine();
}

void PointDialog::examine() {
    if (name().isEmpty()) return setProblem(tr("A point needs a name."));
    const Result<Chart> renamed = renamePoint(chart_, before_, name().toStdString());
    setProblem(renamed ? QString() : QString::fromStdString(renamed.error().message));
}

QString PointDialog::name() const {
    return name_->text().trimmed();
}

}  // namespace lacewright::app
