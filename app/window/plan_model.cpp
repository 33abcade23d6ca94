#include "app/window/plan_model.h"

#include <QLocale>
#include <QPalette>

#include "core/plan/trade_offs.h"

namespace lacewright::app {

namespace {

const QString kNothing = QStringLiteral("–");

int alignmentOf(int column) {
    const bool words = column == PlanModel::kName || column == PlanModel::kLies;
    const bool places = column == PlanModel::kStart || column == PlanModel::kEnd;
    const Qt::Alignment across = words ? Qt::AlignLeft : places ? Qt::AlignHCenter : Qt::AlignRight;
    return static_cast<int>(Qt::AlignVCenter | across);
}

}  // namespace

void PlanModel::show(std::vector<PlanLine> lines, LengthUnit unit) {
    unit_ = unit;
    if (lines.size() == lines_.size()) {
        lines_ = std::move(lines);
        if (!lines_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, kColumns - 1);
        return;
    }
    beginResetModel();
    lines_ = std::move(lines);
    endResetModel();
}

int PlanModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int PlanModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QVariant PlanModel::text(const PlanLine& line, int column) const {
    if (column == kName) return QString::fromStdString(line.wanted.name);
    if (column == kWanted) return lengthIn(unit_, line.wanted.cm);
    if (!line.planned) return kNothing;
    const EdgeChoice& chosen = line.planned->chosen;
    switch (column) {
        case kWidth:
            return lengthIn(unit_, chosen.cm);
        case kDifference: {
            const QString text = lengthIn(unit_, chosen.differenceCm);
            const bool signless = text.startsWith(QLatin1Char('-')) || text == QLatin1String("0.0");
            return signless ? text : QLatin1Char('+') + text;
        }
        case kStitches:
            return QString::number(chosen.stitches);
        case kTimes:
            return chosen.times == 0 ? kNothing : QString::number(chosen.times);
        case kStart:
            return line.start;
        case kEnd:
            return line.end;
        case kRows:
            return line.rows ? QString::number(*line.rows) : kNothing;
        default:
            return QString::fromStdString(choiceWords(chosen));
    }
}

QVariant PlanModel::data(const QModelIndex& index, int role) const {
    const PlanLine& line = lines_[static_cast<std::size_t>(index.row())];
    const int column = index.column();
    if (role == Qt::DisplayRole) return text(line, column);
    if (role == Qt::EditRole && column == kWanted) return lengthIn(unit_, line.wanted.cm);
    if (role == Qt::CheckStateRole && column == kName) {
        return line.included ? Qt::Checked : Qt::Unchecked;
    }
    if (role == Qt::ForegroundRole && !line.included) {
        return QPalette().brush(QPalette::Disabled, QPalette::Text);
    }
    if (role == Qt::TextAlignmentRole) {
        return alignmentOf(column);
    }
    if (role == Qt::ToolTipRole && column == kLies) return text(line, column);
    return {};
}

QVariant PlanModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return alignmentOf(section);
    }
    const bool tip = role == Qt::ToolTipRole;
    if (!tip && role != Qt::DisplayRole) return {};
    switch (section) {
        case kName:
            return tip ? tr("Ticked sizes are planned") : tr("Size");
        case kWanted:
            return tip ? tr("The finished width that is wanted; type another one")
                       : tr("Wanted, %1").arg(unitWord(unit_));
        case kWidth:
            return tip ? tr("The finished width, edge stitches included")
                       : tr("Width, %1").arg(unitWord(unit_));
        case kDifference:
            return tip ? tr("Width less wanted") : tr("Off");
        case kStitches:
            return tip ? tr("Charted stitches before row 1") : tr("Stitches");
        case kTimes:
            return tip ? tr("How often every repeat is worked in full") : tr("Times");
        case kStart:
            return tip ? tr("Where the size begins, at the right") : tr("Start");
        case kEnd:
            return tip ? tr("Where the size ends, at the left") : tr("End");
        case kRows:
            return tip ? tr("Rows for the length, in whole row repeats") : tr("Rows");
        default:
            return tip ? tr("How the motif lies and what was given up for it") : tr("It lies");
    }
}

Qt::ItemFlags PlanModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (index.column() == kName) flags |= Qt::ItemIsUserCheckable;
    if (index.column() == kWanted) flags |= Qt::ItemIsEditable;
    return flags;
}

bool PlanModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role == Qt::CheckStateRole && index.column() == kName) {
        Q_EMIT ticked(index.row(), value.toInt() == Qt::Checked);
        return true;
    }
    if (role != Qt::EditRole || index.column() != kWanted) return false;
    bool number = false;
    const double typed = QLocale().toDouble(value.toString().trimmed(), &number);
    if (!number) return false;
    Q_EMIT widthTyped(index.row(), inCm(unit_, typed));
    return true;
}

}  // namespace lacewright::app
