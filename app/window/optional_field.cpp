#include "app/window/optional_field.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>

namespace lacewright::app {

QCheckBox* optionalField(QFormLayout& form, const QString& label, const QString& tick,
                         QWidget* field, bool on, QWidget* beside) {
    auto* box = new QCheckBox(tick, field->parentWidget());
    box->setObjectName(QStringLiteral("knows-") + field->objectName());
    box->setChecked(on);
    field->setEnabled(on);
    QObject::connect(box, &QCheckBox::toggled, field, &QWidget::setEnabled);
    auto* line = new QHBoxLayout;
    line->addWidget(box);
    line->addWidget(field, 1);
    if (beside) line->addWidget(beside);
    form.addRow(label, line);
    QWidget::setTabOrder(box, field);
    return box;
}

}  // namespace lacewright::app
