#include "app/panels/worked_row_panel.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/wording.h"
#include "app/panels/worked_row_strip.h"

namespace lacewright::app {

WorkedRowPanel::WorkedRowPanel(Document& document, ViewState& view, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(view),
      about_(new QLabel(this)),
      strip_(new WorkedRowStrip(document, view, this)) {
    about_->setObjectName(QStringLiteral("workedRowAbout"));
    about_->setTextFormat(Qt::PlainText);
    about_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 4, 6, 4);
    layout->setSpacing(2);
    layout->addWidget(about_);
    layout->addWidget(strip_);
    layout->setSizeConstraint(QLayout::SetMinAndMaxSize);
    connect(&document, &Document::changed, this, &WorkedRowPanel::refresh);
    connect(&document, &Document::replaced, this, &WorkedRowPanel::refresh);
    connect(&view, &ViewState::sizeChosen, this, &WorkedRowPanel::refresh);
    connect(&view, &ViewState::cursorMoved, this, [this] {
        if (view_.cursor().row != row_) refresh();
    });
}

void WorkedRowPanel::refresh() {
    if (!isVisible()) return;
    const Chart& chart = document_.chart();
    row_ = view_.cursor().row;
    const Size* size = chart.findSize(view_.size().toStdString());
    if (row_ < chart.height()) {
        const QString whose = size                    ? tr("size %1").arg(view_.size())
                              : chart.repeats.empty() ? tr("whole chart")
                                                      : tr("whole chart, every repeat shown once");
        about_->setText(QStringLiteral("%1 · %2 · %3")
                            .arg(rowTitle(chart, row_), whose, rowSentence(chart, row_, size)));
    }
    strip_->layOutNow();
}

void WorkedRowPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

}  // namespace lacewright::app
