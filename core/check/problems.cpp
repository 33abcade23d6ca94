#include "core/check/problems.h"

#include <utility>

namespace lacewright {

bool isAboutCounts(const Finding& finding) {
    if (!finding.sizes.empty()) return false;
    if (finding.rule == "closing") return finding.severity >= Severity::Warning;
    return finding.severity == Severity::Fault &&
           (finding.rule == "continuity" || finding.rule == "cast-on");
}

bool isAboutEdge(const Finding& finding) {
    return finding.rule == "size-edge";
}

std::vector<Problem> problemsOf(const Finding& finding) {
    std::vector<Problem> problems;
    std::vector<std::string> sizes = finding.sizes;
    if (sizes.empty()) sizes.emplace_back();
    problems.reserve(sizes.size());
    for (const std::string& size : sizes) {
        problems.push_back({finding.rule, finding.row, size,
                            isAboutEdge(finding) ? finding.columns : std::vector<int>(),
                            finding.severity == Severity::Fault});
    }
    return problems;
}

void collectProblems(const std::vector<Finding>& findings, std::set<Problem>& problems) {
    for (const Finding& finding : findings) {
        if (finding.severity == Severity::Fault || isAboutCounts(finding) || isAboutEdge(finding)) {
            for (Problem& problem : problemsOf(finding)) problems.insert(std::move(problem));
        }
        collectProblems(finding.folded, problems);
    }
}

}  // namespace lacewright
