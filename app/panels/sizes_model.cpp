#include "app/panels/sizes_model.h"

#include <QFont>
#include <QPalette>
#include <algorithm>

#include "app/document/document.h"
#include "app/panels/severity_icon.h"
#include "app/panels/wording.h"
#include "core/chart/edits.h"

namespace lacewright::app {

namespace {

// A column by its number or by the name of a point; nothing when it is neither.
std::optional<int> placeFrom(const Chart& chart, const QString& text) {
    bool number = false;
    const int column = text.trimmed().toInt(&number);
    if (number) return column;
    if (const Point* point = chart.findPoint(text.trimmed().toStdString())) return point->column;
    return std::nullopt;
}

}  // namespace

SizesModel::SizesModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document) {
    connect(&document, &Document::changed, this, &SizesModel::refresh);
    connect(&document, &Document::replaced, this, &SizesModel::refresh);
    setPalette(QPalette());
    refresh();
}

void SizesModel::setPalette(const QPalette& palette) {
    proven_ = provenIcon(palette);
    warned_ = severityIcon(Severity::Warning, palette);
    faulty_ = severityIcon(Severity::Fault, palette);
}

void SizesModel::refresh() {
    const Chart& chart = document_.chart();
    const int rows = static_cast<int>(chart.sizes.size()) + 1;
    const int repeats = static_cast<int>(chart.repeats.size());
    if (rows == rows_ && repeats == repeats_) {
        Q_EMIT dataChanged(index(0, 0), index(rows_ - 1, columnCount() - 1));
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
        return;
    }
    beginResetModel();
    rows_ = rows;
    repeats_ = repeats;
    endResetModel();
}

const Size* SizesModel::sizeAt(int row) const {
    const auto& sizes = document_.chart().sizes;
    if (row < 1 || row > static_cast<int>(sizes.size())) return nullptr;
    return &sizes[static_cast<std::size_t>(row - 1)];
}

int SizesModel::rowOf(const QString& size) const {
    // The chart may have lost a size that the table still shows.
    for (int row = 1; row < rows_; ++row) {
        const Size* shown = sizeAt(row);
        if (shown && shown->name == size.toStdString()) return row;
    }
    return 0;
}

int SizesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rows_;
}

int SizesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : computedColumn() + 1;
}

Severity SizesModel::verdictOn(const Size& size) const {
    Severity worst = Severity::Note;
    for (const Finding& finding : document_.report().findings) {
        const bool concerned =
            finding.sizes.empty() ||
            std::find(finding.sizes.begin(), finding.sizes.end(), size.name) != finding.sizes.end();
        if (concerned) worst = std::max(worst, finding.severity);
    }
    return worst;
}

QVariant SizesModel::text(const Size& size, int column, bool editing) const {
    const Chart& chart = document_.chart();
    if (column == kName) return QString::fromStdString(size.name);
    if (column == kStart || column == kEnd) {
        const int place = column == kStart ? size.reach.start : size.reach.end;
        if (editing) return QString::number(place);
        return placeText(chart, place);
    }
    if (column == expectedColumn()) {
        if (size.stitches) return QString::number(*size.stitches);
        return editing ? QString() : QStringLiteral("–");
    }
    if (column == computedColumn()) {
        if (chart.height() == 0) return {};
        return formText(countsOf(chart, 0, &size).takes, chart);
    }
    const auto repeat = static_cast<std::size_t>(column - kFirstRepeat);
    const auto times = size.times.find(chart.repeats[repeat].name);
    if (times != size.times.end()) return QString::number(times->second);
    return editing ? QString() : QStringLiteral("any");
}

QVariant SizesModel::wholeChart(int column, int role) const {
    const Chart& chart = document_.chart();
    if (role == Qt::FontRole) {
        QFont font;
        font.setItalic(true);
        return font;
    }
    if (role != Qt::DisplayRole) return {};
    if (column == kName) return tr("Whole chart");
    if (column == kStart) return placeText(chart, 1);
    if (column == kEnd) return placeText(chart, chart.width);
    if (column == computedColumn() && chart.height() > 0) {
        return formText(countsOf(chart, 0, nullptr).takes, chart);
    }
    return column >= kFirstRepeat && column < expectedColumn() ? tr("any") : QStringLiteral("–");
}

QVariant SizesModel::data(const QModelIndex& index, int role) const {
    const int column = index.column();
    if (role == Qt::TextAlignmentRole) {
        return static_cast<int>(Qt::AlignVCenter |
                                (column == kName ? Qt::AlignLeft : Qt::AlignRight));
    }
    const Size* size = sizeAt(index.row());
    if (!size) return wholeChart(column, role);
    const bool marked = column == computedColumn();
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            return text(*size, column, role == Qt::EditRole);
        case Qt::DecorationRole:
            if (!marked) return {};
            switch (verdictOn(*size)) {
                case Severity::Fault:
                    return faulty_;
                case Severity::Warning:
                    return warned_;
                case Severity::Note:
                    return proven_;
            }
            return {};
        case Qt::ToolTipRole:
            if (!marked) return {};
            switch (verdictOn(*size)) {
                case Severity::Fault:
                    return tr("This size has a fault");
                case Severity::Warning:
                    return tr("This size has a warning");
                case Severity::Note:
                    return tr("Nothing is wrong with this size");
            }
            return {};
        default:
            return {};
    }
}

QVariant SizesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return static_cast<int>(Qt::AlignVCenter |
                                (section == kName ? Qt::AlignLeft : Qt::AlignRight));
    }
    const bool tip = role == Qt::ToolTipRole;
    if (role != Qt::DisplayRole && !tip) return {};
    if (section == kName) return tr("Size");
    if (section == kStart) return tip ? tr("The column it starts with, at the right") : tr("Start");
    if (section == kEnd) return tip ? tr("The column it ends with, at the left") : tr("End");
    if (section == expectedColumn()) {
        return tip ? tr("Stitches the designer expects before row 1") : tr("Expects");
    }
    if (section == computedColumn()) {
        return tip ? tr("Stitches that row 1 takes, as counted") : tr("Counts");
    }
    const auto& repeats = document_.chart().repeats;
    const auto repeat = static_cast<std::size_t>(section - kFirstRepeat);
    if (repeat >= repeats.size()) return {};
    const QString name = QString::fromStdString(repeats[repeat].name);
    return tip ? tr("How often repeat %1 is worked in full").arg(name) : tr("%1 ×").arg(name);
}

Qt::ItemFlags SizesModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (index.row() > 0 && index.column() != computedColumn()) flags |= Qt::ItemIsEditable;
    return flags;
}

bool SizesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const Size* now = sizeAt(index.row());
    if (role != Qt::EditRole || !now) return false;
    const Chart& chart = document_.chart();
    const std::string name = now->name;
    const QString entered = value.toString().trimmed();
    const int column = index.column();
    Size size = *now;
    bool number = false;
    const int amount = entered.toInt(&number);
    if (column == kName) {
        size.name = entered.toStdString();
    } else if (column == kStart || column == kEnd) {
        const auto place = placeFrom(chart, entered);
        if (!place) return false;
        (column == kStart ? size.reach.start : size.reach.end) = *place;
    } else if (column == expectedColumn()) {
        size.stitches.reset();
        if (number) size.stitches = amount;
        if (!number && !entered.isEmpty()) return false;
    } else {
        const std::string& repeat =
            chart.repeats[static_cast<std::size_t>(column - kFirstRepeat)].name;
        if (!number && !entered.isEmpty()) return false;
        if (number) {
            size.times[repeat] = amount;
        } else {
            size.times.erase(repeat);
        }
    }
    const bool done = document_.apply(tr("Change size %1").arg(QString::fromStdString(name)),
                                      changeSize(chart, name, size));
    if (done && column == kName) Q_EMIT renamed(entered);
    return done;
}

}  // namespace lacewright::app
