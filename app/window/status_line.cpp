#include "app/window/status_line.h"

#include <QLabel>
#include <QSlider>
#include <QStatusBar>
#include <QToolButton>

#include "app/document/document.h"
#include "app/panels/severity_icon.h"
#include "app/panels/verdict.h"
#include "app/panels/wording.h"

namespace lacewright::app {

namespace {

constexpr int kSliderWidth = 110;   // device-independent pixels
constexpr int kRefusalTime = 8000;  // milliseconds

QLabel* label(QStatusBar& bar, const char* name) {
    auto* made = new QLabel(&bar);
    made->setObjectName(QLatin1String(name));
    made->setTextFormat(Qt::PlainText);
    made->setContentsMargins(6, 0, 6, 0);
    // A long sentence must not force the window wider.
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    return made;
}

}  // namespace

StatusLine::StatusLine(Document& document, ViewState& view, QStatusBar& bar)
    : QObject(&bar),
      document_(document),
      view_(view),
      bar_(bar),
      cell_(label(bar, "statusCell")),
      count_(label(bar, "statusCount")),
      zoom_(new QSlider(Qt::Horizontal, &bar)),
      verdict_(new QToolButton(&bar)) {
    zoom_->setObjectName(QStringLiteral("zoomSlider"));
    zoom_->setAccessibleName(tr("Zoom"));
    zoom_->setToolTip(tr("Size of the cells"));
    zoom_->setRange(ViewState::kSmallestCell, ViewState::kLargestCell);
    zoom_->setValue(view.cellSize());
    zoom_->setFixedWidth(kSliderWidth);
    verdict_->setObjectName(QStringLiteral("statusVerdict"));
    verdict_->setAutoRaise(true);
    verdict_->setFocusPolicy(Qt::TabFocus);
    verdict_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    bar.addWidget(cell_, 5);
    bar.addWidget(count_, 4);
    bar.addPermanentWidget(zoom_);
    bar.addPermanentWidget(verdict_);

    connect(zoom_, &QSlider::valueChanged, &view, &ViewState::zoomTo);
    connect(&view, &ViewState::zoomed, this, [this] { zoom_->setValue(view_.cellSize()); });
    connect(&view, &ViewState::cursorMoved, this, &StatusLine::refreshCell);
    connect(&view, &ViewState::sizeChosen, this, &StatusLine::refreshCell);
    connect(verdict_, &QToolButton::clicked, this, &StatusLine::verdictClicked);
    const auto refreshAll = [this] {
        refreshCell();
        refreshVerdict();
    };
    connect(&document, &Document::changed, this, refreshAll);
    connect(&document, &Document::replaced, this, refreshAll);
    connect(&document, &Document::refused, this,
            [this](const QString& sentence) { bar_.showMessage(sentence, kRefusalTime); });
    refreshAll();
}

void StatusLine::point(std::optional<Cell> cell) {
    pointed_ = cell;
    refreshCell();
}

void StatusLine::refreshCell() {
    const Chart& chart = document_.chart();
    const Cell cell = pointed_.value_or(view_.cursor());
    if (cell.row >= chart.height() || cell.column > chart.width) return;
    const Row& row = chart.row(cell.row);
    const StitchIndex index = row.at(row.ownerOf(cell.column));
    QString text = tr("%1  ·  column %2").arg(rowTitle(chart, cell.row)).arg(cell.column);
    if (index != kCovered) {
        text += QStringLiteral("  ·  ") + stitchSentence((*chart.stitches)[index]);
    }
    cell_->setText(text);
    const Size* size = chart.findSize(view_.size().toStdString());
    const QString who = size ? tr("size %1").arg(view_.size()) : tr("the row");
    count_->setText(tr("In all, %1 %2").arg(who, rowSentence(chart, cell.row, size)));
}

void StatusLine::refreshVerdict() {
    const Verdict verdict = verdictOf(document_.chart(), document_.report());
    const QPalette palette = bar_.palette();
    verdict_->setIcon(verdict.proven ? provenIcon(palette) : severityIcon(verdict.worst, palette));
    verdict_->setText(verdict.shortForm);
    verdict_->setToolTip(verdict.sentence);
    verdict_->setAccessibleName(verdict.sentence);
}

}  // namespace lacewright::app
