#include "core/verdict/slip_search.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/check/slips.h"
#include "core/stitch/catalogue.h"

namespace lacewright {
namespace {

constexpr double kAnotherSlip = 6.0;  // log odds against what a second slip would have to explain
constexpr double kSeenBefore = 2.0;   // rows thought to have been seen, and how many balanced
constexpr double kBalancedBefore = 1.6;
constexpr double kAgreeBefore = 1.0;  // of rows seen, how many work as many repeats
constexpr std::int64_t kManyRepeats = 100;
constexpr std::int64_t kRepeatsMore = 2;
constexpr std::size_t kMostRowsOut = 2;  // of a text that may be meant to close
constexpr double kOtherHand = 2.0;  // log odds against purling two together among knit stitches
constexpr double kCloses = 3.0;  // log odds for rows that can be worked again
constexpr double kNotDrawn = -4.0;  // log odds for a text that makes no chart
constexpr std::size_t kRowsTried = 4;
constexpr std::size_t kRowsTriedForClosing = 12;
constexpr int kMostProofs = 12'000;
constexpr double kLeastWeight = 0.002;
constexpr std::size_t kMostSuspects = 12;
constexpr std::size_t kMostMends = 3;

bool isBalanced(const WrittenRowProof& row) {
    return row.verdict == RowVerdict::Fits ? row.before == row.after
                                           : row.counted.forms.takes == row.counted.forms.makes;
}

bool shapes(const WrittenRowProof& row) {
    return row.counted.overs.all != AffineForm() ||
           row.counted.forms.takes != row.counted.forms.makes;
}

bool isPurled(const Working& working) {
    const std::string_view id = working.rightId;
    return id.starts_with("p") || id.starts_with("ssp") || id.starts_with("sssp");
}

// Knitted and purled stitches of the row that are neither increases nor decreases.
void countHands(const Elements& elements, int& knitted, int& purled) {
    for (const Element& element : elements) {
        if (const auto* working = std::get_if<Working>(&element.what)) {
            if (working->rightId == "k") ++knitted;
            if (working->rightId == "p") ++purled;
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            countHands(group->body, knitted, purled);
        } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            countHands(stretch->body, knitted, purled);
            countHands(stretch->lastTime, knitted, purled);
        }
    }
}

// A decrease that is purled in a row which is knitted, or the other way round.
bool isOfOtherHand(const Elements& row, const Working& working) {
    if (working.takes < 2) return false;
    int knitted = 0;
    int purled = 0;
    countHands(row, knitted, purled);
    return isPurled(working) ? purled == 0 && knitted > 0 : knitted == 0 && purled > 0;
}

// How often a row works its one starred repeat, counts that are free being large; nothing when it
// has none.
std::optional<std::int64_t> repeatsOf(const WrittenRowProof& row) {
    const auto starred = std::find_if(row.counted.own.begin(), row.counted.own.end(),
                                      [](const OwnCount& own) { return own.starred; });
    if (starred == row.counted.own.end() || row.verdict != RowVerdict::Fits) return std::nullopt;
    const auto solved = row.fit.solved.find(starred->variable);
    if (solved == row.fit.solved.end()) return std::nullopt;
    std::int64_t times = solved->second.constant();
    for (const auto& term : solved->second.terms()) times += kManyRepeats * term.coefficient;
    return times;
}

// Rows mostly work their repeats equally often, but for one or two that edges take up.
double agreementOf(const WrittenProof& proof, std::size_t row) {
    const auto own = repeatsOf(proof.rows[row]);
    if (!own) return 0;
    double agree = kAgreeBefore;
    double all = kSeenBefore;
    for (std::size_t i = 0; i < proof.rows.size(); ++i) {
        const auto others = i == row ? std::nullopt : repeatsOf(proof.rows[i]);
        if (!others) continue;
        ++all;
        agree += std::abs(*others - *own) <= kRepeatsMore ? 1 : 0;
    }
    return std::log(agree / all);
}

// Log odds of as many rows that make as many loops as they take, and as many that do not: each row
// is what those before it were, by the rule of succession.
double balanceOf(const WrittenProof& proof) {
    double balanced = kBalancedBefore;
    double seen = kSeenBefore;
    double odds = 0;
    for (const WrittenRowProof& row : proof.rows) {
        if (!shapes(row)) continue;
        const bool isSo = isBalanced(row);
        odds += std::log((isSo ? balanced : seen - balanced) / seen);
        balanced += isSo ? 1 : 0;
        ++seen;
    }
    return odds;
}

std::size_t statedWrongly(const WrittenProof& proof) {
    const auto isWrong = [](const auto& said) { return said.stated.has_value(); };
    return static_cast<std::size_t>(
        std::count_if(proof.rows.begin(), proof.rows.end(), isWrong) +
        std::count_if(proof.again.begin(), proof.again.end(), isWrong));
}

bool holds(const std::vector<std::size_t>& rows, std::size_t row) {
    return std::find(rows.begin(), rows.end(), row) != rows.end();
}

// The row without the stitches that were not there before.
PlacedRow withoutNew(const PlacedRow& row) {
    PlacedRow without;
    for (const PlacedRow::Part& part : row.parts) {
        PlacedRow::Part left = part;
        left.first = without.stitches.size();
        for (std::size_t i = part.first; i < part.first + part.length; ++i) {
            if (row.stitches[i].place != kNewPlace) without.stitches.push_back(row.stitches[i]);
        }
        left.length = without.stitches.size() - left.first;
        without.parts.push_back(left);
    }
    return without;
}

std::vector<std::size_t> placesOfNew(const PlacedRow& row) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < row.stitches.size(); ++i) {
        if (row.stitches[i].place == kNewPlace) places.push_back(i);
    }
    return places;
}

// Of the stitches that `meant` has no longer.
std::vector<std::size_t> placesLeftOut(const PlacedRow& written, const PlacedRow& meant) {
    std::vector<std::size_t> places;
    const auto compare = [&](const PlacedRow::Part& before, const PlacedRow::Part& after) {
        std::size_t next = after.first;
        for (std::size_t i = before.first; i < before.first + before.length; ++i) {
            const bool stays = next < after.first + after.length &&
                               written.stitches[i].id == meant.stitches[next].id;
            if (stays) {
                ++next;
            } else {
                places.push_back(i);
            }
        }
    };
    if (written.parts.size() == meant.parts.size()) {
        for (std::size_t part = 0; part < written.parts.size(); ++part)
            compare(written.parts[part], meant.parts[part]);
    } else {
        compare({0, written.stitches.size(), false, {}}, {0, meant.stitches.size(), false, {}});
    }
    return places;
}

std::string inWords(const RowStitch& stitch, Side side) {
    const StitchCatalogue& stitches = *builtInStitches();
    const auto index = stitch.own ? std::nullopt : stitches.find(stitch.id);
    if (!index) return stitch.id;
    const Stitch& known = stitches[*index];
    const SideWording& wording = side == Side::Wrong ? known.wrongSide : known.rightSide;
    return wording.abbreviation.empty() ? stitch.id : wording.abbreviation;
}

}  // namespace

SlipSearch::SlipSearch(const WrittenPattern& pattern, std::size_t size)
    : pattern_(pattern),
      size_(size),
      proof_(proveWritten(pattern, size)),
      letters_(lettersOf(pattern)),
      trial_(pattern),
      proofsLeft_(kMostProofs) {}

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
    const auto at = std::find_if(pattern_.rows.begin(), pattern_.rows.end(),
                                 [&](const auto& row) { return row.number == finding.row; });
    if (at == pattern_.rows.end()) return {};
    const bool closing = finding.rule == "closing";
    std::vector<std::size_t> rows;
    for (auto row = static_cast<std::size_t>(at - pattern_.rows.begin()) + 1; row-- > 0;) {
        const bool own = !closing && pattern_.rows[row].number == finding.row;
        if (!own && isPlain(row)) continue;
        rows.push_back(row);
        // A row that contradicts itself is wrong in itself.
        const bool inItself = own && proof_.rows[row].verdict == RowVerdict::WrongRest;
        if (inItself || rows.size() == (closing ? kRowsTriedForClosing : kRowsTried)) break;
    }
    return rows;
}

bool SlipSearch::explains(const WrittenProof& proof, const Finding& finding) const {
    for (const std::size_t row : proof.faulty) {
        if (!holds(proof_.faulty, row) || pattern_.rows[row].number == finding.row) return false;
    }
    if (finding.rule != "closing") return true;
    return (pattern_.repeatFrom ? proof.closesFrom : proof.closes).value_or(false);
}

// What the whole text says of a row so changed.
double SlipSearch::oddsOf(const WrittenProof& proof, std::size_t row) const {
    const auto others = proof.faulty.size() + statedWrongly(proof);
    double odds = -kAnotherSlip * static_cast<double>(others) + balanceOf(proof);
    const auto& closes = pattern_.repeatFrom ? proof.closesFrom : proof.closes;
    odds += agreementOf(proof, row);
    if (!closes.value_or(true)) odds -= pattern_.repeatFrom ? kAnotherSlip : kCloses;
    return odds;
}

double SlipSearch::priorOf(std::size_t row, const SlipUndone& slip) const {
    const double hand = isOfOtherHand(pattern_.rows[row].elements, slip.meant) ? -kOtherHand : 0;
    return hand + slipOdds(slip);
}

double SlipSearch::slipOdds(const SlipUndone& slip) const {
    const bool ground = slip.meant.takes == 1 && slip.meant.makes == 1;
    const double figure = ground ? 1 : kFigureSlips;
    const auto letters = static_cast<double>(letters_.size());
    switch (slip.kind) {
        case SlipUndone::Kind::Reworked:
            return std::log(kRedrawn * figure / (letters - 1));
        case SlipUndone::Kind::PutIn:
            return std::log(kLeftOut * figure / letters);
        case SlipUndone::Kind::LeftOut:
            return std::log(kDrawnTwice * figure * (slip.twice ? 1 : kUnlikeNeighbour));
    }
    return 0;
}

double SlipSearch::evidenceOf(std::size_t row, const PlacedRow& meant, const PlacedRow& written) {
    std::vector<int> key{static_cast<int>(row)};
    for (const PlacedRow::Part& part : written.parts) key.push_back(static_cast<int>(part.length));
    for (const PlacedRow::Part& part : meant.parts) {
        key.push_back(static_cast<int>(part.length));
        const auto first = meant.stitches.begin() + static_cast<std::ptrdiff_t>(part.first);
        const auto last = first + static_cast<std::ptrdiff_t>(part.length);
        for (int RowStitch::* count : {&RowStitch::takes, &RowStitch::makes}) {
            key.push_back(std::accumulate(first, last, 0, [&](int sum, const RowStitch& stitch) {
                return sum + stitch.*count;
            }));
        }
    }
    const auto [at, isNew] = frames_.try_emplace(key);
    if (isNew) at->second = SlipFrame::make(trial_, row, size_, meant, written);
    return at->second == nullptr ? kNotDrawn : at->second->evidence(meant);
}

std::optional<SlipSearch::Explanation> SlipSearch::explanation(std::size_t row,
                                                               const SlipUndone& slip,
                                                               const WrittenProof& proof) {
    auto meant = placedRow(trial_, row, proof, size_);
    if (!meant) return std::nullopt;
    Explanation found{row, slip.kind, {}, std::move(*meant), priorOf(row, slip) + oddsOf(proof, row)};
    auto written = placedRow(pattern_, row, proof_, size_);
    if (slip.kind == SlipUndone::Kind::PutIn) {
        written = withoutNew(found.meant);
    } else if (!written) {
        return std::nullopt;
    }
    found.places = slip.kind == SlipUndone::Kind::LeftOut ? placesLeftOut(*written, found.meant)
                                                          : placesOfNew(found.meant);
    if (found.places.empty()) return std::nullopt;
    found.logOdds += evidenceOf(row, found.meant, *written);
    return found;
}

void SlipSearch::tryRow(std::size_t row, const Finding& finding, std::vector<Explanation>& found) {
    forEachSlip(pattern_.rows[row], letters_, size_, [&](const SlipUndone& slip) {
        if (proofsLeft_-- <= 0) return;
        trial_.rows[row].elements = slip.elements;
        const WrittenProof proof = proveWritten(trial_, size_);
        if (!explains(proof, finding)) return;
        if (auto one = explanation(row, slip, proof)) found.push_back(std::move(*one));
    });
    trial_.rows[row].elements = pattern_.rows[row].elements;
}

Mend SlipSearch::mendOf(const Explanation& explanation) const {
    const WrittenRow& row = pattern_.rows[explanation.row];
    const std::size_t at = explanation.places.front();
    const auto written = placedRow(pattern_, explanation.row, proof_, size_);
    const auto meantThere = [&] { return inWords(explanation.meant.stitches[at], row.side); };
    const auto writtenThere = [&] { return inWords(written->stitches[at], row.side); };
    Mend mend;
    mend.label = row.label + ": ";
    switch (explanation.kind) {
        case SlipUndone::Kind::PutIn:
            mend.label +=
                "put in " + meantThere() + " as " + explanation.meant.placeInWords(at);
            break;
        case SlipUndone::Kind::LeftOut:
            mend.label += "leave out " + writtenThere() + ", " + written->placeInWords(at);
            break;
        case SlipUndone::Kind::Reworked:
            mend.label += "work " + meantThere() + " instead of " + writtenThere() + ", " +
                          written->placeInWords(at);
            break;
    }
    if (explanation.places.size() > 1) mend.label += ", each time";
    if (explanation.kind != SlipUndone::Kind::LeftOut) {
        for (const std::size_t place : explanation.places) {
            mend.redrawn.push_back({row.number, static_cast<int>(place) + 1,
                                    explanation.meant.stitches[place].id});
        }
    }
    mend.reworked.push_back({row.number, explanation.meant.ids()});
    return mend;
}

// Rows that are not said to be worked again may shape on purpose. A slip is likelier where a row or
// two do not balance among others that do, or balance nearly.
bool SlipSearch::mayBeMeantToClose() const {
    std::size_t out = 0;
    bool balances = false;
    for (const WrittenRowProof& row : proof_.rows) {
        if (!shapes(row)) continue;
        const AffineForm decreases =
            row.counted.forms.takes + row.counted.overs.all - row.counted.forms.makes;
        const bool both = row.counted.overs.all != AffineForm() && decreases != AffineForm();
        out += isBalanced(row) ? 0 : 1;
        balances = balances || both;
    }
    return balances && out <= kMostRowsOut;
}

// The likeliest, and no second stitch for the same place that counts the same while there are other
// places.
std::vector<std::size_t> SlipSearch::offered(const std::vector<Explanation>& found) {
    std::vector<std::size_t> chosen;
    for (const bool twins : {false, true}) {
        for (std::size_t i = 0; i < found.size() && chosen.size() < kMostMends; ++i) {
            const auto isTwin = [&](std::size_t other) {
                const Explanation& a = found[i];
                const Explanation& b = found[other];
                return a.row == b.row && a.kind == b.kind && a.places == b.places &&
                       a.meant.stitches.size() == b.meant.stitches.size();
            };
            const bool again = std::any_of(chosen.begin(), chosen.end(), isTwin);
            if (!holds(chosen, i) && (twins || !again)) chosen.push_back(i);
        }
    }
    return chosen;
}

bool SlipSearch::adviseOn(Finding& finding) {
    if (finding.severity == Severity::Note && !mayBeMeantToClose()) return false;
    std::vector<Explanation> found;
    for (const std::size_t row : rowsToTry(finding)) tryRow(row, finding, found);
    if (found.empty()) return false;
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; });
    std::map<std::pair<int, int>, double> weights;
    double sum = 0;
    for (const Explanation& one : found) {
        const double weight = std::exp(one.logOdds - found.front().logOdds);
        sum += weight;
        weights[{pattern_.rows[one.row].number, static_cast<int>(one.places.front()) + 1}] += weight;
    }
    finding.suspects.clear();
    for (const auto& [cell, weight] : weights) {
        if (weight / sum >= kLeastWeight)
            finding.suspects.push_back({cell.first, cell.second, weight / sum, {}});
    }
    std::stable_sort(finding.suspects.begin(), finding.suspects.end(),
                     [](const Suspect& a, const Suspect& b) { return a.weight > b.weight; });
    if (finding.suspects.size() > kMostSuspects) finding.suspects.resize(kMostSuspects);
    finding.mends.clear();
    for (const std::size_t one : offered(found)) finding.mends.push_back(mendOf(found[one]));
    return true;
}

}  // namespace lacewright
