#include "core/check/fold.h"

#include <algorithm>
#include <utility>

namespace lacewright {
namespace {

bool isContinuity(const Finding& f) {
    return f.rule == "continuity" || f.rule == "cast-on";
}

bool failsForSizes(const Finding& f) {
    return !f.sizes.empty() && (isContinuity(f) || f.rule == "size-edge" || f.rule == "size-count");
}

bool concernsOnly(const Finding& inner, const Finding& outer) {
    return outer.sizes.empty() ||
           (!inner.sizes.empty() && std::includes(outer.sizes.begin(), outer.sizes.end(),
                                                  inner.sizes.begin(), inner.sizes.end()));
}

// Puts the first finding that `causes` before all others and moves what `follows` under it.
template <class Causes, class Follows>
void foldUnder(std::vector<Finding>& findings, Causes causes, Follows follows) {
    const auto at = std::find_if(findings.begin(), findings.end(), causes);
    if (at == findings.end()) return;
    std::rotate(findings.begin(), at, at + 1);
    Finding& cause = findings.front();
    cause.folded.reserve(cause.folded.size() + findings.size() - 1);
    auto rest = findings.begin() + 1;
    for (auto next = rest; next != findings.end(); ++next) {
        if (follows(*next, cause)) {
            cause.folded.push_back(std::move(*next));
        } else {
            if (rest != next) *rest = std::move(*next);
            ++rest;
        }
    }
    findings.erase(rest, findings.end());
}

}  // namespace

bool isCut(const Finding& f) {
    return f.severity == Severity::Fault && f.rule == "wide-stitch";
}

void foldWithinRow(std::vector<Finding>& findings) {
    foldUnder(
        findings,
        [](const Finding& f) {
            return isContinuity(f) && f.severity == Severity::Fault && f.sizes.empty();
        },
        [](const Finding& f, const Finding&) { return failsForSizes(f); });
    foldUnder(findings, isCut, [](const Finding& f, const Finding& cut) {
        return f.severity == Severity::Fault && (isContinuity(f) || f.rule == "size-edge") &&
               concernsOnly(f, cut);
    });
}

void foldUnderCutsBelow(std::vector<Finding>& below, std::vector<Finding>& findings) {
    for (Finding& cut : below) {
        if (!isCut(cut) || cut.sizes.empty()) continue;
        const auto rest =
            std::stable_partition(findings.begin(), findings.end(), [&](const Finding& f) {
                return f.sizes.empty() || f.severity != Severity::Fault || !failsForSizes(f) ||
                       !concernsOnly(f, cut);
            });
        std::move(rest, findings.end(), std::back_inserter(cut.folded));
        findings.erase(rest, findings.end());
    }
}

void foldUnderRowBelow(std::vector<Finding>& below, std::vector<Finding>& findings) {
    const auto forEveryone = [](const Finding& f) {
        return f.severity == Severity::Fault && f.sizes.empty();
    };
    const auto own = std::find_if(findings.begin(), findings.end(), [&](const Finding& f) {
        return f.rule == "continuity" && forEveryone(f);
    });
    const auto cause = std::find_if(below.rbegin(), below.rend(), forEveryone);
    if (own == findings.end() || cause == below.rend()) return;
    cause->folded.push_back(std::move(*own));
    findings.erase(own);
}

bool sameCauseAsBelow(const Survey& survey, int row) {
    if (row < 1) return false;
    const Fit* lower = survey.misfit(row - 1);
    const Fit* upper = survey.misfit(row);
    if (lower == nullptr || upper == nullptr) return false;
    const AffineForm sum =
        (lower->required - lower->available) + (upper->required - upper->available);
    if (sum == AffineForm()) return true;
    // The rows around the lower one fit each other, so it alone is out.
    return row >= 2 && survey.misfit(row - 2) == nullptr &&
           survey.forms()[static_cast<std::size_t>(row)].takes ==
               survey.forms()[static_cast<std::size_t>(row) - 2].makes;
}

}  // namespace lacewright
