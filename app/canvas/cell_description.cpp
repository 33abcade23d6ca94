#include "app/canvas/cell_description.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/canvas/view_scene.h"

namespace lacewright::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("lacewright::app::CellDescription", text);
}

// The stitch a cell shows or belongs to; null for a cell without any.
const Stitch* stitchIn(const Chart& chart, Cell cell) {
    const Row& row = chart.row(cell.row);
    const StitchIndex stitch = row.at(row.ownerOf(cell.column));
    return stitch == kCovered ? nullptr : &(*chart.stitches)[stitch];
}

QString wordingOf(const Chart& chart, Cell cell, const Stitch& stitch) {
    const bool wrong = chart.sideOf(cell.row) == Side::Wrong;
    const SideWording& wording = wrong ? stitch.wrongSide : stitch.rightSide;
    const QString side = wrong ? tr("Wrong side") : tr("Right side");
    if (wording.abbreviation.empty()) return {};
    return QStringLiteral("%1: %2").arg(side, QString::fromStdString(wording.abbreviation));
}

bool isAbout(const Finding& finding, int column) {
    return finding.columns.empty() ||
           std::ranges::find(finding.columns, column) != finding.columns.end();
}

}  // namespace

QString nameOfCell(const Chart& chart, Cell cell) {
    const Stitch* stitch = stitchIn(chart, cell);
    const QString name = stitch != nullptr ? QString::fromStdString(stitch->name) : tr("no stitch");
    return tr("Row %1, column %2: %3").arg(chart.rowNumber(cell.row)).arg(cell.column).arg(name);
}

QString describeCell(const Chart& chart, const Report& report, Cell cell) {
    QStringList lines{nameOfCell(chart, cell)};
    if (const Stitch* stitch = stitchIn(chart, cell)) {
        lines << tr("Takes %1, makes %2").arg(stitch->takes).arg(stitch->makes);
        const QString wording = wordingOf(chart, cell, *stitch);
        if (!wording.isEmpty()) lines << wording;
    }
    for (const Finding& finding : findingsOfRow(report, chart.rowNumber(cell.row))) {
        if (isAbout(finding, cell.column)) lines << QString::fromStdString(finding.message);
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace lacewright::app
