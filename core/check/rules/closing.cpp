#include <algorithm>

#include "core/base/text.h"
#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

RowRepeat rowsAgain(const Chart& chart) {
    return chart.rowRepeat.value_or(RowRepeat{0, chart.height() - 1, 0});
}

// What the last row leaves minus what the first one takes, over the whole width.
AffineForm difference(const Survey& survey, const RowRepeat& rows) {
    const Needle needle = survey.needleAtEnd();
    return needle.settled(survey.forms()[static_cast<std::size_t>(rows.lastRow)].makes -
                          survey.forms()[static_cast<std::size_t>(rows.firstRow)].takes);
}

std::int64_t difference(const SizeSurvey& s, const RowRepeat& rows) {
    return s.counts[static_cast<std::size_t>(rows.lastRow)].makes -
           s.counts[static_cast<std::size_t>(rows.firstRow)].takes;
}

std::string lead(const Chart& chart, const RowRepeat& rows) {
    return rowName(chart, rows.lastRow) + " leaves ";
}

std::string words(const Chart& chart, const AffineForm& form) {
    std::vector<std::string> parts;
    const auto change = [](std::int64_t by) {
        return std::to_string(by > 0 ? by : -by) + (by > 0 ? " more" : " fewer");
    };
    for (const auto& term : form.terms()) {
        const auto index = static_cast<std::size_t>(term.variable);
        parts.push_back(change(term.coefficient) + " in every repeat" +
                        (index < chart.repeats.size() ? " of " + chart.repeats[index].name : ""));
    }
    if (form.constant() != 0 || parts.empty())
        parts.push_back(change(form.constant()) + (parts.empty() ? "" : " outside"));
    return listing(parts);
}

// A shape that grows by whole repeats can go on if the next time works so many more of them.
std::string growthByRepeats(const Survey& survey, const RowRepeat& rows, const AffineForm& rest) {
    const Chart& chart = survey.chart();
    const AffineForm& takes = survey.forms()[static_cast<std::size_t>(rows.firstRow)].takes;
    if (!rest.isConstant() || takes.terms().size() != 1) return {};
    const auto& box = takes.terms().front();
    if (box.coefficient <= 0 || rest.constant() % box.coefficient != 0) return {};
    const std::int64_t by = rest.constant() / box.coefficient;
    return " Worked again it has " + counted(by > 0 ? by : -by, "repeat", "repeats") + " of " +
           chart.repeats[static_cast<std::size_t>(box.variable)].name +
           (by > 0 ? " more" : " fewer") + " each time.";
}

void checkSides(const Survey& survey, const RowRepeat& rows, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    const int count = rows.lastRow - rows.firstRow + 1;
    if (chart.worked == Worked::InTheRound || chart.uncharted != Uncharted::None || count % 2 == 0)
        return;
    findings.push_back(
        note("closing", chart.rowNumber(rows.firstRow),
             "An odd number of rows (" + std::to_string(count) +
                 ") is worked again and again: every second time the right-side rows fall "
                 "on the wrong side."));
}

}  // namespace

std::optional<bool> closes(const Survey& survey) {
    if (survey.height() == 0 || survey.anyMisfit()) return std::nullopt;
    const RowRepeat rows = rowsAgain(survey.chart());
    if (difference(survey, rows) != AffineForm(rows.grows)) return false;
    for (const SizeSurvey& s : survey.sizes()) {
        if (difference(s, rows) != rows.grows) return false;
    }
    return true;
}

void checkClosing(const Survey& survey, std::vector<Finding>& findings) {
    if (survey.height() == 0 || survey.anyMisfit()) return;
    const Chart& chart = survey.chart();
    const RowRepeat rows = rowsAgain(chart);
    const Severity severity = chart.rowRepeat ? Severity::Warning : Severity::Note;
    if (chart.rowRepeat) checkSides(survey, rows, findings);
    const std::string first = lowerAscii(rowName(chart, rows.firstRow));
    const std::string expected =
        rows.grows == 0
            ? ""
            : " (the chart declares " + std::to_string(rows.grows > 0 ? rows.grows : -rows.grows) +
                  (rows.grows > 0 ? " more" : " fewer") + " each time)";
    const AffineForm rest = difference(survey, rows);
    if (rest != AffineForm(rows.grows)) {
        Finding finding =
            note("closing", chart.rowNumber(rows.lastRow),
                 lead(chart, rows) + words(chart, rest) + " than " + first + " takes" + expected +
                     ", so the rows cannot be worked again as drawn." +
                     growthByRepeats(survey, rows, rest));
        finding.severity = severity;
        findings.push_back(std::move(finding));
        return;
    }
    std::map<std::int64_t, std::vector<std::string>> off;
    for (const SizeSurvey& s : survey.sizes()) {
        if (difference(s, rows) != rows.grows) off[difference(s, rows)].push_back(s.size.name);
    }
    for (auto& [by, sizes] : off) {
        Finding finding = note("closing", chart.rowNumber(rows.lastRow),
                               (sizes.size() == 1 ? "Size " : "Sizes ") + listing(sizes) + ": " +
                                   lead(chart, rows) + words(chart, AffineForm(by)) + " than " +
                                   first + " takes" + expected + ".");
        finding.severity = severity;
        finding.sizes = std::move(sizes);
        findings.push_back(std::move(finding));
    }
}

}  // namespace lacewright
