#include <algorithm>
#include <cstdlib>

#include "core/base/text.h"
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

// Row 1 of a size takes `count` stitches, but `wanted` are expected: which times would do?
void explainExpected(const Survey& survey, const SizeSurvey& s, std::int64_t count,
                     Finding& finding) {
    const Chart& chart = survey.chart();
    const std::int64_t wanted = *s.size.stitches;
    std::vector<std::string> ways;
    std::int64_t nearest = 0;
    std::int64_t step = 0;
    for (const Segment& segment : s.paths.path(0)) {
        if (!segment.isBox()) continue;
        const auto index = static_cast<std::size_t>(segment.repeat);
        const std::int64_t each = chart.row(0).tally(segment.first, segment.last).takes;
        const std::int64_t now = s.times[index].value_or(1);
        if (each == 0) continue;
        if (step == 0) {
            step = each;
            nearest = count + (wanted - count) / each * each;
        }
        const std::int64_t times = now + (wanted - count) / each;
        if ((wanted - count) % each != 0 || times < 0 || times > kMaxTimes) continue;
        const std::string& name = chart.repeats[index].name;
        ways.push_back("working repeat " + name + " " + timesText(times) + " gives " +
                       std::to_string(wanted));
        finding.mends.push_back(
            {"Work repeat " + name + " " + timesText(times) + " in size " + s.size.name,
             "then row 1 takes " + stitchCount(wanted),
             {ChangeTimes{s.size.name, name, static_cast<int>(times)}}});
    }
    finding.mends.push_back({"Expect " + stitchCount(count) + " in size " + s.size.name,
                             "what row 1 takes as drawn",
                             {ChangeExpected{s.size.name, static_cast<int>(count)}}});
    if (!ways.empty()) {
        finding.message += "; " + ways.front() + ".";
    } else if (step > 0) {
        const std::int64_t other = nearest + (wanted > nearest ? step : -step);
        finding.message += "; the nearest counts its repeat can give are " +
                           std::to_string(std::min(nearest, other)) + " and " +
                           std::to_string(std::max(nearest, other)) + ".";
    } else {
        finding.message += ".";
    }
}

void checkCastOn(const Survey& survey, const SizeSurvey& s, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    if (survey.height() == 0) return;
    const std::int64_t count = s.counts[0].takes;
    if (s.size.stitches) {
        if (count == *s.size.stitches) return;
        Finding finding =
            forSize(s, "size-count", Severity::Fault,
                    "Size " + s.size.name + ": row 1 takes " + stitchCount(count) + ", but " +
                        std::to_string(*s.size.stitches) + " are expected");
        finding.row = chart.rowNumber(0);
        explainExpected(survey, s, count, finding);
        findings.push_back(std::move(finding));
        return;
    }
    if (!chart.castOn || chart.castOn->multiple == 0) return;
    const CastOn& castOn = *chart.castOn;
    const std::int64_t over = count - castOn.plus;
    if (over > 0 && over % castOn.multiple == 0) return;
    Finding finding =
        forSize(s, "size-count", Severity::Fault,
                "Size " + s.size.name + ": row 1 takes " + stitchCount(count) +
                    ", which is not a multiple of " + std::to_string(castOn.multiple) +
                    (castOn.plus != 0 ? " plus " + std::to_string(castOn.plus) : "") + ".");
    finding.row = chart.rowNumber(0);
    findings.push_back(std::move(finding));
}

}  // namespace

void checkSizeTimes(const Survey& survey, std::vector<Finding>& findings) {
    for (const SizeSurvey& s : survey.sizes()) checkTimes(survey, s, findings);
}

void checkSizeCounts(const Survey& survey, std::vector<Finding>& findings) {
    for (const SizeSurvey& s : survey.sizes()) checkCastOn(survey, s, findings);
}

}  // namespace lacewright
