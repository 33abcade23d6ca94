#include "app/window/repeat_dialogs.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <algorithm>

namespace lacewright::app {

namespace {

QSpinBox* spin(QWidget* parent, const char* name, int low, int high, int value) {
    auto* box = new QSpinBox(parent);
    box->setObjectName(QLatin1String(name));
    box->setRange(low, high);
    box->setValue(value);
    return box;
}

QHBoxLayout* between(QSpinBox* from, const QString& word, QSpinBox* to) {
    auto* line = new QHBoxLayout;
    line->addWidget(from, 1);
    line->addWidget(new QLabel(word));
    line->addWidget(to, 1);
    return line;
}

}  // namespace

RepeatDialog::RepeatDialog(const Chart& chart, const RepeatPlan& plan, QWidget* parent)
    : FormDialog(tr("Repeat"),
                 tr("A repeat is worked again and again across the row. Its name is what sizes and "
                    "findings call it."),
                 plan.repeat.name.empty() ? tr("Mark repeat") : tr("Change repeat"), parent),
      chart_(chart),
      before_(plan),
      name_(new QLineEdit(QString::fromStdString(plan.repeat.name), this)),
      right_(spin(this, "right", 1, chart.width, plan.repeat.right)),
      left_(spin(this, "left", 1, chart.width, plan.repeat.left)) {
    name_->setObjectName(QStringLiteral("name"));
    name_->setPlaceholderText(tr("the next free letter"));
    name_->setMaxLength(24);
    const int step = chart.uncharted == Uncharted::None ? 1 : 2;
    const int top = chart.rowNumber(std::max(0, chart.height() - 1));
    firstRow_ = spin(this, "firstRow", 1, top, chart.rowNumber(plan.repeat.firstRow));
    lastRow_ = spin(this, "lastRow", 1, top, chart.rowNumber(plan.repeat.lastRow));
    for (QSpinBox* box : {firstRow_, lastRow_}) box->setSingleStep(step);
    right_->setAccessibleName(tr("Right edge, column"));
    left_->setAccessibleName(tr("Left edge, column"));
    firstRow_->setAccessibleName(tr("First row"));
    lastRow_->setAccessibleName(tr("Last row"));
    form().addRow(tr("&Name"), name_);
    form().addRow(tr("&Columns, from the right"), between(right_, tr("to"), left_));
    form().addRow(tr("&Rows"), between(firstRow_, tr("to"), lastRow_));
    if (plan.times) {
        times_ = spin(this, "times", 0, kMaxTimes, *plan.times);
        times_->setSuffix(tr(" times"));
        form().addRow(tr("Every size works it"), times_);
    }
    for (QSpinBox* box : {right_, left_, firstRow_, lastRow_}) {
        connect(box, &QSpinBox::valueChanged, this, &RepeatDialog::examine);
    }
    examine();
}

void RepeatDialog::examine() {
    if (left_->value() < right_->value()) {
        setProblem(tr("The left edge must not be to the right of the right edge."));
    } else if (lastRow_->value() < firstRow_->value()) {
        setProblem(tr("The last row must not be below the first."));
    } else if (!chart_.indexOfRowNumber(firstRow_->value()) ||
               !chart_.indexOfRowNumber(lastRow_->value())) {
        setProblem(tr("Only every second row is drawn; choose drawn rows."));
    } else {
        setProblem({});
    }
}

RepeatPlan RepeatDialog::plan() const {
    RepeatPlan after = before_;
    after.repeat.name = name_->text().trimmed().toStdString();
    after.repeat.right = right_->value();
    after.repeat.left = left_->value();
    after.repeat.firstRow = chart_.indexOfRowNumber(firstRow_->value()).value_or(0);
    after.repeat.lastRow = chart_.indexOfRowNumber(lastRow_->value()).value_or(0);
    if (times_) after.times = times_->value();
    return after;
}

JogDialog::JogDialog(const QString& rows, const Jog& now, QWidget* parent)
    : FormDialog(tr("Shift repeat"),
                 tr("On %1 the edges of the repeat stand elsewhere. Columns to the left count "
                    "positive; 0 leaves an edge where it is.")
                     .arg(rows),
                 tr("Shift edges"), parent),
      before_(now),
      right_(spin(this, "right", -kMaxWidth, kMaxWidth, now.right)),
      left_(spin(this, "left", -kMaxWidth, kMaxWidth, now.left)) {
    form().addRow(tr("&Left edge"), left_);
    form().addRow(tr("&Right edge"), right_);
}

Jog JogDialog::jog() const {
    Jog after = before_;
    after.right = right_->value();
    after.left = left_->value();
    return after;
}

RowRepeatDialog::RowRepeatDialog(const Chart& chart, const RowRepeat& now, QWidget* parent)
    : FormDialog(tr("Repeat rows"),
                 tr("Rows %1 to %2 are worked again and again upward.")
                     .arg(chart.rowNumber(now.firstRow))
                     .arg(chart.rowNumber(now.lastRow)),
                 tr("Repeat these rows"), parent),
      before_(now),
      grows_(spin(this, "grows", -100'000, 100'000, now.grows)) {
    grows_->setSuffix(tr(" stitches"));
    grows_->setToolTip(tr("0 when the same number of stitches comes back each time"));
    form().addRow(tr("Each time it &grows by"), grows_);
}

RowRepeat RowRepeatDialog::rowRepeat() const {
    RowRepeat after = before_;
    after.grows = grows_->value();
    return after;
}

}  // namespace lacewright::app
