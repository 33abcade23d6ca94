#include "app/panels/counts_panel.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QScopedValueRollback>
#include <QTableView>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/counts_model.h"

namespace lacewright::app {

CountsPanel::CountsPanel(Document& document, ViewState& view, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(view),
      about_(new QLabel(this)),
      model_(new CountsModel(document, view, this)),
      table_(new QTableView(this)) {
    about_->setWordWrap(true);
    about_->setObjectName(QStringLiteral("countsAbout"));
    table_->setObjectName(QStringLiteral("countsTable"));
    table_->setAccessibleName(tr("Stitch count of every row"));
    table_->setModel(model_);
    table_->setFrameShape(QFrame::NoFrame);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 8);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->horizontalHeader()->setHighlightSections(false);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 0);
    layout->setSpacing(6);
    layout->addWidget(about_);
    layout->addWidget(table_);

    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                if (following_ || !now.isValid()) return;
                const Cell cell{model_->chartRow(now.row()), view_.cursor().column};
                view_.moveCursor(cell);
                view_.reveal(cell);
            });
    connect(&view, &ViewState::cursorMoved, this, &CountsPanel::follow);
    connect(&view, &ViewState::sizeChosen, this, &CountsPanel::explain);
    connect(&document, &Document::changed, this, &CountsPanel::explain);
    connect(&document, &Document::replaced, this, [this] {
        explain();
        follow();
    });
    explain();
    follow();
}

void CountsPanel::follow() {
    const int row = model_->modelRow(view_.cursor().row);
    if (row < 0 || row >= model_->rowCount()) return;
    const QScopedValueRollback<bool> guard(following_, true);
    table_->setCurrentIndex(model_->index(row, 0));
}

void CountsPanel::explain() {
    const Chart& chart = document_.chart();
    if (!view_.size().isEmpty()) {
        about_->setText(tr("In the stitches of size <b>%1</b>.").arg(view_.size().toHtmlEscaped()));
    } else if (!chart.repeats.empty()) {
        QStringList names;
        for (const Repeat& repeat : chart.repeats) {
            names << QString::fromStdString(repeat.name).toHtmlEscaped();
        }
        about_->setText(tr("For any number of times that <b>%1</b> is worked.")
                            .arg(names.join(QStringLiteral("</b>, <b>"))));
    } else {
        about_->setText(tr("The whole width of the chart."));
    }
}

void CountsPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) model_->setPalette(palette());
    QWidget::changeEvent(event);
}

}  // namespace lacewright::app
