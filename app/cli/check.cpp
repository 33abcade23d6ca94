#include "core/check/check.h"

#include <algorithm>
#include <functional>
#include <ostream>

#include "app/cli/nearest.h"
#include "app/cli/verb.h"
#include "app/cli/written_report.h"
#include "core/base/disk.h"
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

// What the closing line says that was proven.
struct Scope {
    bool sizes = false;    // there are sizes
    bool repeats = false;  // there are counts that stay free
    std::string size;      // "all", or the one that was asked for
};

std::string verdict(const Report& report, const Scope& scope) {
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
    if (scope.size != "all") {
        words += " for size " + scope.size + ".";
    } else if (scope.sizes && scope.repeats) {
        words += " for every size and any number of repeats.";
    } else if (scope.sizes) {
        words += " for every size.";
    } else {
        words += scope.repeats ? " for any number of repeats."
                               : ": every row fits the one below it.";
    }
    const auto warnings = number(Severity::Warning);
    return warnings == 0 ? words : words + " " + counted(warnings, "warning", "warnings") + ".";
}

using NameOfCount = std::function<std::string(Variable)>;

int tell(const Call& call, const std::string& file, const Report& report, const Scope& scope,
         Worked worked, const NameOfCount& nameOf) {
    if (call.has("--json")) {
        call.out << reportText(file, report, nameOf) << "\n";
    } else {
        const char* row = worked == Worked::Flat ? "Row " : "Round ";
        for (const Finding& finding : report.findings) writeFinding(call.out, file, finding, row);
        call.out << file << ": " << verdict(report, scope) << "\n";
    }
    return report.hasFault() ? kFound : kDone;
}

int refuseSize(const Call& call, const std::string& file, const std::string& name,
               const std::vector<std::string>& known) {
    return call.refuse(file + " has no size \"" + name + "\"" + didYouMean(name, known) + ".");
}

int checkRows(const Call& call, const std::string& file) {
    const Result<std::string> text = readFile(file);
    if (!text) return call.refuse(text.error().text());
    const ReadRows read = readWritten(*text);
    if (read.hasErrors()) {
        for (const ReadMessage& message : read.messages) {
            if (message.error) call.err << rendered(message, *text, file) << "\n";
        }
        return kMisuse;
    }
    const WrittenPattern& pattern = read.pattern;
    const std::string name = call.get("--size", "all");
    std::vector<std::size_t> sizes;
    for (std::size_t i = 0; i < pattern.sizeCount(); ++i) {
        if (name == "all" || (i < pattern.sizes.size() && pattern.sizes[i] == name)) sizes.push_back(i);
    }
    if (sizes.empty()) return refuseSize(call, file, name, pattern.sizes);
    const auto [report, names] = reportOnRows(read, sizes);
    const bool free = std::any_of(report.rows.begin(), report.rows.end(), [](const RowCount& row) {
        return !row.forms.takes.isConstant();
    });
    return tell(call, file, report, {!pattern.sizes.empty(), free, name}, pattern.worked,
                [&names = names](Variable count) { return names.nameOf(count); });
}

int checkChart(const Call& call, const std::string& file) {
    const Result<Chart> chart = loadChart(file);
    if (!chart) return call.refuse(chart.error().text());
    const std::string name = call.get("--size", "all");
    const Size* size = chart->findSize(name);
    if (name != "all" && size == nullptr) {
        std::vector<std::string> names;
        for (const Size& known : chart->sizes) names.push_back(known.name);
        return refuseSize(call, file, name, names);
    }
    const Report whole = check(*chart);
    const Report report = size != nullptr ? reportOnSize(whole, *chart, *size) : whole;
    return tell(call, file, report, {!chart->sizes.empty(), !chart->repeats.empty(), name}, chart->worked,
                [&](Variable repeat) { return chart->repeats[static_cast<std::size_t>(repeat)].name; });
}

bool isWrittenRows(const std::string& file) { return lowerAscii(file).ends_with(".txt"); }

}  // namespace

int runCheck(const Call& call) {
    int worst = kDone;
    for (const std::string& file : call.files) {
        worst = std::max(worst, isWrittenRows(file) ? checkRows(call, file) : checkChart(call, file));
    }
    return worst;
}

}  // namespace lacewright::cli
