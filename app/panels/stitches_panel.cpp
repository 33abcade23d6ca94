#include "app/panels/stitches_panel.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QScopedValueRollback>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/stitch_delegate.h"
#include "app/panels/stitch_list_model.h"

namespace lacewright::app {

namespace {

constexpr int kLately = 5;
constexpr int kLeastWidth = 200;  // device-independent pixels: a symbol and most of a name

}  // namespace

StitchesPanel::StitchesPanel(Document& document, ViewState& view, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(view),
      search_(new QLineEdit(this)),
      list_(new QListView(this)),
      model_(new StitchListModel(this)),
      delegate_(new StitchDelegate(this)) {
    search_->setObjectName(QStringLiteral("stitchSearch"));
    search_->setPlaceholderText(tr("Find a stitch"));
    search_->setAccessibleName(tr("Find a stitch"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    list_->setObjectName(QStringLiteral("stitchList"));
    list_->setAccessibleName(tr("Stitches"));
    list_->setModel(model_);
    list_->setItemDelegate(delegate_);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->installEventFilter(this);

    setMinimumWidth(kLeastWidth);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 0);
    layout->setSpacing(6);
    layout->addWidget(search_);
    layout->addWidget(list_);

    refill_.setSingleShot(true);
    refill_.setInterval(0);
    connect(&refill_, &QTimer::timeout, this, &StitchesPanel::fill);
    connect(&document, &Document::changed, &refill_, qOverload<>(&QTimer::start));
    connect(&document, &Document::replaced, this, [this] {
        delegate_->forgetPictures();
        model_->forgetKeys();
        fill();
    });
    connect(&view, &ViewState::stitchChosen, this, &StitchesPanel::markChosen);
    connect(search_, &QLineEdit::textChanged, this, &StitchesPanel::fill);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& index) {
                const QString id = index.data(StitchListModel::kId).toString();
                if (!filling_ && !id.isEmpty()) view_.chooseStitch(id);
            });
    connect(list_, &QListView::activated, this, &StitchesPanel::done);
    fill();
}

void StitchesPanel::focusSearch() {
    search_->setFocus(Qt::ShortcutFocusReason);
    search_->selectAll();
}

void StitchesPanel::chooseByKey(int key) {
    const QStringList& ids = model_->mostUsed();
    if (key >= 1 && key <= ids.size()) view_.chooseStitch(ids[key - 1]);
}

void StitchesPanel::fill() {
    const int scrolled = list_->verticalScrollBar()->value();
    const QScopedValueRollback<bool> quiet(filling_, true);
    model_->show(document_.chart(), lately_, search_->text().trimmed());
    if (search_->text().trimmed().isEmpty()) list_->verticalScrollBar()->setValue(scrolled);
    const int row = model_->rowOf(view_.stitch());
    if (row >= 0) list_->setCurrentIndex(model_->index(row));
}

void StitchesPanel::markChosen() {
    lately_.removeAll(view_.stitch());
    lately_.prepend(view_.stitch());
    while (lately_.size() > kLately) lately_.removeLast();
    // The same stitch may stand under two headings: stay where the person chose it.
    if (list_->currentIndex().data(StitchListModel::kId).toString() == view_.stitch()) return;
    const int row = model_->rowOf(view_.stitch());
    if (row >= 0) {
        list_->setCurrentIndex(model_->index(row));
    } else {
        list_->clearSelection();
    }
}

bool StitchesPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    auto* key = static_cast<QKeyEvent*>(event);
    if (watched == search_) {
        if (key->key() == Qt::Key_Down) {
            list_->setFocus(Qt::TabFocusReason);
            if (!list_->currentIndex().isValid()) list_->setCurrentIndex(model_->index(0));
            return true;
        }
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
            if (const Stitch* best = search_->text().isEmpty() ? nullptr : model_->stitchAt(0)) {
                view_.chooseStitch(QString::fromStdString(best->id));
                search_->clear();
            }
            Q_EMIT done();
            return true;
        }
        if (key->key() == Qt::Key_Escape) {
            search_->clear();
            Q_EMIT done();
            return true;
        }
    } else if (watched == list_) {
        // Typing in the list searches.
        const QString typed = key->text();
        const bool letter = typed.size() == 1 && typed[0].isLetter();
        if (letter && !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
            search_->setFocus(Qt::OtherFocusReason);
            search_->setText(typed);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void StitchesPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) {
        delegate_->forgetPictures();
        list_->viewport()->update();
    }
    QWidget::changeEvent(event);
}

}  // namespace lacewright::app
