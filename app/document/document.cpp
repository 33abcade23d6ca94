#include "app/document/document.h"

#include <QFileInfo>
#include <utility>

#include "app/document/edit_command.h"

namespace lacewright::app {

namespace {

constexpr int kFirstWidth = 13;
constexpr int kFirstHeight = 12;

ChartChange difference(const Chart& before, const Chart& after) {
    ChartChange change;
    change.frame = !sameFrame(before, after);
    if (change.frame) return change;
    before.rows.forEachDifference(after.rows, [&](std::size_t row) {
        const auto changed = differingColumns(before.rows[row]->cells(), after.rows[row]->cells());
        const int index = static_cast<int>(row);
        if (changed) change.cells.push_back({index, index, changed->right, changed->left});
    });
    return change;
}

}  // namespace

Document::Document(QObject* parent)
    : QObject(parent), chart_(blankChart(kFirstWidth, kFirstHeight)) {
    checker_.update(chart_);
    connect(&undo_, &QUndoStack::cleanChanged, this, &Document::fileStateChanged);
}

Document::~Document() {
    // The stack clears itself in its destructor and would tell views that are gone already.
    undo_.blockSignals(true);
}

QString Document::displayName() const {
    if (!path_.isEmpty()) return QFileInfo(path_).fileName();
    if (!chart_.name.empty()) return QString::fromStdString(chart_.name);
    return tr("Untitled chart");
}

bool Document::apply(const QString& label, Result<Chart> edited, int stroke) {
    if (!edited) {
        Q_EMIT refused(QString::fromStdString(edited.error().message));
        return false;
    }
    if (*edited == chart_) return true;
    undo_.push(new EditCommand(*this, label, *std::move(edited), stroke));
    return true;
}

void Document::replaceWith(Chart chart, const QString& path) {
    undo_.clear();
    chart_ = std::move(chart);
    path_ = path;
    checker_.update(chart_);
    Q_EMIT replaced();
    Q_EMIT fileStateChanged();
}

void Document::markSaved(const QString& path) {
    path_ = path;
    undo_.setClean();
    Q_EMIT fileStateChanged();
}

void Document::show(const Chart& chart) {
    const ChartChange change = difference(chart_, chart);
    chart_ = chart;
    checker_.update(chart_);
    Q_EMIT changed(change);
}

}  // namespace lacewright::app
