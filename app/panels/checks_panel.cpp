#include "app/panels/checks_panel.h"

#include "core/check/advice.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScopedValueRollback>
#include <QToolButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/mend_buttons.h"
#include "app/panels/severity_icon.h"
#include "app/panels/verdict.h"
#include "app/panels/wording.h"
#include "app/panels/wrapped_delegate.h"
#include "core/base/text.h"

namespace lacewright::app {

namespace {

constexpr int kMostListed = 500;  // findings; a chart with more has one cause, not hundreds
constexpr int kLeastWidth = 240;  // device-independent pixels
constexpr int kFindingRole = Qt::UserRole;  // "3" or "3/1": place in the report, then in the fold

QLabel* quietLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

// The row is told by the title of the group: "Row 5 takes 9 .." becomes "Takes 9 ..".
QString withoutRow(const Chart& chart, const Finding& finding) {
    QString text = QString::fromStdString(finding.message);
    const QString row =
        (chart.worked == Worked::InTheRound ? QStringLiteral("Round %1") : QStringLiteral("Row %1"))
            .arg(finding.row);
    for (const char* end : {": ", ", ", " "}) {
        const QString prefix = row + QLatin1String(end);
        if (!text.startsWith(prefix)) continue;
        text.remove(0, prefix.size());
        if (!text.isEmpty()) text[0] = text[0].toUpper();
        break;
    }
    return text;
}

QString groupTitle(const Chart& chart, int number) {
    if (number == 0) return ChecksPanel::tr("The chart as a whole");
    if (const auto row = chart.indexOfRowNumber(number)) return rowTitle(chart, *row);
    return ChecksPanel::tr("Row %1, not drawn").arg(number);
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
      tree_(new QTreeWidget(this)),
      mends_(new MendButtons(document, this)) {
    verdict_->setObjectName(QStringLiteral("verdict"));
    assumed_->setObjectName(QStringLiteral("assumed"));
    empty_->setObjectName(QStringLiteral("noFindings"));
    QFont bold = verdict_->font();
    bold.setBold(true);
    verdict_->setFont(bold);
    tree_->setObjectName(QStringLiteral("findings"));
    tree_->setAccessibleName(tr("Findings"));
    tree_->setHeaderHidden(true);
    tree_->setFrameShape(QFrame::NoFrame);
    tree_->setIndentation(14);
    tree_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    tree_->setTextElideMode(Qt::ElideNone);
    tree_->setWordWrap(true);
    tree_->setItemDelegate(new WrappedDelegate(*tree_));

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
    connect(tree_, &QTreeWidget::currentItemChanged, this, &ChecksPanel::chosen);
    connect(tree_, &QTreeWidget::itemClicked, this, &ChecksPanel::chosen);
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
    const QScopedValueRollback<bool> guard(filling_, true);
    const QString before = tree_->currentItem() ? tree_->currentItem()->text(0) : QString();
    const auto& findings = document_.report().findings;
    std::map<Severity, int> counts;
    for (const Finding& finding : findings) ++counts[finding.severity];
    for (const auto& [severity, button] : severities_) {
        button->setText(severityCount(severity, counts[severity]));
        button->setIcon(severityIcon(severity, palette()));
        button->setVisible(counts[severity] > 0);
    }
    tree_->clear();
    QFont bold = tree_->font();
    bold.setBold(true);
    QTreeWidgetItem* group = nullptr;
    int groupRow = -1;
    int listed = 0;
    for (std::size_t i = 0; i < findings.size() && listed < kMostListed; ++i) {
        const Finding& finding = findings[i];
        if (!isWanted(finding)) continue;
        if (!group || finding.row != groupRow) {
            group = new QTreeWidgetItem(tree_, {groupTitle(document_.chart(), finding.row)});
            group->setFont(0, bold);
            group->setFlags(Qt::ItemIsEnabled);
            groupRow = finding.row;
        }
        addFinding(*group, finding, withoutRow(document_.chart(), finding));
        QTreeWidgetItem* item = group->child(group->childCount() - 1);
        item->setData(0, kFindingRole, QVariantList{static_cast<int>(i)});
        for (int j = 0; j < item->childCount(); ++j) {
            item->child(j)->setData(0, kFindingRole, QVariantList{static_cast<int>(i), j});
        }
        group->setExpanded(true);
        if (item->text(0) == before) tree_->setCurrentItem(item);
        ++listed;
    }
    tree_->setVisible(listed > 0);
    empty_->setVisible(listed == 0 && !findings.empty());
    empty_->setText(tr("No finding is shown with these filters."));
    const Finding* now = findingOf(tree_->currentItem());
    showMends(now);
}

void ChecksPanel::showMends(const Finding* finding) {
    if (!finding) return mends_->show({});
    Finding advised = *finding;
    advise(document_.chart(), advised);
    mends_->show(advised.mends);
}

void ChecksPanel::addFinding(QTreeWidgetItem& parent, const Finding& finding,
                             const QString& sentence) {
    auto* item = new QTreeWidgetItem(&parent);
    QString text = sentence;
    if (!finding.sizes.empty()) {
        text = tr("%1 (%2)").arg(text, QString::fromStdString(listing(finding.sizes)));
    }
    item->setText(0, text);
    item->setIcon(0, severityIcon(finding.severity, palette()));
    item->setData(0, Qt::AccessibleTextRole, severityWord(finding.severity) + ": " + text);
    item->setToolTip(0, severityWord(finding.severity));
    for (const Finding& folded : finding.folded) {
        const bool sameRow = folded.row == finding.row;
        addFinding(*item, folded,
                   sameRow ? withoutRow(document_.chart(), folded)
                           : QString::fromStdString(folded.message));
    }
}

const Finding* ChecksPanel::findingOf(const QTreeWidgetItem* item) const {
    if (!item) return nullptr;
    const QVariantList place = item->data(0, kFindingRole).toList();
    const auto& findings = document_.report().findings;
    if (place.isEmpty() || place[0].toUInt() >= findings.size()) return nullptr;
    const Finding& finding = findings[place[0].toUInt()];
    if (place.size() == 1) return &finding;
    return place[1].toUInt() < finding.folded.size() ? &finding.folded[place[1].toUInt()] : nullptr;
}

void ChecksPanel::chosen() {
    if (filling_) return;
    const Finding* finding = findingOf(tree_->currentItem());
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
    std::vector<QTreeWidgetItem*> items;
    for (int i = 0; i < tree_->topLevelItemCount(); ++i) {
        for (int j = 0; j < tree_->topLevelItem(i)->childCount(); ++j) {
            items.push_back(tree_->topLevelItem(i)->child(j));
        }
    }
    if (items.empty()) return;
    const auto count = static_cast<int>(items.size());
    const auto now = std::find(items.begin(), items.end(), tree_->currentItem());
    int next = direction > 0 ? 0 : count - 1;
    if (now != items.end()) {
        next = (static_cast<int>(now - items.begin()) + direction + count) % count;
    }
    QTreeWidgetItem* item = items[static_cast<std::size_t>(next)];
    if (item == tree_->currentItem()) {
        chosen();
    } else {
        tree_->setCurrentItem(item);
    }
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
