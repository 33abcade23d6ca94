#include "core/check/check.h"

#include <algorithm>
#include <ostream>

#include "app/cli/nearest.h"
#include "app/cli/verb.h"
#include "core/base/text.h"
#include "core/file/chart_file.h"
#include "core/file/report_text.h"

namespace lacewright::cli {
namespace {

bool concerns(const Finding& finding, const std::string& size) {
    return finding.sizes.empty() ||
           std::find(finding.sizes.begin(), finding.sizes.end(), size) != finding.sizes.end();
}

// What a report says about one size: its findings, and the rows as the size works them.
Report reportOnSize(const Report& whole, const Chart& chart, const Size& size) {
    Report report = whole;
    std::erase_if(report.findings,
                  [&](const Finding& finding) { return !concerns(finding, size.name); });
    report.knittable = !report.hasFault();
    const Times times = timesOf(chart, size);
    for (RowCount& row : report.rows) {
        const auto index = chart.indexOfRowNumber(row.number);
        if (!index) continue;
        row.forms = formsOf(chart, *index, size, pathOn(chart, *index, &size), times);
    }
    return report;
}

void writeFinding(std::ostream& out, const std::string& file, const Finding& finding,
                  const char* row) {
    out << file << ": ";
    if (finding.row > 0) out << row << finding.row << ": ";
    out << severityName(finding.severity) << ": " << finding.message << "\n";
    for (const Mend& mend : finding.mends) {
        out << "    mend: " << mend.label;
        if (!mend.reason.empty()) out << " (" << mend.reason << ")";
        out << "\n";
    }
    for (const Finding& folded : finding.folded) {
        out << "    from the same cause: ";
        if (folded.row > 0) out << lowerAscii(row) << folded.row << ": ";
        out << folded.message << "\n";
    }
}

std::string verdict(const Report& report, const Chart& chart, const std::string& size) {
    const auto number = [&](Severity severity) {
        return std::count_if(
            report.findings.begin(), report.findings.end(),
            [severity](const Finding& finding) { return finding.severity == severity; });
    };
    if (!report.knittable) {
        return "Cannot be knitted as drawn: " +
               counted(number(Severity::Fault), "fault", "faults") + ".";
    }
    std::string words = "Proven";
    const bool sizes = !chart.sizes.empty();
    if (size != "all") {
        words += " for size " + size + ".";
    } else if (sizes && !chart.repeats.empty()) {
        words += " for every size and any number of repeats.";
    } else if (sizes) {
        words += " for every size.";
    } else {
        words += chart.repeats.empty() ? ": every row fits the one below it."
                                       : " for any number of repeats.";
    }
    const auto warnings = number(Severity::Warning);
    return warnings == 0 ? words : words + " " + counted(warnings, "warning", "warnings") + ".";
}

int checkChart(const Call& call, const std::string& file) {
    const Result<Chart> chart = loadChart(file);
    if (!chart) return call.refuse(chart.error().text());
    const std::string name = call.get("--size", "all");
    const Size* size = chart->findSize(name);
    if (name != "all" && size == nullptr) {
        std::vector<std::string> names;
        for (const Size& known : chart->sizes) names.push_back(known.name);
        return call.refuse(file + " has no size \"" + name + "\"" + didYouMean(name, names) + ".");
    }
    const Report whole = check(*chart);
    const Report report = size != nullptr ? reportOnSize(whole, *chart, *size) : whole;
    if (call.has("--json")) {
        call.out << reportText(file, report, [&](Variable repeat) {
            return chart->repeats[static_cast<std::size_t>(repeat)].name;
        }) << "\n";
    } else {
        const char* row = chart->worked == Worked::Flat ? "Row " : "Round ";
        for (const Finding& finding : report.findings) writeFinding(call.out, file, finding, row);
        call.out << file << ": " << verdict(report, *chart, name) << "\n";
    }
    return report.hasFault() ? kFound : kDone;
}

}  // namespace

int runCheck(const Call& call) {
    int worst = kDone;
    for (const std::string& file : call.files) worst = std::max(worst, checkChart(call, file));
    return worst;
}

}  // namespace lacewright::cli
