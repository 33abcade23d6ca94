#include <algorithm>

#include "core/base/text.h"
#include "core/check/companions.h"
#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {

void checkBalance(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    if (!chart.row(row).traits().hasShaping) return;
    const RowForms& forms = survey.forms()[static_cast<std::size_t>(row)];
    const AffineForm net = forms.net();
    if (net == AffineForm()) return;
    std::vector<std::string> parts;
    const auto change = [](std::int64_t by) {
        return std::string(by > 0 ? "adds " : "takes away ") + stitchCount(by > 0 ? by : -by);
    };
    for (const auto& term : net.terms()) {
        const auto& name = chart.repeats[static_cast<std::size_t>(term.variable)].name;
        parts.push_back(change(term.coefficient) + " in every repeat of " + name);
    }
    if (net.constant() != 0) {
        parts.push_back(change(net.constant()) + (parts.empty() ? "" : " outside"));
    }
    const auto one = [](Variable) { return std::int64_t{1}; };
    Finding finding = note(
        "balance", chart.rowNumber(row),
        rowName(chart, row) + " " + listing(parts) + ": " + std::to_string(forms.takes.at(one)) +
            " become " + std::to_string(forms.makes.at(one)) +
            (forms.takes.isConstant() ? "." : " with every repeat worked once."));
    finding.columns = orphansOn(chart.row(row), survey.whole().path(row), *chart.stitches);
    finding.columns.erase(std::unique(finding.columns.begin(), finding.columns.end()),
                          finding.columns.end());
    findings.push_back(std::move(finding));
}

}  // namespace lacewright
