#include "app/window/spread_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QSpinBox>
#include <algorithm>

#include "core/plan/spread.h"

namespace lacewright::app {

namespace {

constexpr int kMostStitches = 100'000;  // that can be typed
constexpr int kUsualStitches = 80;

QSpinBox* needle(QWidget* parent, const char* name) {
    auto* box = new QSpinBox(parent);
    box->setObjectName(QLatin1String(name));
    box->setRange(1, kMostStitches);
    box->setSuffix(SpreadDialog::tr(" sts"));
    return box;
}

template <class Value>
void offer(QComboBox& list, const QString& text, Value value) {
    list.addItem(text, static_cast<int>(value));
}

}  // namespace

SpreadDialog::SpreadDialog(int stitches, bool inTheRound, QWidget* parent)
    : RecipeDialog(tr("Spread stitches evenly"),
                   tr("Where to increase or decrease so that the changes stand evenly across the "
                      "row: no two gaps differ by more than one stitch."),
                   parent),
      before_(needle(this, "before")),
      after_(needle(this, "after")),
      increase_(new QComboBox(this)),
      ends_(new QComboBox(this)) {
    setObjectName(QStringLiteral("spreadDialog"));
    increase_->setObjectName(QStringLiteral("increase"));
    offer(*increase_, tr("make one between two stitches (m1)"), Change::MakeOne);
    offer(*increase_, tr("knit into front and back (kfb)"), Change::FrontAndBack);
    ends_->setObjectName(QStringLiteral("ends"));
    offer(*ends_, tr("half a gap at both ends: a flat piece"), SpreadEnds::Half);
    offer(*ends_, tr("a whole gap at both ends"), SpreadEnds::Whole);
    offer(*ends_, tr("groups alike, each closed by its change: in the round"), SpreadEnds::Grouped);
    before_->setValue(stitches > 0 ? stitches : kUsualStitches);
    after_->setValue(before_->value() + std::max(1, before_->value() / 10));
    ends_->setCurrentIndex(
        ends_->findData(static_cast<int>(inTheRound ? SpreadEnds::Grouped : SpreadEnds::Half)));
    form().addRow(tr("On the &needle"), before_);
    form().addRow(tr("&Wanted"), after_);
    form().addRow(tr("&Increase with"), increase_);
    form().addRow(tr("&Ends"), ends_);
    for (const QSpinBox* box : {before_, after_}) {
        connect(box, &QSpinBox::valueChanged, this, &SpreadDialog::refresh);
    }
    for (const QComboBox* list : {increase_, ends_}) {
        connect(list, &QComboBox::currentIndexChanged, this, &SpreadDialog::refresh);
    }
    addRecipe();
    refresh();
    after_->setFocus();
    after_->selectAll();
}

void SpreadDialog::refresh() {
    increase_->setEnabled(after_->value() >= before_->value());
    const Result<Spread> spread = spreadTo(before_->value(), after_->value(),
                                           static_cast<Change>(increase_->currentData().toInt()),
                                           static_cast<SpreadEnds>(ends_->currentData().toInt()));
    showRecipe(spread ? Result<std::string>(spreadSentence(*spread)) : spread.error());
}

}  // namespace lacewright::app
