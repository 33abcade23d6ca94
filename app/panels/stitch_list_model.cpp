#include "app/panels/stitch_list_model.h"

#include <QBrush>
#include <algorithm>
#include <array>

#include "app/panels/wording.h"
#include "core/chart/chart.h"

namespace lacewright::app {

namespace {

struct KindHeading {
    StitchKind kind;
    const char* text;
};
// In the order lace charts need them.
constexpr std::array kKindHeadings = {
    KindHeading{StitchKind::Plain, QT_TR_NOOP("Plain")},
    KindHeading{StitchKind::YarnOver, QT_TR_NOOP("Yarn overs")},
    KindHeading{StitchKind::Decrease, QT_TR_NOOP("Decreases")},
    KindHeading{StitchKind::Increase, QT_TR_NOOP("Increases")},
    KindHeading{StitchKind::Gather, QT_TR_NOOP("Gathers and pass-overs")},
    KindHeading{StitchKind::Cross, QT_TR_NOOP("Crossings")},
    KindHeading{StitchKind::Slip, QT_TR_NOOP("Slipped")},
    KindHeading{StitchKind::Texture, QT_TR_NOOP("Texture")},
    KindHeading{StitchKind::BindOff, QT_TR_NOOP("Binding off")},
    KindHeading{StitchKind::CastOn, QT_TR_NOOP("Casting on")},
    KindHeading{StitchKind::NoStitch, QT_TR_NOOP("No stitch")},
    KindHeading{StitchKind::Unknown, QT_TR_NOOP("Not defined")},
};

// 0 for no match; more is better.
int matchOf(const Stitch& stitch, const QString& search) {
    const auto text = [](const std::string& s) { return QString::fromStdString(s); };
    const QString id = text(stitch.id);
    const QString name = text(stitch.name);
    const QString right = text(stitch.rightSide.abbreviation);
    const QString wrong = text(stitch.wrongSide.abbreviation);
    const auto same = [&search](const QString& s) {
        return s.compare(search, Qt::CaseInsensitive) == 0;
    };
    const auto begins = [&search](const QString& s) {
        return s.startsWith(search, Qt::CaseInsensitive);
    };
    const auto holds = [&search](const QString& s) {
        return s.contains(search, Qt::CaseInsensitive);
    };
    if (same(id) || same(right) || same(name)) return 5;
    if (begins(right) || begins(id)) return 4;
    if (begins(name)) return 3;
    if (holds(name) || holds(right) || holds(id)) return 2;
    return holds(wrong) ? 1 : 0;
}

}  // namespace

QStringList stitchesByUse(const Chart& chart) {
    std::vector<std::size_t> uses(chart.stitches->size() + 1, 0);
    for (int row = 0; row < chart.height(); ++row) {
        for (const StitchIndex cell : chart.row(row).cells()) ++uses[cell];
    }
    std::vector<StitchIndex> used;
    const auto knit = chart.stitches->find("k");
    for (std::size_t i = 1; i < uses.size(); ++i) {
        const auto index = static_cast<StitchIndex>(i);
        if (uses[i] > 0 && index != knit) used.push_back(index);
    }
    std::stable_sort(used.begin(), used.end(),
                     [&uses](StitchIndex a, StitchIndex b) { return uses[a] > uses[b]; });
    QStringList ids;
    for (const StitchIndex index : used) {
        ids << QString::fromStdString((*chart.stitches)[index].id);
    }
    return ids;
}

void StitchListModel::show(const Chart& chart, const QStringList& lately, const QString& search) {
    beginResetModel();
    stitches_ = chart.stitches;
    entries_.clear();
    giveKeys(chart);
    if (!search.isEmpty()) {
        addMatches(search);
        endResetModel();
        return;
    }
    const auto group = [this](const QString& heading, const QStringList& ids, bool keys) {
        if (ids.isEmpty()) return;
        entries_.push_back({heading, kCovered, 0});
        for (int i = 0; i < ids.size(); ++i) {
            const auto index = stitches_->find(ids[i].toStdString());
            if (index) entries_.push_back({{}, *index, keys ? i + 1 : 0});
        }
    };
    QStringList others = lately;
    others.removeIf([this](const QString& id) {
        return mostUsed_.contains(id) || !stitches_->find(id.toStdString());
    });
    group(tr("Most used here"), mostUsed_, true);
    group(tr("Chosen lately"), others, false);
    addKinds();
    endResetModel();
}

void StitchListModel::giveKeys(const Chart& chart) {
    const QStringList used = stitchesByUse(chart);
    const QStringList before = mostUsed_;
    mostUsed_ = {QStringLiteral("k")};
    for (const QString& id : before) {
        if (used.contains(id)) mostUsed_ << id;
    }
    for (const QString& id : used) {
        if (mostUsed_.size() < kKeys && !mostUsed_.contains(id)) mostUsed_ << id;
    }
}

void StitchListModel::addKinds() {
    for (const KindHeading& heading : kKindHeadings) {
        bool first = true;
        for (std::size_t i = 1; i <= stitches_->size(); ++i) {
            const auto index = static_cast<StitchIndex>(i);
            if ((*stitches_)[index].kind != heading.kind) continue;
            if (first) entries_.push_back({tr(heading.text), kCovered, 0});
            first = false;
            entries_.push_back({{}, index, 0});
        }
    }
}

void StitchListModel::addMatches(const QString& search) {
    std::vector<std::pair<int, StitchIndex>> found;
    for (std::size_t i = 1; i <= stitches_->size(); ++i) {
        const auto index = static_cast<StitchIndex>(i);
        const int match = matchOf((*stitches_)[index], search);
        if (match > 0) found.emplace_back(match, index);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    for (const auto& [match, index] : found) {
        const auto key = mostUsed_.indexOf(QString::fromStdString((*stitches_)[index].id));
        entries_.push_back({{}, index, static_cast<int>(key) + 1});
    }
}

int StitchListModel::rowOf(const QString& id) const {
    const auto wanted = stitches_->find(id.toStdString());
    if (!wanted) return -1;
    const auto found = std::find_if(entries_.begin(), entries_.end(), [wanted](const Entry& entry) {
        return entry.stitch == *wanted;
    });
    return found == entries_.end() ? -1 : static_cast<int>(found - entries_.begin());
}

const Stitch* StitchListModel::stitchAt(int row) const {
    if (row < 0 || row >= rowCount()) return nullptr;
    const Entry& entry = entries_[static_cast<std::size_t>(row)];
    return entry.heading.isEmpty() ? &(*stitches_)[entry.stitch] : nullptr;
}

int StitchListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(entries_.size());
}

QVariant StitchListModel::data(const QModelIndex& index, int role) const {
    const Entry& entry = entries_[static_cast<std::size_t>(index.row())];
    if (role == kIsHeading) return !entry.heading.isEmpty();
    const Stitch* stitch = stitchAt(index.row());
    if (!stitch) {
        if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) return entry.heading;
        return {};
    }
    switch (role) {
        case Qt::DisplayRole:
            return QString::fromStdString(stitch->name);
        case Qt::AccessibleTextRole:
            return stitchSentence(*stitch);
        case Qt::ToolTipRole:
            return stitchToolTip(*stitch);
        case kId:
            return QString::fromStdString(stitch->id);
        case kAbbreviation:
            return QString::fromStdString(stitch->rightSide.abbreviation);
        case kKey:
            return entry.key;
        default:
            return {};
    }
}

Qt::ItemFlags StitchListModel::flags(const QModelIndex& index) const {
    if (!stitchAt(index.row())) return Qt::NoItemFlags;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

}  // namespace lacewright::app
