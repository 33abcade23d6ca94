#include <algorithm>

#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

StitchKind kindAt(const Chart& chart, int row, int column) {
    const StitchIndex stitch = chart.row(row).at(chart.row(row).ownerOf(column));
    return stitch == kCovered ? StitchKind::Plain : (*chart.stitches)[stitch].kind;
}

// The first column from `from` toward `to` that is worked at all.
int firstWorked(const Chart& chart, int row, int from, int to) {
    const int step = from <= to ? 1 : -1;
    int column = from;
    while (column != to && kindAt(chart, row, column) == StitchKind::NoStitch) column += step;
    return column;
}

void addEdges(const Chart& chart, int row, const Reach& reach, const std::string& size,
              std::map<std::vector<int>, std::vector<std::string>>& found) {
    if (reach.start > reach.end) return;
    std::vector<int> columns;
    for (const int column : {firstWorked(chart, row, reach.start, reach.end),
                             firstWorked(chart, row, reach.end, reach.start)}) {
        if (kindAt(chart, row, column) == StitchKind::YarnOver) columns.push_back(column);
    }
    std::sort(columns.begin(), columns.end());
    columns.erase(std::unique(columns.begin(), columns.end()), columns.end());
    if (!columns.empty()) found[columns].push_back(size);
}

}  // namespace

void checkEdgeYarnOvers(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    const RowTraits& traits = chart.row(row).traits();
    if (!traits.hasYarnOver) return;
    const std::string where = rowName(chart, row);
    const auto warn = [&](std::vector<int> columns, std::vector<std::string> sizes,
                          const std::string& what) {
        Finding finding = note("edge-yarn-over", chart.rowNumber(row),
                               where + ", " + columnWords(columns) + ": " + what);
        finding.severity = Severity::Warning;
        finding.columns = std::move(columns);
        finding.sizes = std::move(sizes);
        findings.push_back(std::move(finding));
    };
    if (chart.worked == Worked::Flat) {
        std::map<std::vector<int>, std::vector<std::string>> found;
        if (survey.sizes().empty()) addEdges(chart, row, {1, chart.width}, "", found);
        for (const SizeSurvey& s : survey.sizes()) {
            const Reach& reach = s.paths.reach(row);
            addEdges(chart, row, {std::max(reach.start, 1), std::min(reach.end, chart.width)},
                     s.size.name, found);
        }
        for (auto& [columns, sizes] : found) {
            if (survey.sizes().empty()) sizes.clear();
            warn(columns, sizes,
                 "a yarn over at the very edge has no stitch outside it to hold it.");
        }
    }
    if (!traits.hasBindOff) return;
    for (int column = 1; column < chart.width; ++column) {
        const StitchKind here = kindAt(chart, row, column);
        const StitchKind left = kindAt(chart, row, column + 1);
        if (here == StitchKind::YarnOver && left == StitchKind::BindOff) {
            warn({column}, {}, "a yarn over beside a bind-off comes undone.");
        } else if (here == StitchKind::BindOff && left == StitchKind::YarnOver) {
            warn({column + 1}, {}, "a yarn over beside a bind-off comes undone.");
        }
    }
}

}  // namespace lacewright
