#include <algorithm>

#include "core/chart/cast_on_words.h"
#include "core/check/rules/first_row.h"
#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

Finding forSize(const SizeSurvey& s, const char* rule, Severity severity, std::string message) {
    Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.sizes = {s.size.name};
    finding.message = std::move(message);
    return finding;
}

// The repeats that the size's path reaches on some row.
std::vector<bool> reached(const Survey& survey, const SizeSurvey& s) {
    std::vector<bool> used(survey.chart().repeats.size());
    for (int row = 0; row < survey.height(); ++row) {
        for (const Segment& segment : s.paths.path(row)) {
            if (segment.isBox()) used[static_cast<std::size_t>(segment.repeat)] = true;
        }
    }
    return used;
}

void checkTimes(const Survey& survey, const SizeSurvey& s, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    const auto used = reached(survey, s);
    for (std::size_t i = 0; i < used.size(); ++i) {
        if (!used[i] || s.size.times.contains(chart.repeats[i].name)) continue;
        findings.push_back(forSize(s, "size-times", Severity::Warning,
                                   "Size " + s.size.name + " does not say how often repeat " +
                                       chart.repeats[i].name + " is worked; once is assumed."));
    }
    for (const auto& [name, times] : s.size.times) {
        if (chart.findRepeat(name) != nullptr) continue;
        findings.push_back(forSize(s, "size-times", Severity::Warning,
                                   "Size " + s.size.name + " works repeat " + name +
                                       ", but the chart has no repeat of that name."));
    }
    const int most = chart.width;
    if (s.size.reach.start > s.size.reach.end || s.size.reach.start < 1 ||
        s.size.reach.end > most) {
        findings.push_back(forSize(s, "size-reach", Severity::Fault,
                                   "Size " + s.size.name + " begins at column " +
                                       std::to_string(s.size.reach.start) + " and ends at column " +
                                       std::to_string(s.size.reach.end) + " of " +
                                       std::to_string(most) + "."));
    }
}

bool gives(const CastOn& castOn, std::int64_t count) {
    const std::int64_t over = count - castOn.plus;
    return castOn.multiple == 0 ? over == 0 : over >= 0 && over % castOn.multiple == 0;
}

void checkCastOn(const Survey& survey, const SizeSurvey& s, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    const FirstRow row(survey, s);
    const bool expects = s.size.stitches.has_value();
    if (gives(*chart.castOn, row.count()) || (expects && row.count() != *s.size.stitches)) return;
    Finding finding = forSize(s, "size-count", Severity::Fault, row.words());
    finding.row = chart.rowNumber(0);
    const bool fixed = chart.castOn->multiple == 0;
    if (expects) {
        // What a size says goes before what the chart says, but one of them is not true.
        finding.severity = Severity::Warning;
        finding.message += " as expected, but ";
        finding.message += fixed ? std::to_string(chart.castOn->plus) + " are cast on."
                                 : "the cast-on is " + castOnText(*chart.castOn) + ".";
    } else if (fixed) {
        finding.message += ", but " + std::to_string(chart.castOn->plus) + " are cast on";
        row.explain(chart.castOn->plus, finding);
    } else {
        finding.message += ", which is not " + castOnText(*chart.castOn) + ".";
    }
    findings.push_back(std::move(finding));
}

}  // namespace

void checkSizeTimes(const Survey& survey, std::vector<Finding>& findings) {
    for (const SizeSurvey& s : survey.sizes()) checkTimes(survey, s, findings);
}

void checkSizeCounts(const Survey& survey, std::vector<Finding>& findings) {
    if (survey.height() == 0 || !survey.chart().castOn) return;
    for (const SizeSurvey& s : survey.sizes()) checkCastOn(survey, s, findings);
}

}  // namespace lacewright
