#include "app/panels/findings_tree.h"

#include <QEvent>
#include <QScopedValueRollback>
#include <QTreeWidgetItemIterator>
#include <algorithm>

#include "app/document/document.h"
#include "app/panels/severity_icon.h"
#include "app/panels/wording.h"
#include "app/panels/wrapped_delegate.h"
#include "core/base/text.h"

namespace lacewright::app {

namespace {

constexpr int kMostListed = 500;  // findings; a chart with more has one cause, not hundreds
constexpr int kFindingRole = Qt::UserRole;  // "3" or "3/1": place in the report, then in the fold
constexpr int kSeverityRole = Qt::UserRole + 1;

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

bool hasWord(const QString& sentence, const QString& word) {
    const auto goesOn = [&](qsizetype at) {
        return at >= 0 && at < sentence.size() && sentence[at].isLetterOrNumber();
    };
    for (qsizetype at = sentence.indexOf(word); at >= 0; at = sentence.indexOf(word, at + 1)) {
        if (!goesOn(at - 1) && !goesOn(at + word.size())) return true;
    }
    return false;
}

// Most sentences name the sizes they are about.
bool namesAll(const QString& sentence, const std::vector<std::string>& sizes) {
    return std::all_of(sizes.begin(), sizes.end(), [&](const std::string& size) {
        return hasWord(sentence, QString::fromStdString(size));
    });
}

QString groupTitle(const Chart& chart, int number) {
    if (number == 0) return FindingsTree::tr("The chart as a whole");
    if (const auto row = chart.indexOfRowNumber(number)) return rowTitle(chart, *row);
    return FindingsTree::tr("Row %1, not drawn").arg(number);
}

}  // namespace

FindingsTree::FindingsTree(const Document& document, QWidget* parent)
    : QTreeWidget(parent), document_(document) {
    setObjectName(QStringLiteral("findings"));
    setAccessibleName(tr("Findings"));
    setHeaderHidden(true);
    setFrameShape(QFrame::NoFrame);
    setIndentation(14);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTextElideMode(Qt::ElideNone);
    setWordWrap(true);
    setItemDelegate(new WrappedDelegate(*this));
    connect(this, &QTreeWidget::currentItemChanged, this, &FindingsTree::choose);
    connect(this, &QTreeWidget::itemClicked, this, &FindingsTree::choose);
}

int FindingsTree::list(const std::function<bool(const Finding&)>& wanted) {
    const QScopedValueRollback<bool> guard(filling_, true);
    const QString before = currentItem() ? currentItem()->text(0) : QString();
    clear();
    const auto& findings = document_.report().findings;
    QTreeWidgetItem* group = nullptr;
    int groupRow = -1;
    int listed = 0;
    for (std::size_t i = 0; i < findings.size() && listed < kMostListed; ++i) {
        const Finding& finding = findings[i];
        if (!wanted(finding)) continue;
        if (!group || finding.row != groupRow) group = addGroup(finding.row);
        groupRow = finding.row;
        QTreeWidgetItem* item = addFinding(*group, finding, withoutRow(document_.chart(), finding));
        item->setData(0, kFindingRole, QVariantList{static_cast<int>(i)});
        for (int j = 0; j < item->childCount(); ++j) {
            item->child(j)->setData(0, kFindingRole, QVariantList{static_cast<int>(i), j});
        }
        group->setExpanded(true);
        if (item->text(0) == before) setCurrentItem(item);
        ++listed;
    }
    return listed;
}

QTreeWidgetItem* FindingsTree::addGroup(int rowNumber) {
    auto* group = new QTreeWidgetItem(this, {groupTitle(document_.chart(), rowNumber)});
    QFont bold = font();
    bold.setBold(true);
    group->setFont(0, bold);
    group->setFlags(Qt::ItemIsEnabled);
    return group;
}

QTreeWidgetItem* FindingsTree::addFinding(QTreeWidgetItem& parent, const Finding& finding,
                                          const QString& sentence) {
    auto* item = new QTreeWidgetItem(&parent);
    QString text = sentence;
    if (!namesAll(sentence, finding.sizes)) {
        text = tr("%1 (%2)").arg(text, QString::fromStdString(listing(finding.sizes)));
    }
    item->setText(0, text);
    item->setIcon(0, severityIcon(finding.severity, palette()));
    item->setData(0, kSeverityRole, static_cast<int>(finding.severity));
    item->setData(0, Qt::AccessibleTextRole, severityWord(finding.severity) + ": " + text);
    item->setToolTip(0, severityWord(finding.severity));
    for (const Finding& folded : finding.folded) {
        const bool sameRow = folded.row == finding.row;
        addFinding(*item, folded,
                   sameRow ? withoutRow(document_.chart(), folded)
                           : QString::fromStdString(folded.message));
    }
    return item;
}

const Finding* FindingsTree::chosen() const {
    if (!currentItem()) return nullptr;
    const QVariantList place = currentItem()->data(0, kFindingRole).toList();
    const auto& findings = document_.report().findings;
    if (place.isEmpty() || place[0].toUInt() >= findings.size()) return nullptr;
    const Finding& finding = findings[place[0].toUInt()];
    if (place.size() == 1) return &finding;
    return place[1].toUInt() < finding.folded.size() ? &finding.folded[place[1].toUInt()] : nullptr;
}

void FindingsTree::changeEvent(QEvent* event) {
    QTreeWidget::changeEvent(event);
    if (event->type() != QEvent::PaletteChange) return;
    const QScopedValueRollback<bool> guard(filling_, true);
    for (QTreeWidgetItemIterator at(this); *at; ++at) {
        const QVariant severity = (*at)->data(0, kSeverityRole);
        if (severity.isValid())
            (*at)->setIcon(0, severityIcon(static_cast<Severity>(severity.toInt()), palette()));
    }
}

void FindingsTree::choose() {
    if (!filling_) Q_EMIT findingChosen();
}

void FindingsTree::step(int direction) {
    std::vector<QTreeWidgetItem*> items;
    for (int i = 0; i < topLevelItemCount(); ++i) {
        for (int j = 0; j < topLevelItem(i)->childCount(); ++j) {
            items.push_back(topLevelItem(i)->child(j));
        }
    }
    if (items.empty()) return;
    const auto count = static_cast<int>(items.size());
    const auto now = std::find(items.begin(), items.end(), currentItem());
    int next = direction > 0 ? 0 : count - 1;
    if (now != items.end()) {
        next = (static_cast<int>(now - items.begin()) + direction + count) % count;
    }
    QTreeWidgetItem* item = items[static_cast<std::size_t>(next)];
    if (item == currentItem()) {
        choose();
    } else {
        setCurrentItem(item);
    }
}

}  // namespace lacewright::app
