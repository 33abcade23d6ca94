#include "core/verdict/written_advice.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "core/check/advice.h"
#include "core/verdict/empty_repeat.h"
#include "core/verdict/slip_search.h"
#include "core/verdict/straight_advice.h"

namespace lacewright {
namespace {

// Those of the findings, and of rows that none of them suspects the odd ones, the likeliest first.
std::vector<Suspect> suspectsOf(const std::vector<Finding>& findings,
                                const std::vector<Suspect>& odd) {
    std::vector<Suspect> all;
    std::set<int> rows;
    for (const Finding& finding : findings) {
        for (const Suspect& suspect : finding.suspects) {
            rows.insert(suspect.row);
            const bool known = std::any_of(all.begin(), all.end(), [&](const Suspect& other) {
                return other.row == suspect.row && other.column == suspect.column;
            });
            if (!known) all.push_back(suspect);
        }
    }
    for (const Suspect& suspect : odd) {
        if (!rows.contains(suspect.row)) all.push_back(suspect);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Suspect& a, const Suspect& b) { return a.weight > b.weight; });
    if (all.size() > kMaxSuspectsInAll) all.resize(kMaxSuspectsInAll);
    return all;
}

// A finding whose first mend leaves nothing wrong with the text, or with its size.
struct Cause {
    std::size_t finding = 0;
    bool ofAllSizes = true;
};

bool isWrong(const Finding& finding) {
    return finding.severity == Severity::Fault || finding.rule == "stated-count";
}

// Faults that the same mend takes away are one: the later ones follow from the first.
std::vector<Finding> foldByMend(std::vector<Finding> findings) {
    std::vector<Finding> kept;
    for (Finding& finding : findings) {
        const auto first = std::find_if(kept.begin(), kept.end(), [&](const Finding& earlier) {
            return earlier.severity == Severity::Fault && finding.severity == Severity::Fault &&
                   earlier.sizes == finding.sizes && !earlier.mends.empty() &&
                   !finding.mends.empty() && earlier.mends.front() == finding.mends.front();
        });
        if (first == kept.end()) {
            kept.push_back(std::move(finding));
        } else {
            first->folded.push_back(std::move(finding));
        }
    }
    return kept;
}

}  // namespace

void adviseOnRows(const WrittenPattern& pattern, const std::vector<std::size_t>& sizes,
                  Report& report) {
    // A finding about some sizes is judged for the first of them, all others for the first of all.
    std::map<std::size_t, std::optional<StraightAdvice>> known;
    const auto translatorFor = [&](std::size_t size) -> const std::optional<StraightAdvice>& {
        const auto [at, isNew] = known.try_emplace(size);
        if (isNew) {
            if (auto straight = straightChart(pattern, size))
                at->second.emplace(pattern, size, std::move(*straight));
        }
        return at->second;
    };
    const auto sizeOf = [&](const Finding& finding) {
        if (finding.sizes.empty()) return sizes.front();
        const auto named =
            std::find(pattern.sizes.begin(), pattern.sizes.end(), finding.sizes.front());
        return named == pattern.sizes.end()
                   ? sizes.front()
                   : static_cast<std::size_t>(named - pattern.sizes.begin());
    };
    std::map<std::size_t, SlipSearch> searches;
    std::vector<Finding> findings;
    std::optional<Cause> cause;
    for (Finding& next : report.findings) {
        if (cause && isWrong(next) &&
            (cause->ofAllSizes || next.sizes == findings[cause->finding].sizes)) {
            Finding& first = findings[cause->finding];
            first.severity = std::max(first.severity, next.severity);
            first.folded.push_back(std::move(next));
            continue;
        }
        Finding& finding = findings.emplace_back(std::move(next));
        const bool uncountable = finding.rule == "uncountable";
        if (!uncountable && !tellsOfCounts(finding)) continue;
        const std::size_t size = sizeOf(finding);
        const auto explained =
            searches.try_emplace(size, pattern, size).first->second.adviseOn(finding);
        if (explained >= SlipSearch::Explained::Size && isWrong(finding))
            cause = Cause{findings.size() - 1, explained == SlipSearch::Explained::Whole};
        // Another cast-on may explain it; so may several slips in the rows.
        const bool inRows = !finding.suspects.empty() || finding.rule == "stated-count";
        if (explained != SlipSearch::Explained::Not && inRows) continue;
        if (uncountable) {
            if (const WrittenRow* row = pattern.findRow(finding.row))
                finding.suspects = suspectsInEmptyRepeat(*row, size);
        } else if (finding.severity >= Severity::Warning && finding.rule != "stated-count") {
            std::vector<Mend> mends = std::move(finding.mends);
            finding.mends.clear();
            if (const auto& translator = translatorFor(size)) translator->adviseOn(finding);
            finding.mends.insert(finding.mends.begin(), mends.begin(), mends.end());
            if (finding.mends.size() > kMaxMends) finding.mends.resize(kMaxMends);
        }
    }
    report.findings = foldByMend(std::move(findings));
    for (const auto& [size, search] : searches) {
        const bool mends = std::any_of(report.findings.begin(), report.findings.end(),
                                       [](const Finding& f) { return !f.mends.empty(); });
        if (search.limits().empty() || (report.knittable && !mends)) continue;
        Finding told;
        told.rule = "text";
        told.message = search.limits();
        report.findings.insert(report.findings.begin(), std::move(told));
        break;
    }
    const auto& translator = translatorFor(sizes.front());
    report.suspects =
        suspectsOf(report.findings, translator ? translator->suspects() : std::vector<Suspect>());
    if (!translator) return;
    for (Finding& odd : translator->oddFindings()) report.findings.push_back(std::move(odd));
    std::stable_sort(report.findings.begin(), report.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.row < b.row; });
}

}  // namespace lacewright
