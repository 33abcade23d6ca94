#include "app/cli/report_out.h"

#include <algorithm>
#include <ostream>

#include "core/base/text.h"
#include "core/file/report_text.h"

namespace lacewright::cli {
namespace {

void writeFinding(std::ostream& out, const ReportWords& words, const Finding& finding) {
    out << words.file << ": ";
    if (finding.row > 0) out << words.row << " " << finding.row << ": ";
    out << severityName(finding.severity) << ": " << finding.message << "\n";
    for (const Mend& mend : finding.mends) {
        out << "    mend: " << mend.label;
        if (!mend.reason.empty()) out << " (" << mend.reason << ")";
        out << "\n";
    }
    for (const Finding& folded : finding.folded) {
        out << "    from the same cause: ";
        if (folded.row > 0) out << lowerAscii(words.row) << " " << folded.row << ": ";
        out << folded.message << "\n";
    }
}

std::string verdict(const Report& report, const std::string& proven) {
    const auto number = [&](Severity severity) {
        return std::count_if(
            report.findings.begin(), report.findings.end(),
            [severity](const Finding& finding) { return finding.severity == severity; });
    };
    if (!report.knittable) {
        return "Cannot be knitted as drawn: " +
               counted(number(Severity::Fault), "fault", "faults") + ".";
    }
    const auto warnings = number(Severity::Warning);
    return warnings == 0 ? proven : proven + " " + counted(warnings, "warning", "warnings") + ".";
}

}  // namespace

int tellReport(const Call& call, const Report& report, const ReportWords& words) {
    if (call.has("--json")) {
        call.out << reportText(words.file, report, words.nameOf) << "\n";
    } else {
        for (const Finding& finding : report.findings) writeFinding(call.out, words, finding);
        call.out << words.file << ": " << verdict(report, words.proven) << "\n";
    }
    return report.hasFault() ? kFound : kDone;
}

}  // namespace lacewright::cli
