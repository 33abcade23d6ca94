#include "app/panels/verdict.h"

#include <QCoreApplication>
#include <QStringList>
#include <map>

#include "app/panels/wording.h"
#include "core/base/text.h"
#include "core/chart/cast_on_words.h"
#include "core/check/proven.h"

namespace lacewright::app {

namespace {

QString say(const char* text) {
    return QCoreApplication::translate("verdict", text);
}

QString stitches(long long count) {
    return QString::fromStdString(counted(count, "stitch", "stitches"));
}

QString castOnWords(const CastOn& castOn) {
    return say("a cast-on of %1").arg(QString::fromStdString(castOnText(castOn)));
}

QString betweenWords(Uncharted rule) {
    switch (rule) {
        case Uncharted::AsTheyPresent:
            return say("rows that are not drawn work every stitch as it presents");
        case Uncharted::Purl:
            return say("rows that are not drawn are purled");
        case Uncharted::Knit:
            return say("rows that are not drawn are knitted");
        case Uncharted::None:
            break;
    }
    return {};
}

QString assumptionsOf(const Chart& chart) {
    QStringList parts;
    if (chart.castOn) {
        parts << castOnWords(*chart.castOn);
    } else {
        parts << say("as many stitches on the needle as row 1 takes");
    }
    const QString between = betweenWords(chart.uncharted);
    if (!between.isEmpty()) parts << between;
    if (chart.rowRepeat && chart.rowRepeat->grows != 0) {
        parts
            << say("the row repeat growing by %1 each time").arg(stitches(chart.rowRepeat->grows));
    }
    return say("Assumed: %1.").arg(parts.join(QStringLiteral("; ")));
}

}  // namespace

Verdict verdictOf(const Chart& chart, const Report& report) {
    std::map<Severity, int> counts;
    for (const Finding& finding : report.findings) ++counts[finding.severity];
    Verdict verdict;
    verdict.assumed = assumptionsOf(chart);
    QStringList parts;
    for (const Severity severity : {Severity::Fault, Severity::Warning}) {
        if (counts[severity] > 0) parts << severityCount(severity, counts[severity]);
    }
    if (counts[Severity::Fault] > 0 || !report.knittable) {
        verdict.worst = Severity::Fault;
        verdict.sentence = say("This cannot be knitted as drawn.");
    } else if (counts[Severity::Warning] > 0) {
        verdict.worst = Severity::Warning;
        verdict.sentence = say("This can be knitted, but it may surprise.");
    } else {
        verdict.proven = true;
        verdict.sentence = QString::fromStdString(provenSentence(chart, report));
        parts << say("Proven");
    }
    verdict.shortForm = parts.isEmpty() ? verdict.sentence : parts.join(QStringLiteral(", "));
    return verdict;
}

}  // namespace lacewright::app
