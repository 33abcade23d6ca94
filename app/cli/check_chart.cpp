#include "app/cli/check_chart.h"

#include <algorithm>

#include "app/cli/nearest.h"
#include "app/cli/report_out.h"
#include "core/check/advice.h"
#include "core/check/proven.h"
#include "core/file/chart_file.h"

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

Outcome knowsSize(const Chart& chart, const std::string& name) {
    if (name == "all" || chart.findSize(name) != nullptr) return Done{};
    std::vector<std::string> names;
    for (const Size& size : chart.sizes) names.push_back(size.name);
    return Error{ErrorCode::NotFound,
                 "The chart has no size \"" + name + "\"" + didYouMean(name, names) + ".",
                 {}};
}

}  // namespace

int checkChart(const Call& call, const std::string& file) {
    const Result<Chart> chart = loadChart(file);
    if (!chart) return call.refuse(chart.error().text());
    const std::string name = call.get("--size", "all");
    if (const Outcome known = knowsSize(*chart, name); !known) {
        return call.refuse(file + ": " + known.error().text());
    }
    Report report = check(*chart);
    advise(*chart, report);
    if (name != "all") report = reportOnSize(report, *chart, *chart->findSize(name));
    ReportWords words;
    words.file = file;
    words.row = chart->worked == Worked::Flat ? "Row" : "Round";
    words.proven = name == "all" ? provenSentence(*chart, report) : "Proven for size " + name + ".";
    words.nameOf = [&](Variable repeat) {
        return chart->repeats[static_cast<std::size_t>(repeat)].name;
    };
    return tellReport(call, report, words);
}

}  // namespace lacewright::cli
