#include <algorithm>

#include "core/base/text.h"
#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

void checkOverlap(const Chart& chart, const Repeat& a, const Repeat& b,
                  std::vector<Finding>& findings) {
    const int first = std::max(a.firstRow, b.firstRow);
    const int last = std::min(a.lastRow, b.lastRow);
    for (int row = first; row <= last; ++row) {
        const Box x = a.on(row);
        const Box y = b.on(row);
        if (x.left < y.right || y.left < x.right) continue;
        Finding finding = note("repeat-box", chart.rowNumber(row),
                               "Repeats " + a.name + " and " + b.name + " share columns in " +
                                   lowerAscii(rowName(chart, row)) +
                                   "; a stitch can belong to one of them only.");
        finding.severity = Severity::Fault;
        for (int c = std::max(x.right, y.right); c <= std::min(x.left, y.left); ++c)
            finding.columns.push_back(c);
        findings.push_back(std::move(finding));
        return;  // one row tells it
    }
}

}  // namespace

void checkBoxes(const Survey& survey, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    for (std::size_t i = 0; i < chart.repeats.size(); ++i) {
        const Repeat& repeat = chart.repeats[i];
        for (std::size_t j = i + 1; j < chart.repeats.size(); ++j) {
            checkOverlap(chart, repeat, chart.repeats[j], findings);
        }
        for (const auto& [row, jog] : repeat.jogs) {
            const Box box = repeat.on(row);
            if (box.right <= box.left && box.right >= 1 && box.left <= chart.width) continue;
            Finding finding =
                note("repeat-box", chart.rowNumber(row),
                     "The jog of repeat " + repeat.name + " on " + lowerAscii(rowName(chart, row)) +
                         " pushes its edge out of the chart.");
            finding.severity = Severity::Fault;
            findings.push_back(std::move(finding));
        }
    }
}

}  // namespace lacewright
