#include "app/panels/wording.h"

#include <QCoreApplication>

#include "core/base/text.h"
#include "core/count/path.h"

namespace lacewright::app {

namespace {

QString say(const char* text) {
    return QCoreApplication::translate("wording", text);
}

QString sideLine(const char* side, const SideWording& wording) {
    if (wording.abbreviation.empty()) {
        return say("<br>%1: not worked on this side").arg(say(side));
    }
    QString line =
        QStringLiteral("<br>%1: <b>%2</b>")
            .arg(say(side), QString::fromStdString(wording.abbreviation).toHtmlEscaped());
    if (!wording.instruction.empty()) {
        line += QStringLiteral(" — ") + QString::fromStdString(wording.instruction).toHtmlEscaped();
    }
    return line;
}

}  // namespace

QString rowTitle(const Chart& chart, int row) {
    const int number = chart.rowNumber(row);
    if (chart.worked == Worked::InTheRound) return say("Round %1").arg(number);
    return (chart.sideOf(row) == Side::Right ? say("Row %1, right side")
                                             : say("Row %1, wrong side"))
        .arg(number);
}

QString rowLabel(const Chart& chart, int row) {
    const QChar arrow(chart.sideOf(row) == Side::Right ? 0x2190 : 0x2192);
    return QStringLiteral("%1 %2").arg(chart.rowNumber(row)).arg(arrow);
}

QString placeText(const Chart& chart, int column) {
    const Point* point = chart.pointAt(column);
    return point ? QStringLiteral("%1 (%2)").arg(QString::fromStdString(point->name)).arg(column)
                 : QString::number(column);
}

QString formText(const AffineForm& form, const Chart& chart) {
    return QString::fromStdString(form.text([&chart](Variable repeat) {
        const auto index = static_cast<std::size_t>(repeat);
        return index < chart.repeats.size() ? chart.repeats[index].name : std::string("?");
    }));
}

QString stitchSentence(const Stitch& stitch) {
    return say("%1 (takes %2, makes %3)")
        .arg(QString::fromStdString(stitch.name))
        .arg(stitch.takes)
        .arg(stitch.makes);
}

QString stitchToolTip(const Stitch& stitch) {
    const QString loops = say("takes %1, makes %2").arg(stitch.takes).arg(stitch.makes) +
                          (stitch.span > 1 ? say(", %1 cells wide").arg(stitch.span) : QString());
    return QStringLiteral("<b>%1</b><br>%2")
               .arg(QString::fromStdString(stitch.name).toHtmlEscaped(), loops) +
           sideLine("Right side", stitch.rightSide) + sideLine("Wrong side", stitch.wrongSide);
}

RowForms countsOf(const Chart& chart, int row, const Size* size) {
    const Path path = pathOn(chart, row, size);
    if (!size) return formsOf(chart.row(row), path);
    return formsOf(chart, row, *size, path, timesOf(chart, *size));
}

QString rowSentence(const Chart& chart, int row, const Size* size) {
    const RowForms forms = countsOf(chart, row, size);
    const QString takes = formText(forms.takes, chart);
    if (forms.takes == forms.makes) return say("takes %1 and makes as many").arg(takes);
    return say("takes %1, makes %2").arg(takes, formText(forms.makes, chart));
}

QString severityWord(Severity severity) {
    switch (severity) {
        case Severity::Fault:
            return say("Fault");
        case Severity::Warning:
            return say("Warning");
        case Severity::Note:
            break;
    }
    return say("Note");
}

QString severityCount(Severity severity, int count) {
    switch (severity) {
        case Severity::Fault:
            return QString::fromStdString(counted(count, "fault", "faults"));
        case Severity::Warning:
            return QString::fromStdString(counted(count, "warning", "warnings"));
        case Severity::Note:
            break;
    }
    return QString::fromStdString(counted(count, "note", "notes"));
}

}  // namespace lacewright::app
