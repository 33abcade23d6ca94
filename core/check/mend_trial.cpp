#include "core/check/mend_trial.h"

#include <algorithm>

#include "core/check/mend.h"

namespace lacewright {
namespace {

std::ptrdiff_t bareEdges(const Report& report) {
    return std::count_if(report.findings.begin(), report.findings.end(),
                         [](const Finding& f) { return f.rule == "edge-yarn-over"; });
}

}  // namespace

MendTrial::MendTrial(const Chart& chart, const Report& report, bool closingKnown)
    : chart_(chart), closingKnown_(closingKnown), bareEdges_(bareEdges(report)) {
    collectProblems(report.findings, known_);
}

std::optional<Chart> MendTrial::mended(const Finding& finding, const Mend& mend) {
    Result<Chart> mended = applyMend(chart_, mend);
    if (!mended || !helps(finding, *mended)) return std::nullopt;
    return std::move(*mended);
}

bool MendTrial::offerFirst(Finding& finding, const std::vector<Mend>& mends) {
    for (const Mend& mend : mends) {
        if (!mended(finding, mend) || bareEdges(checker_.report()) > bareEdges_) continue;
        finding.mends.push_back(mend);
        return true;
    }
    return false;
}

bool MendTrial::helps(const Finding& finding, const Chart& mended) {
    std::set<Problem> problems;
    collectProblems(checker_.update(mended).findings, problems);
    for (Problem own : problemsOf(finding)) {
        for (const bool fault : {false, true}) {
            own.fault = fault;
            if (problems.contains(own)) return false;
        }
    }
    return std::all_of(problems.begin(), problems.end(), [&](const Problem& problem) {
        return known_.contains(problem) || becameMilder(problem) ||
               (closingKnown_ && problem.rule == "closing");
    });
}

bool MendTrial::becameMilder(Problem problem) const {
    if (problem.fault) return false;
    problem.fault = true;
    return known_.contains(problem);
}

}  // namespace lacewright
