#include "core/verdict/slip_search.h"

#include <algorithm>
#include <cmath>

#include "core/check/advice.h"
#include "core/verdict/slip_letters.h"
#include "core/verdict/slip_odds.h"
#include "core/verdict/slip_window.h"

namespace lacewright {
namespace {

constexpr double kPlainRepeat = 3.0;  // log odds against a repeat of knit stitches alone
constexpr double kNotDrawn = -4.0;    // log odds for a text that makes no chart
constexpr std::size_t kRowsTried = 4;
constexpr std::size_t kRowsTriedForClosing = 12;
constexpr int kMostCost = 20'000;  // rows proven for one finding
constexpr int kCostOfTrial = 3;
constexpr std::size_t kRowsOfOneCost = 400;
constexpr std::int64_t kStitchesOfOneCost = 1000;

// Of proving so many rows; every row's counts are carried on to those behind it.
int costOf(std::size_t rows) {
    return kCostOfTrial + static_cast<int>(rows + rows * rows / kRowsOfOneCost);
}

// Among slips in stitches evidence tells them apart; how much of it there is against all of them,
// or that none can be drawn, says nothing against there being one, unless it is a mere note.
void weighEvidence(std::vector<Explanation>& found, bool isNote) {
    double most = kNotDrawn;
    for (const Explanation& one : found) most = std::max(most, one.evidence.value_or(kNotDrawn));
    const double shift = isNote ? 0 : std::max(0.0, -most);
    for (Explanation& one : found) {
        if (one.in != Explanation::In::Stitches || one.kind == SlipUndone::Kind::Rest) continue;
        one.logOdds += one.evidence.value_or(kNotDrawn) + shift;
    }
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
        if (pieceOf(pattern_.rows[row].number) != pieceOf(finding.row)) break;
        if (!pattern_.rows[row].isFor(size_) || (!own && isPlain(row))) continue;
        if (!holds(rows, trial_.textOf(row))) rows.push_back(trial_.textOf(row));
        // A row that contradicts itself is wrong in itself.
        const bool inItself = own && proof_.rows[row].verdict == RowVerdict::WrongRest;
        if (inItself || rows.size() == (closing ? kRowsTriedForClosing : kRowsTried)) break;
    }
    return rows;
}

// How many counts the row of the finding says wrongly, or a sentence that works it again.
std::size_t SlipSearch::statedWronglyBy(const WrittenProof& proof, const Finding& finding) const {
    const auto row = rowOf(finding);
    std::size_t wrong = row && proof.rows[*row].stated ? 1 : 0;
    for (std::size_t again = 0; again < pattern_.again.size(); ++again) {
        const bool here = pattern_.again[again].last == finding.row;
        wrong += here && proof.again[again].stated ? 1 : 0;
    }
    return wrong;
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
        const std::size_t less = statedWronglyBy(written, finding) > 0 ? 1 : 0;
        return statedWronglyBy(proof, finding) == 0 &&
               statedWrongly(proof) + less <= statedWrongly(written);
    }
    if (finding.rule != "closing") return true;
    return (pattern_.repeatFrom ? proof.closesFrom : proof.closes).value_or(false);
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
    const bool each =
        slip.kind != SlipUndone::Kind::Count && slip.kind != SlipUndone::Kind::Brackets;
    found.evidence =
        evidence_.of(trial_.worded(), row, found.meant, *written, each ? found.places.size() : 1);
    found.logOdds += mirrorOddsOf(found.meant) - mirrorOddsOf(*written);
    return found;
}

// Of following markers through every stitch, in every size.
int SlipSearch::costOfFollowing() const {
    std::int64_t stitches = 0;
    for (const WrittenRowProof& row : proof_.rows) stitches += row.before.constant();
    const auto all = stitches * static_cast<std::int64_t>(pattern_.sizeCount());
    return static_cast<int>(std::clamp<std::int64_t>(all / kStitchesOfOneCost, 0, kMostCost));
}

void SlipSearch::tryRow(std::size_t row, const Finding& finding, std::vector<Explanation>& found) {
    std::optional<SlipWindow> window = SlipWindow::make(trial_, proof_, row, finding, size_);
    const int all =
        costOf(pattern_.rows.size()) + (trial_.goesToLandmarks() ? costOfFollowing() : 0);
    const int cost = window ? costOf(window->rows()) : all;
    forEachSlip(trial_.said().rows[row], letters_, size_, [&](const SlipUndone& slip) {
        cutShort_ = cutShort_ || costLeft_ <= 0;
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

std::vector<Explanation> SlipSearch::search(const Finding& finding) {
    std::vector<Explanation> found;
    costLeft_ = kMostCost;
    const std::vector<std::size_t> rows = rowsToTry(finding);
    for (const std::size_t row : rows) tryRow(row, finding, found);
    // All rows below those tried are worked plainly, and so is what is cast on.
    if (finding.severity >= Severity::Warning && rows.size() < kRowsTried)
        tryCastOn(finding, found);
    if (finding.rule == "stated-count") tryStated(finding, found);
    weighEvidence(found, finding.severity == Severity::Note);
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; });
    return found;
}

}  // namespace lacewright
