#include "app/window/form_dialog.h"

#include <QDialogButtonBox>
#include <QEvent>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/dialog_layout.h"

namespace lacewright::app {

namespace {

constexpr int kTextWidth = 380;  // device-independent pixels, about 60 letters

}  // namespace

FormDialog::FormDialog(const QString& title, const QString& sentence, const QString& accept,
                       QWidget* parent)
    : QDialog(parent),
      sentence_(wrappedLabel(sentence, kTextWidth, this)),
      form_(newForm()),
      problem_(wrappedLabel({}, kTextWidth, this)) {
    setWindowTitle(title);
    problem_->setObjectName(QStringLiteral("problem"));
    problem_->setVisible(false);

    buttons_ = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    accept_ = buttons_->addButton(accept, QDialogButtonBox::AcceptRole);
    accept_->setObjectName(QStringLiteral("accept"));
    accept_->setDefault(true);
    connect(buttons_, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons_, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* layout = newDialogLayout(this);
    layout->addWidget(sentence_);
    layout->addLayout(form_);
    layout->addWidget(problem_);
    layout->addStretch(1);
    layout->addWidget(buttons_);
    sentence_->setVisible(!sentence.isEmpty());
}

void FormDialog::setProblem(const QString& sentence) {
    problem_->setText(sentence);
    problem_->setVisible(!sentence.isEmpty());
    accept_->setEnabled(sentence.isEmpty());
}

bool FormDialog::event(QEvent* event) {
    if (event->type() == QEvent::Polish) orderFocus();
    return QDialog::event(event);
}

// Buttons that leave the dialog and come back stand last in the order of Tab.
void FormDialog::orderFocus() {
    layout()->removeWidget(buttons_);
    buttons_->setParent(nullptr);
    buttons_->setParent(this);
    layout()->addWidget(buttons_);
    if (focusWidget()) return;
    for (QWidget* next = nextInFocusChain(); next != this; next = next->nextInFocusChain()) {
        if (!(next->focusPolicy() & Qt::TabFocus) || !next->isEnabled()) continue;
        next->setFocus(Qt::TabFocusReason);
        return;
    }
}

void FormDialog::setSentence(const QString& sentence) {
    sentence_->setText(sentence);
    sentence_->setVisible(!sentence.isEmpty());
}

}  // namespace lacewright::app
