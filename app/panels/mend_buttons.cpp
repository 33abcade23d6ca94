#include "app/panels/mend_buttons.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/document/document.h"
#include "app/panels/wrapped_button.h"
#include "core/check/mend.h"

namespace lacewright::app {

namespace {

constexpr std::size_t kMost = 4;  // further mends are less likely than these by far

}  // namespace

MendButtons::MendButtons(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      heading_(new QLabel(tr("To mend it:"), this)),
      layout_(new QVBoxLayout(this)) {
    layout_->setContentsMargins(0, 4, 0, 4);
    layout_->setSpacing(4);
    layout_->addWidget(heading_);
    hide();
}

void MendButtons::show(const std::vector<Mend>& mends) {
    for (QPushButton* old : findChildren<QPushButton*>()) {
        layout_->removeWidget(old);
        old->hide();
        // Not at once: the button may be the one whose click brought us here.
        old->setObjectName({});
        old->setParent(nullptr);
        old->deleteLater();
    }
    mends_.assign(mends.begin(),
                  mends.begin() + static_cast<std::ptrdiff_t>(std::min(kMost, mends.size())));
    for (std::size_t i = 0; i < mends_.size(); ++i) {
        const QString label = QString::fromStdString(mends_[i].label);
        const QString reason = QString::fromStdString(mends_[i].reason);
        auto* button = new WrappedButton(label, this);
        button->setObjectName(QStringLiteral("mend%1").arg(i + 1));
        button->setToolTip(reason);
        button->setAccessibleDescription(reason);
        connect(button, &QPushButton::clicked, this, [this, i] { apply(i); });
        layout_->addWidget(button);
    }
    setVisible(!mends_.empty());
}

void MendButtons::doFirst() {
    if (!mends_.empty()) apply(0);
}

void MendButtons::apply(std::size_t index) {
    const Mend mend = mends_[index];
    document_.apply(QString::fromStdString(mend.label), applyMend(document_.chart(), mend));
}

}  // namespace lacewright::app
