#include "app/window/size_chooser.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"

namespace lacewright::app {

SizeChooser::SizeChooser(Document& document, ViewState& view, QWidget* parent)
    : QWidget(parent), document_(document), view_(view), sizes_(new QComboBox(this)) {
    auto* label = new QLabel(tr("Si&ze"), this);
    label->setBuddy(sizes_);
    sizes_->setObjectName(QStringLiteral("sizeChooser"));
    sizes_->setAccessibleName(tr("Size looked at"));
    sizes_->setToolTip(tr("Look at the chart as one size works it"));
    sizes_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(8, 0, 8, 0);
    layout->addWidget(label);
    layout->addWidget(sizes_);
    connect(sizes_, &QComboBox::currentIndexChanged, this,
            [this] { view_.chooseSize(sizes_->currentData().toString()); });
    connect(&view, &ViewState::sizeChosen, this, &SizeChooser::fill);
    connect(&document, &Document::changed, this, &SizeChooser::fill);
    connect(&document, &Document::replaced, this, &SizeChooser::fill);
    fill();
}

void SizeChooser::fill() {
    const QSignalBlocker quiet(sizes_);
    sizes_->clear();
    sizes_->addItem(tr("Whole chart"), QString());
    for (const Size& size : document_.chart().sizes) {
        const QString name = QString::fromStdString(size.name);
        sizes_->addItem(name, name);
    }
    sizes_->setCurrentIndex(std::max(0, sizes_->findData(view_.size())));
    sizes_->setEnabled(sizes_->count() > 1);
}

}  // namespace lacewright::app
