#include "core/verdict/slip_odds.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string_view>

#include "core/check/balance_habit.h"
#include "core/check/mirror_partner.h"
#include "core/check/open_ends.h"
#include "core/check/row_mirror.h"
#include "core/check/slips.h"
#include "core/stitch/catalogue.h"
#include "core/verdict/figure_slips.h"
#include "core/verdict/slip_letters.h"

namespace lacewright {
namespace {

constexpr double kAnotherSlip = 6.0;  // log odds against what a second slip would have to explain
constexpr double kAgreeBefore = 1.0;  // of rows seen, how many work as many repeats
constexpr std::int64_t kManyRepeats = 100;
constexpr std::int64_t kRepeatsMore = 2;
constexpr std::size_t kMostRowsOut = 2;  // of a text that may be meant to close
constexpr double kOtherHand = 2.0;      // log odds against purling two together among knit stitches
constexpr double kMirrorsAtMost = 4.0;  // log odds: of all mends, some happen to make a row mirror
constexpr double kRestMistaken = 0.002;  // "to last 3 sts" for another number

bool isBalanced(const WrittenRowProof& row) {
    return row.verdict == RowVerdict::Fits ? row.before == row.after
                                           : row.counted.forms.takes == row.counted.forms.makes;
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
    return isPurled(working.rightId) ? purled == 0 && knitted > 0 : knitted == 0 && purled > 0;
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
    double all = kRowsSeenBefore;
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
    double seen = kRowsSeenBefore;
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

}  // namespace

double slipOdds(const WrittenRow& row, const SlipUndone& slip, std::size_t letters) {
    const bool ground = slip.meant.takes == 1 && slip.meant.makes == 1;
    const double figure = ground ? 1 : kFigureSlips;
    const double hand = isOfOtherHand(row.elements, slip.meant) ? -kOtherHand : 0;
    switch (slip.kind) {
        case SlipUndone::Kind::Reworked:
            return hand + std::log(kRedrawn * figure / static_cast<double>(letters - 1));
        case SlipUndone::Kind::PutIn:
            return hand + std::log(kLeftOut * figure / static_cast<double>(letters));
        case SlipUndone::Kind::Rest:
            return std::log(kRestMistaken /
                            std::max(1, std::abs(slip.figure.of(0) - slip.written.of(0))));
        case SlipUndone::Kind::Count:
        case SlipUndone::Kind::Brackets:
            return figureOdds(slip.figure, slip.written);
        case SlipUndone::Kind::LeftOut:
            return std::log(kDrawnTwice * figure * (slip.twice ? 1 : kUnlikeNeighbour));
    }
    return 0;
}

std::size_t statedWrongly(const WrittenProof& proof) {
    const auto isWrong = [](const auto& said) { return said.stated.has_value(); };
    return static_cast<std::size_t>(std::count_if(proof.rows.begin(), proof.rows.end(), isWrong) +
                                    std::count_if(proof.again.begin(), proof.again.end(), isWrong));
}

namespace {

// Brackets written out mirror as often as they are worked, and that is one thing all the same.
std::size_t periodOf(const std::vector<MirrorStitch>& stitches) {
    for (std::size_t period = 1; period < stitches.size(); ++period) {
        if (stitches.size() % period == 0 &&
            std::equal(stitches.begin() + static_cast<std::ptrdiff_t>(period), stitches.end(),
                       stitches.begin()))
            return period;
    }
    return stitches.size();
}

double either(double logOdds, double others) {
    return std::log((std::exp(logOdds) + std::exp(others)) / 2);
}

double uncappedMirrorOdds(const PlacedRow& row) {
    const StitchCatalogue& stitches = *builtInStitches();
    std::map<std::string, int> ownNames;  // below 0
    std::vector<MirrorStitch> all;
    for (const RowStitch& stitch : row.stitches) {
        const auto index = stitch.own ? std::nullopt : stitches.find(stitch.id);
        if (index) {
            all.push_back(mirrorStitch(stitches, usualStitch(stitches, *index, false)));
            continue;
        }
        const int name =
            ownNames.try_emplace(stitch.id, -1 - static_cast<int>(ownNames.size())).first->second;
        all.push_back({name, name, stitch.takes != 1 || stitch.makes != 1, false});
    }
    const auto repeat = std::find_if(row.parts.begin(), row.parts.end(),
                                     [](const PlacedRow::Part& part) { return part.repeats; });
    if (repeat == row.parts.end()) {
        const std::size_t period = periodOf(all);
        const bool ring = period < all.size();
        all.resize(period);
        return ring ? either(mirrorOdds(all, true), mirrorOdds(all, false))
                    : mirrorOdds(all, false);
    }
    const auto first = all.begin() + static_cast<std::ptrdiff_t>(repeat->first);
    const std::vector<MirrorStitch> ring(first,
                                         first + static_cast<std::ptrdiff_t>(repeat->length));
    const double around = mirrorOdds(ring, true);
    if (ring.size() == all.size()) return around;
    // With what stands at its edges the row may mirror about its middle, however often it repeats:
    // once and twice are enough to tell.
    std::vector<MirrorStitch> twice = all;
    twice.insert(twice.begin() + static_cast<std::ptrdiff_t>(repeat->first), ring.begin(),
                 ring.end());
    const double whole = std::min(mirrorOdds(all, false), mirrorOdds(twice, false));
    return either(around, whole);
}

}  // namespace

double mirrorOddsOf(const PlacedRow& row) {
    return std::min(uncappedMirrorOdds(row), kMirrorsAtMost);
}

bool isWhole(const WrittenProof& proof) {
    return proof.faulty.empty() && statedWrongly(proof) == 0;
}

bool isPlainRepeat(const PlacedRow& row) {
    return std::any_of(row.parts.begin(), row.parts.end(), [&](const PlacedRow::Part& part) {
        if (!part.repeats || part.length == 0) return false;
        const auto first = row.stitches.begin() + static_cast<std::ptrdiff_t>(part.first);
        return first->takes == 1 && first->makes == 1 &&
               std::all_of(first, first + static_cast<std::ptrdiff_t>(part.length),
                           [&](const RowStitch& stitch) { return stitch.id == first->id; });
    });
}

double textOdds(const WrittenPattern& pattern, const WrittenProof& proof, std::size_t row) {
    // A marker that is lost explains nothing either.
    const auto lost = std::count_if(proof.rows.begin(), proof.rows.end(),
                                    [](const auto& of) { return of.counted.toUnknownPlace; });
    const auto unexplained =
        proof.faulty.size() + statedWrongly(proof) + static_cast<std::size_t>(lost);
    double odds = -kAnotherSlip * static_cast<double>(unexplained) + balanceOf(proof) +
                  agreementOf(proof, row);
    const auto& closes = pattern.repeatFrom ? proof.closesFrom : proof.closes;
    if (!closes.value_or(true)) odds -= pattern.repeatFrom ? kAnotherSlip : kCloses;
    return odds;
}

bool shapes(const WrittenRowProof& row) {
    return row.counted.overs.all != AffineForm() ||
           row.counted.forms.takes != row.counted.forms.makes;
}

bool mayBeMeantToClose(const WrittenProof& proof) {
    std::size_t out = 0;
    bool increases = false;
    bool decreases = false;
    for (const WrittenRowProof& row : proof.rows) {
        if (!shapes(row)) continue;
        const RowForms& forms = row.counted.forms;
        out += isBalanced(row) ? 0 : 1;
        increases = increases || row.counted.overs.all != AffineForm();
        decreases = decreases || forms.takes + row.counted.overs.all != forms.makes;
    }
    return increases && decreases && out <= kMostRowsOut;
}

}  // namespace lacewright
