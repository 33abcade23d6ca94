#include "app/window/dialog_layout.h"

#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace lacewright::app {

QFormLayout* newForm() {
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(16);
    form->setVerticalSpacing(10);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    return form;
}

QVBoxLayout* newDialogLayout(QWidget* dialog) {
    auto* layout = new QVBoxLayout(dialog);
    layout->setContentsMargins(20, 18, 20, 16);
    layout->setSpacing(14);
    return layout;
}

QLabel* wrappedLabel(const QString& text, int width, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setMinimumWidth(width);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace lacewright::app
