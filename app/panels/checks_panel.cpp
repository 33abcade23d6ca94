#include "app/panels/checks_panel.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScopedValueRollback>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/findings_tree.h"
#include "app/panels/mend_buttons.h"
#include "app/panels/severity_icon.h"
#include "app/panels/verdict.h"
#include "app/panels/wording.h"
#include "core/check/advice.h"

namespace lacewright::app {

namespace {

constexpr int kLeastWidth = 240;  // device-independent pixels

QLabel* quietLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

ChecksPanel::ChecksPanel(Document& document, ViewState& view, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(view),
      verdictIcon_(new QLabel(this)),
      verdict_(quietLabel(this)),
      assumed_(quietLabel(this)),
      sizes_(new QComboBox(this)),
      empty_(quietLabel(this)),
      tree_(new FindingsTree(document, this)),
      mends_(new MendButtons(document, this)) {
    verdict_->setObjectName(QStringLiteral("verdict"));
    assumed_->setObjectName(QStringLiteral("assumed"));
    empty_->setObjectName(QStringLiteral("noFindings"));
    QFont bold = verdict_->font();
    bold.setBold(true);
    verdict_->setFont(bold);

    setMinimumWidth(kLeastWidth);
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(verdictIcon_, 0, Qt::AlignTop);
    head->addWidget(verdict_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 8, 10, 4);
    layout->setSpacing(6);
    layout->addLayout(head);
    layout->addWidget(assumed_);
    buildFilters();
    layout->addWidget(empty_);
    layout->addWidget(tree_, 1);
    layout->addWidget(mends_);
    layout->addStretch(0);  // holds the room when the tree is hidden

    connect(&document, &Document::changed, this, &ChecksPanel::refresh);
    connect(&document, &Document::replaced, this, &ChecksPanel::refresh);
    connect(tree_, &FindingsTree::findingChosen, this, &ChecksPanel::chosen);
    refresh();
}

void ChecksPanel::buildFilters() {
    auto* line = new QHBoxLayout;
    line->setSpacing(4);
    for (const Severity severity : {Severity::Fault, Severity::Warning, Severity::Note}) {
        auto* button = new QToolButton(this);
        button->setObjectName(QStringLiteral("show") + severityWord(severity));
        button->setCheckable(true);
        button->setChecked(true);
        button->setFocusPolicy(Qt::TabFocus);
        button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
        connect(button, &QToolButton::toggled, this, &ChecksPanel::fill);
        line->addWidget(button);
        severities_[severity] = button;
    }
    line->addStretch(1);
    sizes_->setObjectName(QStringLiteral("findingsOfSize"));
    sizes_->setAccessibleName(tr("Findings of size"));
    sizes_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    connect(sizes_, &QComboBox::currentIndexChanged, this, [this] {
        if (!filling_) fill();
    });
    // Below: beside the buttons it would cut their words off.
    auto* all = static_cast<QVBoxLayout*>(layout());
    all->addLayout(line);
    all->addWidget(sizes_, 0, Qt::AlignLeft);
}

void ChecksPanel::refresh() {
    showVerdict();
    offerSizes();
    fill();
}

void ChecksPanel::showVerdict() {
    const Verdict verdict = verdictOf(document_.chart(), document_.report());
    const QIcon icon =
        verdict.proven ? provenIcon(palette()) : severityIcon(verdict.worst, palette());
    verdictIcon_->setPixmap(icon.pixmap(16));
    verdict_->setText(verdict.sentence);
    assumed_->setText(verdict.assumed);
    assumed_->setVisible(verdict.proven);
}

void ChecksPanel::offerSizes() {
    const QScopedValueRollback<bool> guard(filling_, true);
    const QString before = sizes_->currentData().toString();
    sizes_->clear();
    sizes_->addItem(tr("All sizes"), QString());
    for (const Size& size : document_.chart().sizes) {
        const QString name = QString::fromStdString(size.name);
        sizes_->addItem(name, name);
    }
    sizes_->setCurrentIndex(std::max(0, sizes_->findData(before)));
    sizes_->setVisible(sizes_->count() > 1 && !document_.report().findings.empty());
}

bool ChecksPanel::isWanted(const Finding& finding) const {
    if (!severities_.at(finding.severity)->isChecked()) return false;
    const std::string size = sizes_->currentData().toString().toStdString();
    return size.empty() || finding.sizes.empty() ||
           std::find(finding.sizes.begin(), finding.sizes.end(), size) != finding.sizes.end();
}

void ChecksPanel::fill() {
    const auto& findings = document_.report().findings;
    std::map<Severity, int> counts;
    for (const Finding& finding : findings) ++counts[finding.severity];
    for (const auto& [severity, button] : severities_) {
        button->setText(severityCount(severity, counts[severity]));
        button->setIcon(severityIcon(severity, palette()));
        button->setVisible(counts[severity] > 0);
    }
    const int listed = tree_->list([this](const Finding& finding) { return isWanted(finding); });
    tree_->setVisible(listed > 0);
    empty_->setVisible(listed == 0 && !findings.empty());
    empty_->setText(tr("No finding is shown with these filters."));
    showMends(tree_->chosen());
}

void ChecksPanel::showMends(const Finding* finding) {
    if (!finding) return mends_->show({});
    Finding advised = *finding;
    advise(document_.chart(), advised);
    mends_->show(advised.mends);
}

void ChecksPanel::chosen() {
    const Finding* finding = tree_->chosen();
    showMends(finding);
    if (finding) goTo(*finding);
}

void ChecksPanel::goTo(const Finding& finding) {
    const Chart& chart = document_.chart();
    auto row = chart.indexOfRowNumber(finding.row);
    // A row that is not drawn: the one below it made its stitches.
    if (!row && finding.row > 1) row = chart.indexOfRowNumber(finding.row - 1);
    if (!row) return;
    const int right = finding.columns.empty() ? 1 : finding.columns.front();
    const int left = finding.columns.empty() ? chart.width : finding.columns.back();
    view_.select({*row, *row, right, left});
    view_.reveal({*row, right});
}

void ChecksPanel::step(int direction) {
    tree_->step(direction);
}

void ChecksPanel::doFirstMend() {
    mends_->doFirst();
}

void ChecksPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) refresh();
    QWidget::changeEvent(event);
}

void ChecksPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    tree_->doItemsLayout();  // sentences break elsewhere now
}

}  // namespace lacewright::app
