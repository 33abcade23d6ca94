#include <cstdlib>

#include "core/base/text.h"
#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"
#include "core/check/sentences.h"

namespace lacewright {
namespace {

// Repeats that share a fixed number of stitches in more than one way.
Finding togetherNote(const Chart& chart, int row, const AffineForm& tie) {
    std::vector<std::string> names;
    for (const auto& term : tie.terms())
        names.push_back(chart.repeats[static_cast<std::size_t>(term.variable)].name);
    return note("continuity", chart.rowNumber(row),
                rowName(chart, row) + " fits only with repeats " + listing(names) + " taking " +
                    stitchCount(std::abs(tie.constant())) + " together.");
}

}  // namespace

void checkContinuity(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Fit* fit = survey.fit(row);
    if (fit == nullptr) return;
    const Chart& chart = survey.chart();
    const auto r = static_cast<std::size_t>(row);
    if (fit->fits()) {
        // It fits, but only from so many repeats on: worth knowing.
        for (const auto& [variable, least] : fit->raised) {
            findings.push_back(note("continuity", chart.rowNumber(row),
                                    rowName(chart, row) + " needs " +
                                        variableName(chart, variable) + " to be at least " +
                                        std::to_string(least) + "."));
        }
        for (const auto& [variable, times] : fit->solved) {
            if (!fixesTimes(variable, times)) continue;
            findings.push_back(note("continuity", chart.rowNumber(row),
                                    rowName(chart, row) + " fits only with repeat " +
                                        chart.repeats[static_cast<std::size_t>(variable)].name +
                                        " worked " + timesText(times.constant()) + "."));
        }
        for (const AffineForm& tie : fit->ties) {
            if (fixesTimes(tie)) findings.push_back(togetherNote(chart, row, tie));
        }
        return;
    }
    MisfitPlace place = placeOf(chart, row);
    place.castOn = row == 0;
    Finding finding;
    finding.rule = row == 0 ? "cast-on" : "continuity";
    finding.severity = Severity::Fault;
    finding.row = chart.rowNumber(row);
    finding.message = misfitSentence(place, survey.forms()[r].takes,
                                     row == 0 ? fit->available : survey.forms()[r - 1].makes, *fit);
    finding.columns = columnsOfDifference(survey, row, *fit);
    findings.push_back(std::move(finding));
}

}  // namespace lacewright
