#include "app/panels/counts_model.h"

#include <QPalette>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/panels/severity_icon.h"
#include "app/panels/wording.h"

namespace lacewright::app {

namespace {

QString changeText(const AffineForm& net, const Chart& chart) {
    if (net == AffineForm(0)) return QStringLiteral("0");
    const QString text = formText(net, chart);
    const bool sign = text.startsWith(QLatin1Char('-')) || text.startsWith(QChar(0x2212));
    return sign ? text : QLatin1Char('+') + text;
}

}  // namespace

CountsModel::CountsModel(Document& document, ViewState& view, QObject* parent)
    : QAbstractTableModel(parent), document_(document), view_(view) {
    connect(&document, &Document::replaced, this, &CountsModel::rebuild);
    connect(&document, &Document::changed, this, &CountsModel::refresh);
    connect(&view, &ViewState::sizeChosen, this, &CountsModel::refresh);
    setPalette(QPalette());
    rebuild();
}

int CountsModel::chartRow(int modelRow) const {
    return rows_ - 1 - modelRow;
}
int CountsModel::modelRow(int chartRow) const {
    return rows_ - 1 - chartRow;
}

void CountsModel::setPalette(const QPalette& palette) {
    for (const Severity severity : {Severity::Note, Severity::Warning, Severity::Fault}) {
        icons_[severity] = severityIcon(severity, palette);
    }
}

void CountsModel::findWorst() {
    worst_.clear();
    const Chart& chart = document_.chart();
    for (const Finding& finding : document_.report().findings) {
        const auto row = chart.indexOfRowNumber(finding.row);
        if (!row || finding.severity == Severity::Note) continue;
        Severity& worst = worst_.try_emplace(*row, finding.severity).first->second;
        worst = std::max(worst, finding.severity);
    }
}

void CountsModel::rebuild() {
    beginResetModel();
    rows_ = document_.chart().height();
    findWorst();
    endResetModel();
}

void CountsModel::refresh() {
    if (rows_ != document_.chart().height()) {
        rebuild();
        return;
    }
    findWorst();
    if (rows_ > 0) Q_EMIT dataChanged(index(0, 0), index(rows_ - 1, kColumns - 1));
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, kColumns - 1);
}

int CountsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : rows_;
}

int CountsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QVariant CountsModel::data(const QModelIndex& index, int role) const {
    const Chart& chart = document_.chart();
    const int row = chartRow(index.row());
    if (role == Qt::TextAlignmentRole) {
        return static_cast<int>(Qt::AlignVCenter | Qt::AlignRight);
    }
    if (role == Qt::DecorationRole && index.column() == kRow) {
        const auto worst = worst_.find(row);
        return worst == worst_.end() ? QVariant() : icons_.at(worst->second);
    }
    const Size* size = chart.findSize(view_.size().toStdString());
    if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) {
        return rowTitle(chart, row) + QStringLiteral(": ") + rowSentence(chart, row, size);
    }
    if (role != Qt::DisplayRole) return {};
    if (index.column() == kRow) return rowLabel(chart, row);
    const RowForms forms = countsOf(chart, row, size);
    switch (index.column()) {
        case kTakes:
            return formText(forms.takes, chart);
        case kMakes:
            return formText(forms.makes, chart);
        default:
            return changeText(forms.net(), chart);
    }
}

QVariant CountsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignVCenter | Qt::AlignRight);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case kRow:
            return document_.chart().worked == Worked::InTheRound ? tr("Round") : tr("Row");
        case kTakes:
            return tr("Takes");
        case kMakes:
            return tr("Makes");
        default:
            return tr("Change");
    }
}

}  // namespace lacewright::app
