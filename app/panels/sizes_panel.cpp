#include "app/panels/sizes_panel.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScopedValueRollback>
#include <QTableView>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/panel_button.h"
#include "app/panels/sizes_model.h"
#include "core/chart/edits.h"

namespace lacewright::app {

namespace {

constexpr int kLeastColumn = 44;  // device-independent pixels

}  // namespace

SizesPanel::SizesPanel(Document& document, ViewState& view, const Commands& commands,
                       QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(view),
      model_(new SizesModel(document, this)),
      table_(new QTableView(this)),
      up_(panelButton(this, tr("Up"), "sizeUp")),
      down_(panelButton(this, tr("Down"), "sizeDown")) {
    table_->setObjectName(QStringLiteral("sizesTable"));
    table_->setAccessibleName(tr("Sizes"));
    table_->setModel(model_);
    table_->setFrameShape(QFrame::NoFrame);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 10);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setMinimumSectionSize(kLeastColumn);
    nameTakesTheRest();

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->setSpacing(6);
    layout->addWidget(table_);
    buildButtons(commands);

    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                if (following_ || !now.isValid()) return;
                const Size* size = model_->sizeAt(now.row());
                view_.chooseSize(size ? QString::fromStdString(size->name) : QString());
            });
    connect(&view, &ViewState::sizeChosen, this, &SizesPanel::follow);
    connect(model_, &SizesModel::renamed, &view, &ViewState::chooseSize);
    connect(model_, &QAbstractItemModel::modelReset, this, [this] {
        nameTakesTheRest();
        follow();
    });
    follow();
}

void SizesPanel::nameTakesTheRest() {
    table_->horizontalHeader()->setSectionResizeMode(SizesModel::kName, QHeaderView::Stretch);
}

void SizesPanel::buildButtons(const Commands& commands) {
    // One size above, all of them below.
    auto* one = new QHBoxLayout;
    auto* all = new QHBoxLayout;
    for (QHBoxLayout* line : {one, all}) line->setSpacing(4);
    const auto place = [this](QHBoxLayout& line, QAction& action, const QString& text,
                              const char* name) {
        QToolButton* made = panelButton(this, text, name);
        made->setEnabled(action.isEnabled());
        made->setToolTip(action.toolTip());
        connect(made, &QToolButton::clicked, &action, &QAction::trigger);
        connect(&action, &QAction::enabledChanged, made, &QWidget::setEnabled);
        line.addWidget(made);
    };
    place(*one, commands.add, tr("Add…"), "sizeAdd");
    place(*one, commands.change, tr("Change…"), "sizeChange");
    place(*one, commands.remove, tr("Remove"), "sizeRemove");
    one->addStretch(1);
    one->addWidget(up_);
    one->addWidget(down_);
    place(*all, commands.plan, tr("Plan…"), "sizePlan");
    place(*all, commands.rules, tr("Rules…"), "sizeRules");
    all->addStretch(1);
    up_->setToolTip(tr("Move the size up in the list"));
    down_->setToolTip(tr("Move the size down in the list"));
    for (QHBoxLayout* line : {one, all}) static_cast<QVBoxLayout*>(layout())->addLayout(line);
    connect(up_, &QToolButton::clicked, this, [this] { move(-1); });
    connect(down_, &QToolButton::clicked, this, [this] { move(1); });
}

void SizesPanel::move(int places) {
    const QString name = view_.size();
    document_.apply(tr("Move size %1").arg(name),
                    moveSize(document_.chart(), name.toStdString(), places));
    follow();
}

void SizesPanel::follow() {
    const int row = model_->rowOf(view_.size());
    up_->setEnabled(row > 1);
    down_->setEnabled(row > 0 && row < model_->rowCount() - 1);
    if (table_->currentIndex().row() == row) return;
    const QScopedValueRollback<bool> guard(following_, true);
    table_->setCurrentIndex(model_->index(row, 0));
}

void SizesPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) model_->setPalette(palette());
    QWidget::changeEvent(event);
}

}  // namespace lacewright::app
