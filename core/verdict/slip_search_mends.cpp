#include <algorithm>
#include <cmath>
#include <map>

#include "core/check/advice.h"
#include "core/verdict/figure_slips.h"
#include "core/verdict/slip_odds.h"
#include "core/verdict/slip_search.h"
#include "core/words/stitch_words.h"

// What a search for slips offers to mend.
namespace lacewright {
namespace {

constexpr double kSureEnough = -5.5;     // log odds of a slip that a mere note offers to mend
constexpr std::size_t kMostRows = 600;   // of a text that is searched
constexpr std::size_t kMendsTried = 12;  // in stitches, for the other sizes

}  // namespace

bool SlipSearch::mendsEverySize(Explanation& explanation, const Finding& finding) {
    switch (explanation.in) {
        case Explanation::In::Stitches:
            trial_.word(explanation.row, explanation.elements);
            break;
        case Explanation::In::CastOn:
            trial_.castOn(*explanation.castOn, explanation.piece);
            break;
        case Explanation::In::Stated:
            trial_.state(explanation.row, explanation.figure);
            break;
        case Explanation::In::StatedAgain:
            trial_.stateAgain(explanation.row, explanation.figure);
            break;
        case Explanation::In::Again:
            trial_.workAgain(explanation.row, explanation.figure);
            break;
    }
    const bool again =
        explanation.in == Explanation::In::StatedAgain || explanation.in == Explanation::In::Again;
    const std::size_t row = again ? 0 : explanation.row;
    bool mends = true;
    for (std::size_t size = 0; mends && size < pattern_.sizeCount(); ++size) {
        if (size == size_ || !pattern_.rows[row].isFor(size)) continue;
        const WrittenProof proof = proveWritten(trial_.worded(), size);
        mends = explains(proof, proveWritten(pattern_, size), finding);
        explanation.whole = explanation.whole && isWhole(proof);
    }
    trial_.reset(row);
    return mends;
}

Mend SlipSearch::mendFor(const Explanation& one) const {
    const std::string instead = " instead of " + figureText(one.written.bySize);
    const std::string figure = figureText(one.figure.bySize);
    const auto worked = [&] {
        const RowsAgain& rows = pattern_.again[one.row];
        const std::string first = std::to_string(rows.first);
        return rows.first == rows.last ? "Row " + first
                                       : "Rows " + first + " to " + std::to_string(rows.last);
    };
    Mend mend;
    switch (one.in) {
        case Explanation::In::Stitches:
            return mendOf(pattern_.rows[one.row], placedRow(pattern_, one.row, proof_, size_), one);
        case Explanation::In::CastOn:
            mend.label = castOnMend(*one.castOn, *castOnOf(one.piece));
            break;
        case Explanation::In::Stated:
            mend.label = pattern_.rows[one.row].label + ": say " + figure + " sts" + instead;
            break;
        case Explanation::In::StatedAgain:
            mend.label = worked() + ", worked again: say " + figure + " sts" + instead;
            break;
        case Explanation::In::Again:
            mend.label = worked() + ": work again " + figure + " times" + instead;
            break;
    }
    return mend;
}

// The likeliest, and no second stitch for the same place that counts the same while there are other
// places.
std::vector<std::size_t> SlipSearch::offered(std::vector<Explanation>& found,
                                             const Finding& finding, bool everySize) {
    std::vector<std::size_t> chosen;
    std::size_t tried = 0;
    for (const bool twins : {false, true}) {
        for (std::size_t i = 0; i < found.size() && chosen.size() < kMaxMends; ++i) {
            const auto isTwin = [&](std::size_t other) {
                const Explanation& a = found[i];
                const Explanation& b = found[other];
                return a.in == b.in && a.row == b.row && a.kind == b.kind && a.places == b.places &&
                       a.meant.stitches.size() == b.meant.stitches.size();
            };
            const bool known = std::find(chosen.begin(), chosen.end(), i) != chosen.end();
            const bool again = std::any_of(chosen.begin(), chosen.end(), isTwin);
            if (known || (!twins && again)) continue;
            if (everySize && pattern_.sizeCount() > 1) {
                const bool inStitches = found[i].in == Explanation::In::Stitches;
                if (inStitches && tried++ >= kMendsTried) continue;
                if (!mendsEverySize(found[i], finding)) continue;
            }
            chosen.push_back(i);
        }
    }
    return chosen;
}

// The places of the slips, with what is likely of each.
std::vector<Suspect> SlipSearch::suspectsIn(const std::vector<Explanation>& found,
                                            double chance) const {
    std::map<std::pair<int, int>, double> weights;
    double sum = 0;
    for (const Explanation& one : found) {
        const double weight = std::exp(one.logOdds - found.front().logOdds);
        sum += weight;
        if (one.places.empty()) continue;
        weights[{pattern_.rows[one.row].number, static_cast<int>(one.places.front()) + 1}] +=
            weight;
    }
    std::vector<Suspect> suspects;
    for (const auto& [cell, weight] : weights) {
        if (weight / sum >= kLeastWeight)
            suspects.push_back({cell.first, cell.second, chance * weight / sum, {}});
    }
    std::stable_sort(suspects.begin(), suspects.end(),
                     [](const Suspect& a, const Suspect& b) { return a.weight > b.weight; });
    if (suspects.size() > kMaxSuspects) suspects.resize(kMaxSuspects);
    return suspects;
}

SlipSearch::Explained SlipSearch::adviseOn(Finding& finding) {
    if (finding.severity == Severity::Note && !mayBeMeantToClose(proof_)) return Explained::Not;
    cutShort_ = cutShort_ || pattern_.rows.size() > kMostRows;
    if (pattern_.rows.size() > kMostRows) return Explained::Not;
    std::vector<Explanation> found = search(finding);
    if (found.empty()) return Explained::Not;
    // Rows that are not said to close may be meant as they are.
    const double odds = found.front().logOdds - textOdds(pattern_, proof_, found.front().row);
    const bool isNote = finding.severity == Severity::Note;
    const double chance = isNote ? 1 / (1 + std::exp(-odds)) : 1;
    finding.suspects = suspectsIn(found, chance);
    finding.mends.clear();
    if (isNote && odds < kSureEnough) return Explained::Alone;
    std::vector<std::size_t> chosen = offered(found, finding, true);
    // What is wrong in one size alone may be mended in it alone.
    const bool inSize = chosen.empty() && !finding.sizes.empty() && !pattern_.sizes.empty();
    if (inSize) chosen = offered(found, finding, false);
    for (const std::size_t one : chosen) {
        Mend mend = mendFor(found[one]);
        if (inSize) mend.label = "Size " + pattern_.sizes[size_] + ": " + mend.label;
        finding.mends.push_back(std::move(mend));
    }
    if (chosen.empty() || !found[chosen.front()].whole) return Explained::Alone;
    return inSize ? Explained::Size : Explained::Whole;
}

std::string SlipSearch::limits() const {
    const bool wide = std::any_of(proof_.rows.begin(), proof_.rows.end(), [](const auto& row) {
        return row.before.constant() > SlipFrame::kWidest;
    });
    if (wide && !cutShort_)
        return "Rows of more than " + std::to_string(SlipFrame::kWidest) +
               " stitches are not held against one another, so that mends stand in no order.";
    if (!cutShort_) return {};
    if (pattern_.rows.size() > kMostRows)
        return "The text has more than " + std::to_string(kMostRows) +
               " rows, and slips are not searched for in so many.";
    return "The text is long, and not every slip in it was tried.";
}

}  // namespace lacewright
