#include "app/cli/report_out.h"

#include <algorithm>
#include <ostream>

#include "core/base/text.h"
#include "core/file/report_text.h"

namespace lacewright::cli {
namespace {

// "Row 11: ", unless the sentence begins with it anyway; nothing for the chart as a whole.
std::string placeBefore(const std::string& row, const Finding& finding) {
    if (finding.row == 0) return {};
    const std::string place = row + " " + std::to_string(finding.row);
    const std::string& sentence = finding.message;
    const bool told = lowerAscii(sentence.substr(0, place.size())) == lowerAscii(place) &&
                      (sentence.size() == place.size() ||
                       !(sentence[place.size()] >= '0' && sentence[place.size()] <= '9'));
    return told ? std::string() : place + ": ";
}

void writeFinding(std::ostream& out, const ReportWords& words, const Finding& finding) {
    out << words.file << ": ";
    out << placeBefore(words.row, finding);
    out << severityName(finding.severity) << ": " << finding.message << "\n";
    for (const Mend& mend : finding.mends) {
        out << "    mend: " << mend.label;
        if (!mend.reason.empty()) out << " (" << mend.reason << ")";
        out << "\n";
    }
    for (const Finding& folded : finding.folded) {
        out << "    from the same cause: " << placeBefore(lowerAscii(words.row), folded)
            << folded.message << "\n";
    }
}

std::string verdict(const Report& report, const ReportWords& words) {
    const auto number = [&](Severity severity) {
        return std::count_if(
            report.findings.begin(), report.findings.end(),
            [severity](const Finding& finding) { return finding.severity == severity; });
    };
    if (!report.knittable) {
        return "Cannot be knitted as " + words.made + ": " +
               counted(number(Severity::Fault), "fault", "faults") + ".";
    }
    const auto warnings = number(Severity::Warning);
    return warnings == 0 ? words.proven
                         : words.proven + " " + counted(warnings, "warning", "warnings") + ".";
}

}  // namespace

int tellReport(const Call& call, const Report& report, const ReportWords& words) {
    if (call.has("--json")) {
        call.out << reportText(words.file, report, words.nameOf) << "\n";
    } else {
        for (const Finding& finding : report.findings) writeFinding(call.out, words, finding);
        call.out << words.file << ": " << verdict(report, words) << "\n";
    }
    return report.hasFault() ? kFound : kDone;
}

}  // namespace lacewright::cli
