#include "app/window/size_dialog.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <algorithm>

namespace lacewright::app {

SizeDialog::SizeDialog(const Chart& chart, const Size& now, QWidget* parent)
    : FormDialog(tr("Size"),
                 tr("A size works the columns from its start, at the right, to its end. It works "
                    "each repeat in full as often as said here."),
                 now.name.empty() ? tr("Add size") : tr("Change size"), parent),
      before_(now),
      name_(new QLineEdit(QString::fromStdString(now.name), this)),
      start_(new QSpinBox(this)),
      end_(new QSpinBox(this)),
      knowsCount_(new QCheckBox(tr("I expect"), this)),
      count_(new QSpinBox(this)) {
    name_->setObjectName(QStringLiteral("name"));
    name_->setPlaceholderText(tr("for example M or 86 cm"));
    start_->setObjectName(QStringLiteral("start"));
    end_->setObjectName(QStringLiteral("end"));
    for (QSpinBox* box : {start_, end_}) {
        box->setRange(1, chart.width);
        box->setPrefix(tr("column "));
    }
    start_->setValue(now.reach.start);
    end_->setValue(now.reach.end);
    form().addRow(tr("&Name"), name_);
    form().addRow(tr("&Starts with"), start_);
    form().addRow(tr("&Ends with"), end_);
    for (const Repeat& repeat : chart.repeats) {
        auto* box = new QSpinBox(this);
        const auto known = now.times.find(repeat.name);
        box->setRange(0, kMaxTimes);
        box->setValue(known == now.times.end() ? 1 : known->second);
        box->setSuffix(tr(" times"));
        box->setObjectName(QStringLiteral("times-") + QString::fromStdString(repeat.name));
        form().addRow(tr("Works repeat %1").arg(QString::fromStdString(repeat.name)), box);
        times_.push_back(box);
        repeats_.push_back(repeat.name);
    }
    knowsCount_->setObjectName(QStringLiteral("knowsCount"));
    knowsCount_->setChecked(now.stitches.has_value());
    count_->setObjectName(QStringLiteral("count"));
    count_->setRange(0, 1'000'000);
    count_->setValue(now.stitches.value_or(0));
    count_->setSuffix(tr(" stitches"));
    count_->setAccessibleName(tr("Expected stitches on the needle before row 1"));
    count_->setEnabled(knowsCount_->isChecked());
    connect(knowsCount_, &QCheckBox::toggled, count_, &QWidget::setEnabled);
    auto* count = new QHBoxLayout;
    count->addWidget(knowsCount_);
    count->addWidget(count_, 1);
    form().addRow(tr("Before row 1"), count);

    connect(name_, &QLineEdit::textChanged, this, &SizeDialog::examine);
    connect(start_, &QSpinBox::valueChanged, this, &SizeDialog::examine);
    connect(end_, &QSpinBox::valueChanged, this, &SizeDialog::examine);
    examine();
}

void SizeDialog::examine() {
    if (name_->text().trimmed().isEmpty()) {
        setProblem(tr("A size needs a name."));
    } else if (end_->value() < start_->value()) {
        setProblem(tr("A size ends at or to the left of where it starts."));
    } else {
        setProblem({});
    }
}

Size SizeDialog::size() const {
    Size after = before_;
    after.name = name_->text().trimmed().toStdString();
    after.reach = {start_->value(), end_->value()};
    for (std::size_t i = 0; i < times_.size(); ++i) after.times[repeats_[i]] = times_[i]->value();
    after.stitches.reset();
    if (knowsCount_->isChecked()) after.stitches = count_->value();
    return after;
}

}  // namespace lacewright::app
