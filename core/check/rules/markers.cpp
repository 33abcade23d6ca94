#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

// Loops right of the right edge of each box: what the row takes of them and makes of them. Passes
// of boxes further right count as their variables.
struct Boundary {
    int repeat = 0;
    int column = 1;  // of the box's right edge
    RowForms right;
};

std::vector<Boundary> boundariesOf(const Row& row, const Path& path) {
    std::vector<Boundary> boundaries;
    RowForms right;
    for (const Segment& segment : path) {
        if (segment.isBox()) boundaries.push_back({segment.repeat, segment.first, right});
        addTo(right, row, segment);
    }
    return boundaries;
}

}  // namespace

void checkMarkers(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    // Only where the row or the path changes can a boundary move.
    if (row == 0 || chart.repeats.empty()) return;
    const Path& path = survey.whole().path(row);
    const Path& below = survey.whole().path(row - 1);
    if (&path == &below && !chart.row(row).traits().hasShaping &&
        !chart.row(row - 1).traits().hasShaping)
        return;
    if (survey.misfit(row) != nullptr) return;
    const auto lower = boundariesOf(chart.row(row - 1), below);
    for (const Boundary& now : boundariesOf(chart.row(row), path)) {
        for (const Boundary& then : lower) {
            if (then.repeat != now.repeat) continue;
            const AffineForm step = now.right.takes - then.right.makes;
            if (!step.isConstant() || step.constant() == 0) continue;
            const std::int64_t by = step.constant();
            const std::string& name = chart.repeats[static_cast<std::size_t>(now.repeat)].name;
            Finding finding =
                note("marker", chart.rowNumber(row),
                     rowName(chart, row) + ": the marker before repeat " + name + " moves " +
                         stitchCount(by > 0 ? by : -by) + " to the " + (by > 0 ? "left" : "right") +
                         " as seen from the right side.");
            finding.columns = {now.column};
            findings.push_back(std::move(finding));
        }
    }
}

}  // namespace lacewright
