#include "core/check/mend_trial.h"

#include <algorithm>

#include "core/check/mend.h"

namespace lacewright {
namespace {

bool remains(const Finding& finding, const std::set<Problem>& problems) {
    const std::vector<Problem> all = problemsOf(finding);
    return std::any_of(all.begin(), all.end(), [&](Problem own) {
        const bool asItWas = problems.contains(own);
        own.fault = !own.fault;
        return asItWas || problems.contains(own);
    });
}

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
    if (remains(finding, problems)) return false;
    // What has the same cause goes with it.
    if (std::any_of(finding.folded.begin(), finding.folded.end(), [&](const Finding& folded) {
            return isAboutCounts(folded) && remains(folded, problems);
        }))
        return false;
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
