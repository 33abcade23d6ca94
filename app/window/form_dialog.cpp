#include "app/window/form_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/tab_order.h"

namespace lacewright::app {

namespace {

constexpr int kTextWidth = 380;  // device-independent pixels, about 60 letters

QLabel* wrappedLabel(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setMinimumWidth(kTextWidth);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

FormDialog::FormDialog(const QString& title, const QString& sentence, const QString& accept,
                       QWidget* parent)
    : QDialog(parent),
      sentence_(wrappedLabel(sentence, this)),
      form_(new QFormLayout),
      problem_(wrappedLabel({}, this)) {
    setWindowTitle(title);
    problem_->setObjectName(QStringLiteral("problem"));
    problem_->setVisible(false);
    form_->setHorizontalSpacing(16);
    form_->setVerticalSpacing(10);
    form_->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    cancel_ = buttons->button(QDialogButtonBox::Cancel);
    accept_ = buttons->addButton(accept, QDialogButtonBox::AcceptRole);
    accept_->setObjectName(QStringLiteral("accept"));
    accept_->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 18, 20, 16);
    layout->setSpacing(14);
    layout->addWidget(sentence_);
    layout->addLayout(form_);
    layout->addWidget(problem_);
    layout->addStretch(1);
    layout->addWidget(buttons);
    sentence_->setVisible(!sentence.isEmpty());
}

void FormDialog::setProblem(const QString& sentence) {
    problem_->setText(sentence);
    problem_->setVisible(!sentence.isEmpty());
    accept_->setEnabled(sentence.isEmpty());
}

void FormDialog::showEvent(QShowEvent* event) {
    reachLast(*this, {accept_, cancel_});
    if (!focusWidget()) focusNextChild();
    QDialog::showEvent(event);
}

void FormDialog::setSentence(const QString& sentence) {
    sentence_->setText(sentence);
    sentence_->setVisible(!sentence.isEmpty());
}

}  // namespace lacewright::app
