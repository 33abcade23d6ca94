#include "core/verdict/slip_search.h"

#include <algorithm>
#include <cmath>

#include "core/check/advice.h"
#include "core/verdict/figure_slips.h"
#include "core/verdict/slip_letters.h"
#include "core/verdict/slip_odds.h"
#include "core/verdict/slip_window.h"
#include "core/words/stitch_words.h"

namespace lacewright {
namespace {

constexpr double kPlainRepeat = 3.0;    // log odds against a repeat of knit stitches alone
constexpr double kSureEnough = -4.5;    // log odds of a slip that a mere note offers to mend
constexpr std::size_t kMostRows = 600;  // of a text that is searched
constexpr std::size_t kRowsTried = 4;
constexpr std::size_t kRowsTriedForClosing = 12;
constexpr int kMostCost = 20'000;  // rows proven for one finding
constexpr int kCostOfTrial = 3;
constexpr std::size_t kRowsOfOneCost = 400;
constexpr std::size_t kMendsTried = 12;  // for the other sizes

// Of proving so many rows; every row's counts are carried on to those behind it.
int costOf(std::size_t rows) {
    return kCostOfTrial + static_cast<int>(rows + rows * rows / kRowsOfOneCost);
}

bool isWhole(const WrittenProof& proof) {
    return proof.faulty.empty() && statedWrongly(proof) == 0;
}

bool holds(const std::vector<std::size_t>& rows, std::size_t row) {
    return std::find(rows.begin(), rows.end(), row) != rows.end();
}

}  // namespace

SlipSearch::SlipSearch(const WrittenPattern& pattern, std::size_t size)
    : pattern_(pattern),
      size_(size),
      proof_(proveWritten(pattern, size)),
      letters_(lettersOf(pattern)),
      trial_(pattern),
      evidence_(size),
      wording_(trial_) {}

// Works whatever it finds, and shapes nothing.
bool SlipSearch::isPlain(std::size_t row) const {
    const auto& elements = pattern_.rows[row].elements;
    return proof_.rows[row].verdict == RowVerdict::Fits && !shapes(proof_.rows[row]) &&
           std::any_of(elements.begin(), elements.end(), [](const Element& element) {
               const auto* stretch = std::get_if<Stretch>(&element.what);
               return stretch != nullptr && !stretch->starred;
           });
}

std::optional<std::size_t> SlipSearch::rowOf(const Finding& finding) const {
    for (std::size_t row = 0; row < pattern_.rows.size(); ++row) {
        if (pattern_.rows[row].number == finding.row && pattern_.rows[row].isFor(size_)) return row;
    }
    return std::nullopt;
}

// The row itself, then those below it, the nearest first.
std::vector<std::size_t> SlipSearch::rowsToTry(const Finding& finding) const {
    const auto at = rowOf(finding);
    if (!at) return {};
    const bool closing = finding.rule == "closing";
    std::vector<std::size_t> rows;
    for (std::size_t row = *at + 1; row-- > 0;) {
        const bool own = !closing && pattern_.rows[row].number == finding.row;
        if (!pattern_.rows[row].isFor(size_) || (!own && isPlain(row))) continue;
        if (!holds(rows, trial_.textOf(row))) rows.push_back(trial_.textOf(row));
        // A row that contradicts itself is wrong in itself.
        const bool inItself = own && proof_.rows[row].verdict == RowVerdict::WrongRest;
        if (inItself || rows.size() == (closing ? kRowsTriedForClosing : kRowsTried)) break;
    }
    return rows;
}

// No row is faulty that was not, and that of the finding no longer.
bool SlipSearch::explains(const WrittenProof& proof, const WrittenProof& written,
                          const Finding& finding) const {
    for (const std::size_t row : proof.faulty) {
        if (!holds(written.faulty, row) || pattern_.rows[row].number == finding.row) return false;
    }
    // What can no longer be counted is not explained.
    for (std::size_t row = 0; row < proof.rows.size(); ++row) {
        if (proof.rows[row].counted.toUnknownPlace && !written.rows[row].counted.toUnknownPlace)
            return false;
    }
    if (finding.rule == "stated-count") {
        const auto row = rowOf(finding);
        const std::size_t less = row && written.rows[*row].stated ? 1 : 0;
        return row && !proof.rows[*row].stated &&
               statedWrongly(proof) + less <= statedWrongly(written);
    }
    if (finding.rule != "closing") return true;
    return (pattern_.repeatFrom ? proof.closesFrom : proof.closes).value_or(false);
}

bool SlipSearch::mendsEverySize(const Explanation& explanation, const Finding& finding) {
    switch (explanation.in) {
        case Explanation::In::Stitches:
            trial_.word(explanation.row, explanation.elements);
            break;
        case Explanation::In::CastOn:
            trial_.castOn(*explanation.castOn);
            break;
        case Explanation::In::Stated:
            trial_.state(explanation.row, explanation.figure);
            break;
    }
    bool mends = true;
    for (std::size_t size = 0; mends && size < pattern_.sizeCount(); ++size) {
        if (size == size_ || !pattern_.rows[explanation.row].isFor(size)) continue;
        mends =
            explains(proveWritten(trial_.worded(), size), proveWritten(pattern_, size), finding);
    }
    trial_.reset(explanation.row);
    return mends;
}

std::optional<Explanation> SlipSearch::explanation(std::size_t row, const SlipUndone& slip,
                                                   const WrittenProof& proof) {
    auto meant = placedRow(trial_.worded(), row, proof, size_);
    if (!meant) return std::nullopt;
    Explanation found;
    found.row = row;
    found.kind = slip.kind;
    found.elements = slip.elements;
    found.whole = isWhole(proof);
    found.figure = slip.figure;
    found.written = slip.written;
    found.to = slip.to;
    found.term = slip.meant.term;
    found.meant = std::move(*meant);
    found.logOdds = slipOdds(pattern_.rows[row], slip, letters_.size()) +
                    textOdds(pattern_, proof, row) + wording_.of(row, slip.elements);
    if (slip.kind == SlipUndone::Kind::Rest) {
        if (found.meant.stitches.empty()) return std::nullopt;
        found.places = {placeOfRest(found.meant)};
        return found;
    }
    auto written = placedRow(pattern_, row, proof_, size_);
    if (slip.kind == SlipUndone::Kind::PutIn) {
        written = withoutNew(found.meant);
    } else if (!written) {
        return std::nullopt;
    }
    found.places = slip.kind == SlipUndone::Kind::LeftOut ? placesLeftOut(*written, found.meant)
                                                          : placesOfNew(found.meant);
    if (found.places.empty()) return std::nullopt;
    if (isPlainRepeat(found.meant)) found.logOdds -= kPlainRepeat;
    found.logOdds += evidence_.of(trial_.worded(), row, found.meant, *written) +
                     mirrorOddsOf(found.meant) - mirrorOddsOf(*written);
    return found;
}

void SlipSearch::tryRow(std::size_t row, const Finding& finding, std::vector<Explanation>& found) {
    std::optional<SlipWindow> window = SlipWindow::make(trial_, proof_, row, finding, size_);
    const int all = costOf(pattern_.rows.size());
    const int cost = window ? costOf(window->rows()) : all;
    forEachSlip(trial_.said().rows[row], letters_, size_, [&](const SlipUndone& slip) {
        if (costLeft_ <= 0) return;
        costLeft_ -= cost;
        if (window && !window->mayExplain(slip.elements)) return;
        if (window) costLeft_ -= all;
        trial_.word(row, slip.elements);
        const WrittenProof proof = proveWritten(trial_.worded(), size_);
        if (!explains(proof, proof_, finding)) return;
        if (auto one = explanation(row, slip, proof)) found.push_back(std::move(*one));
    });
    trial_.reset(row);
}

// All rows below those tried are worked plainly, and so is what is cast on.
bool SlipSearch::mayBeCastOn(const Finding& finding, const std::vector<std::size_t>& rows) const {
    if (finding.severity < Severity::Warning || rows.size() >= kRowsTried) return false;
    return pattern_.castOn && pattern_.pieces.empty() && pattern_.castOn->forEach.empty();
}

void SlipSearch::tryCastOn(const Finding& finding, std::vector<Explanation>& found) {
    for (const WrittenCastOn& castOn : castOnsNear(*pattern_.castOn, size_)) {
        trial_.castOn(castOn);
        const WrittenProof proof = proveWritten(trial_.worded(), size_);
        if (!explains(proof, proof_, finding)) continue;
        Explanation& one = found.emplace_back();
        one.in = Explanation::In::CastOn;
        one.castOn = castOn;
        one.whole = isWhole(proof);
        one.logOdds = castOnOdds(castOn, *pattern_.castOn) + textOdds(pattern_, proof, one.row);
    }
    trial_.reset(0);
}

// The row is right, and what it says of itself is not.
void SlipSearch::tryStated(const Finding& finding, std::vector<Explanation>& found) {
    const auto row = rowOf(finding);
    if (!row || !proof_.rows[*row].stated) return;
    Explanation one;
    one.in = Explanation::In::Stated;
    one.row = *row;
    one.figure = one.written = *pattern_.rows[*row].statedCount;
    for (std::size_t size = 0; size < one.figure.bySize.size(); ++size) {
        const AffineForm& counted = proveWritten(pattern_, size).rows[*row].after;
        if (!counted.isConstant()) return;
        one.figure.bySize[size] = static_cast<int>(counted.constant());
    }
    trial_.state(*row, one.figure);
    const WrittenProof proof = proveWritten(trial_.worded(), size_);
    one.whole = isWhole(proof);
    one.logOdds = statedOdds(one.figure, one.written) + textOdds(pattern_, proof, *row);
    trial_.reset(*row);
    found.push_back(std::move(one));
}

Mend SlipSearch::mendFor(const Explanation& one) const {
    const WrittenRow& row = pattern_.rows[one.row];
    Mend mend;
    switch (one.in) {
        case Explanation::In::Stitches:
            return mendOf(row, placedRow(pattern_, one.row, proof_, size_), one);
        case Explanation::In::CastOn:
            mend.label = castOnMend(*one.castOn, *pattern_.castOn);
            break;
        case Explanation::In::Stated:
            mend.label = row.label + ": say " + figureText(one.figure.bySize) + " sts instead of " +
                         figureText(one.written.bySize);
            break;
    }
    return mend;
}

// The likeliest, and no second stitch for the same place that counts the same while there are other
// places.
std::vector<std::size_t> SlipSearch::offered(const std::vector<Explanation>& found,
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
            const bool again = std::any_of(chosen.begin(), chosen.end(), isTwin);
            if (holds(chosen, i) || (!twins && again)) continue;
            if (everySize && pattern_.sizeCount() > 1 &&
                (tried++ >= kMendsTried || !mendsEverySize(found[i], finding)))
                continue;
            chosen.push_back(i);
        }
    }
    return chosen;
}

SlipSearch::Explained SlipSearch::adviseOn(Finding& finding) {
    if (pattern_.rows.size() > kMostRows) return Explained::Not;
    if (finding.severity == Severity::Note && !mayBeMeantToClose(proof_)) return Explained::Not;
    std::vector<Explanation> found;
    costLeft_ = kMostCost;
    const std::vector<std::size_t> rows = rowsToTry(finding);
    for (const std::size_t row : rows) tryRow(row, finding, found);
    if (mayBeCastOn(finding, rows)) tryCastOn(finding, found);
    if (finding.rule == "stated-count") tryStated(finding, found);
    if (found.empty()) return Explained::Not;
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; });
    std::map<std::pair<int, int>, double> weights;
    double sum = 0;
    for (const Explanation& one : found) {
        const double weight = std::exp(one.logOdds - found.front().logOdds);
        sum += weight;
        if (one.places.empty()) continue;
        weights[{pattern_.rows[one.row].number, static_cast<int>(one.places.front()) + 1}] +=
            weight;
    }
    // Rows that are not said to close may be meant as they are.
    const double odds = found.front().logOdds - textOdds(pattern_, proof_, found.front().row);
    const bool isNote = finding.severity == Severity::Note;
    const double chance = isNote ? 1 / (1 + std::exp(-odds)) : 1;
    finding.suspects.clear();
    for (const auto& [cell, weight] : weights) {
        if (weight / sum >= kLeastWeight)
            finding.suspects.push_back({cell.first, cell.second, chance * weight / sum, {}});
    }
    std::stable_sort(finding.suspects.begin(), finding.suspects.end(),
                     [](const Suspect& a, const Suspect& b) { return a.weight > b.weight; });
    if (finding.suspects.size() > kMaxSuspects) finding.suspects.resize(kMaxSuspects);
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
    const bool whole = !chosen.empty() && found[chosen.front()].whole;
    return whole ? Explained::Whole : Explained::Alone;
}

}  // namespace lacewright
