#include "core/verdict/slip_search.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/check/advice.h"
#include "core/verdict/slip_letters.h"
#include "core/verdict/slip_odds.h"
#include "core/verdict/slip_window.h"

namespace lacewright {
namespace {

constexpr double kPlainRepeat = 3.0;    // log odds against a repeat of knit stitches alone
constexpr double kSureEnough = -4.5;    // log odds of a slip that a mere note offers to mend
constexpr double kNotDrawn = -4.0;      // log odds for a text that makes no chart
constexpr int kMostNotDrawn = 30;       // before a text is taken for one that makes no chart
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

bool holds(const std::vector<std::size_t>& rows, std::size_t row) {
    return std::find(rows.begin(), rows.end(), row) != rows.end();
}

}  // namespace

SlipSearch::SlipSearch(const WrittenPattern& pattern, std::size_t size)
    : pattern_(pattern),
      size_(size),
      proof_(proveWritten(pattern, size)),
      letters_(lettersOf(pattern)),
      trial_(pattern) {}

// Works whatever it finds, and shapes nothing.
bool SlipSearch::isPlain(std::size_t row) const {
    const auto& elements = pattern_.rows[row].elements;
    return proof_.rows[row].verdict == RowVerdict::Fits && !shapes(proof_.rows[row]) &&
           std::any_of(elements.begin(), elements.end(), [](const Element& element) {
               const auto* stretch = std::get_if<Stretch>(&element.what);
               return stretch != nullptr && !stretch->starred;
           });
}

// The row itself, then those below it, the nearest first.
std::vector<std::size_t> SlipSearch::rowsToTry(const Finding& finding) const {
    const auto at = std::find_if(pattern_.rows.begin(), pattern_.rows.end(), [&](const auto& row) {
        return row.number == finding.row && row.isFor(size_);
    });
    if (at == pattern_.rows.end()) return {};
    const bool closing = finding.rule == "closing";
    std::vector<std::size_t> rows;
    for (auto row = static_cast<std::size_t>(at - pattern_.rows.begin()) + 1; row-- > 0;) {
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
    if (finding.rule != "closing") return true;
    return (pattern_.repeatFrom ? proof.closesFrom : proof.closes).value_or(false);
}

bool SlipSearch::mendsEverySize(const Explanation& explanation, const Finding& finding) {
    trial_.word(explanation.row, explanation.elements);
    bool mends = true;
    for (std::size_t size = 0; mends && size < pattern_.sizeCount(); ++size) {
        if (size == size_ || !pattern_.rows[explanation.row].isFor(size)) continue;
        mends =
            explains(proveWritten(trial_.worded(), size), proveWritten(pattern_, size), finding);
    }
    trial_.unword(explanation.row);
    return mends;
}

double SlipSearch::evidenceOf(std::size_t row, const PlacedRow& meant, const PlacedRow& written) {
    std::vector<int> key{static_cast<int>(row)};
    for (const PlacedRow::Part& part : written.parts) key.push_back(static_cast<int>(part.length));
    for (const PlacedRow::Part& part : meant.parts) {
        key.push_back(static_cast<int>(part.length));
        const auto first = meant.stitches.begin() + static_cast<std::ptrdiff_t>(part.first);
        const auto last = first + static_cast<std::ptrdiff_t>(part.length);
        for (int RowStitch::*count : {&RowStitch::takes, &RowStitch::makes}) {
            key.push_back(std::accumulate(first, last, 0, [&](int sum, const RowStitch& stitch) {
                return sum + stitch.*count;
            }));
        }
    }
    const auto [at, isNew] = frames_.try_emplace(key);
    if (isNew && notDrawn_ < kMostNotDrawn) {
        at->second = SlipFrame::make(trial_.worded(), row, size_, meant, written);
        notDrawn_ += at->second == nullptr ? 1 : 0;
    }
    return at->second == nullptr ? kNotDrawn : at->second->evidence(meant);
}

std::optional<Explanation> SlipSearch::explanation(std::size_t row, const SlipUndone& slip,
                                                   const WrittenProof& proof) {
    auto meant = placedRow(trial_.worded(), row, proof, size_);
    if (!meant) return std::nullopt;
    Explanation found;
    found.row = row;
    found.kind = slip.kind;
    found.elements = slip.elements;
    found.figure = slip.figure;
    found.written = slip.written;
    found.to = slip.to;
    found.term = slip.meant.term;
    found.meant = std::move(*meant);
    found.logOdds =
        slipOdds(pattern_.rows[row], slip, letters_.size()) + textOdds(pattern_, proof, row);
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
    found.logOdds +=
        evidenceOf(row, found.meant, *written) + mirrorOddsOf(found.meant) - mirrorOddsOf(*written);
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
    trial_.unword(row);
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
                return a.row == b.row && a.kind == b.kind && a.places == b.places &&
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

bool SlipSearch::adviseOn(Finding& finding) {
    if (pattern_.rows.size() > kMostRows) return false;
    if (finding.severity == Severity::Note && !mayBeMeantToClose(proof_)) return false;
    std::vector<Explanation> found;
    costLeft_ = kMostCost;
    for (const std::size_t row : rowsToTry(finding)) tryRow(row, finding, found);
    if (found.empty()) return false;
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; });
    std::map<std::pair<int, int>, double> weights;
    double sum = 0;
    for (const Explanation& one : found) {
        const double weight = std::exp(one.logOdds - found.front().logOdds);
        sum += weight;
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
    if (isNote && odds < kSureEnough) return true;
    std::vector<std::size_t> chosen = offered(found, finding, true);
    // What is wrong in one size alone may be mended in it alone.
    const bool inSize = chosen.empty() && !finding.sizes.empty() && !pattern_.sizes.empty();
    if (inSize) chosen = offered(found, finding, false);
    for (const std::size_t one : chosen) {
        const std::size_t row = found[one].row;
        Mend mend = mendOf(pattern_.rows[row], placedRow(pattern_, row, proof_, size_), found[one]);
        if (inSize) mend.label = "Size " + pattern_.sizes[size_] + ": " + mend.label;
        finding.mends.push_back(std::move(mend));
    }
    return true;
}

}  // namespace lacewright
