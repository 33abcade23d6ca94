#include "core/check/fold.h"

#include <algorithm>
#include <iterator>
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

namespace {

// By how much a row takes more than there is, told by the repeats it is drawn with if it can be.
AffineForm excessOf(const Survey& survey, int row, const Fit& fit) {
    if (row == 0 || !survey.whole().sameBand(row, row - 1)) return fit.required - fit.available;
    return survey.forms()[static_cast<std::size_t>(row)].takes -
           survey.forms()[static_cast<std::size_t>(row) - 1].makes;
}

struct Counts {
    std::int64_t takes;
    std::int64_t makes;
};

// A stitch of lace: knit, yarn over, decrease, or nothing where the row has such cells.
bool isUsual(const Counts& counts, const Row& row) {
    constexpr Counts kUsual[] = {{1, 1}, {0, 1}, {2, 1}, {3, 1}};
    const auto same = [&](const Counts& usual) {
        return counts.takes == usual.takes && counts.makes == usual.makes;
    };
    return std::any_of(std::begin(kUsual), std::end(kUsual), same) ||
           (row.traits().hasNoStitch && same({0, 0}));
}

// Whether one cell of the row can be a usual stitch, so that the row takes `more` more and makes
// `further` more: both are of the edges, or both of one repeat.
bool oneCellMakesUp(const Survey& survey, int row, const AffineForm& more,
                    const AffineForm& further) {
    const bool edges = more.isConstant() && further.isConstant();
    const bool box = more.constant() == 0 && further.constant() == 0 && more.terms().size() == 1 &&
                     further.terms().size() == 1 &&
                     more.terms().front().variable == further.terms().front().variable;
    if (!edges && !box) return false;
    const std::int64_t takes = edges ? more.constant() : more.terms().front().coefficient;
    const std::int64_t makes = edges ? further.constant() : further.terms().front().coefficient;
    const StitchCatalogue& stitches = *survey.chart().stitches;
    const Row& cells = survey.chart().row(row);
    for (const Segment& segment : survey.whole().path(row)) {
        if (segment.isBox() == edges) continue;
        if (box && segment.repeat != more.terms().front().variable) continue;
        for (int column = segment.first; column <= segment.last; ++column) {
            if (cells.at(column) == kCovered) continue;
            const Stitch& stitch = stitches[cells.at(column)];
            if (stitch.span == 1 && isUsual({stitch.takes + takes, stitch.makes + makes}, cells))
                return true;
        }
    }
    return false;
}

}  // namespace

bool sameCauseAsBelow(const Survey& survey, int row) {
    if (row < 1) return false;
    const Fit* lower = survey.misfit(row - 1);
    const Fit* upper = survey.misfit(row);
    if (lower == nullptr || upper == nullptr) return false;
    const AffineForm sum =
        (lower->required - lower->available) + (upper->required - upper->available);
    if (sum == AffineForm()) return true;
    // One stitch of the lower row may take and make another number than it should.
    const AffineForm nothing;
    if (oneCellMakesUp(survey, row - 1, nothing - excessOf(survey, row - 1, *lower),
                       excessOf(survey, row, *upper)))
        return true;
    // The rows around the lower one fit each other, so it alone is out.
    return row >= 2 && survey.misfit(row - 2) == nullptr &&
           survey.forms()[static_cast<std::size_t>(row)].takes ==
               survey.forms()[static_cast<std::size_t>(row) - 2].makes;
}

}  // namespace lacewright
