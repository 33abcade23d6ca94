#include "core/check/row_case.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/check/misfits.h"
#include "core/count/tally.h"

namespace lacewright {
namespace {

// How often a cell is drawn wrong, or a stitch lost or drawn twice, before anything is known.
constexpr double kRedrawn = 0.002;
constexpr double kPutIn = 0.001;
constexpr double kTakenOut = 0.001;
constexpr double kUnlikeNeighbour = 0.05;  // a surplus stitch is mostly one drawn twice
constexpr double kFigureSlips = 5.0;       // times as often as in the ground, a slip is in a figure
constexpr double kFigureLost = 3.0;        // log odds against pushing a figure out of the chart
constexpr double kSurest = 40.0;           // log odds no belief about one cell goes beyond
constexpr std::size_t kShiftsKept = 40;
constexpr int kLargestReach = 6;
constexpr double kNever = -std::numeric_limits<double>::infinity();

// What is hit by a slip is what was meant to stand there.
double slipsIn(int letter) {
    return letter == Alphabet::kGround ? 1 : kFigureSlips;
}

GroupMove differenceOf(const Chart& chart, StitchIndex after, StitchIndex before) {
    const Stitch& coming = (*chart.stitches)[after];
    const Stitch& going = (*chart.stitches)[before];
    return {coming.takes - going.takes, coming.makes - going.makes};
}

GroupMove sumOf(const GroupMoves& moves) {
    GroupMove sum;
    for (const auto& [group, move] : moves) {
        sum.takes += move.takes;
        sum.makes += move.makes;
    }
    return sum;
}

int reachFor(const GroupMoves& wanted, int group) {
    const auto found = wanted.find(group);
    if (found == wanted.end()) return 2;
    const int largest = std::max(std::abs(found->second.takes), std::abs(found->second.makes));
    return std::clamp(largest + 1, 2, kLargestReach);
}

}  // namespace

double logAdd(double a, double b) {
    if (a < b) std::swap(a, b);
    return b == kNever ? a : a + std::log1p(std::exp(b - a));
}

RowCase::RowCase(const Chart& chart, int rowIndex, const Beliefs& beliefs, const GroupMoves& wanted)
    : rowIndex_(rowIndex),
      wanted_(wanted),
      groups_(groupsOf(pathOn(chart, rowIndex, nullptr), chart.width)),
      logShifts_(kNever) {
    const RowBeliefs row = beliefs.of(rowIndex);
    const int y = rowIndex - beliefs.grid().firstRow();
    findOdds(chart, beliefs, row, y);
    if (!chart.row(rowIndex).traits().hasWide) findShifts(chart, beliefs, row);
}

const RowOdds* RowCase::odds(int group) const {
    const auto found = odds_.find(group);
    return found == odds_.end() ? nullptr : &found->second;
}

double RowCase::logRedraws() const {
    double sum = 0;
    for (const auto& [group, move] : wanted_) {
        const RowOdds* odds = this->odds(group);
        if (move == GroupMove{}) continue;
        const bool reachable = odds != nullptr && std::abs(move.takes) <= odds->reach() &&
                               std::abs(move.makes) <= odds->reach();
        sum += reachable ? odds->logSum(move.takes, move.makes) : kNever;
    }
    return sum;
}

void RowCase::findOdds(const Chart& chart, const Beliefs& beliefs, const RowBeliefs& row, int y) {
    const Alphabet& alphabet = beliefs.alphabet();
    const double each = kRedrawn / std::max(1, alphabet.size() - 1);
    std::map<int, std::vector<CellAlternatives>> cells;
    for (int x = 0; x < chart.width; ++x) {
        const auto drawn = beliefs.grid().at(x, y);
        if (drawn < 0) continue;
        const auto stitchOf = [&](int letter) -> const Stitch& {
            return (*chart.stitches)[alphabet.stitches[static_cast<std::size_t>(letter)]];
        };
        CellAlternatives cell{x + 1, {}};
        for (int letter = 0; letter < alphabet.size(); ++letter) {
            const int takes = stitchOf(letter).takes - stitchOf(drawn).takes;
            const int makes = stitchOf(letter).makes - stitchOf(drawn).makes;
            if (takes == 0 && makes == 0) continue;
            const double log = row.of(x)[letter] - row.of(x)[drawn];
            cell.others.push_back(
                {static_cast<Alphabet::Letter>(letter), takes, makes,
                 each * slipsIn(letter) * std::exp(std::clamp(log, -kSurest, kSurest))});
        }
        cells[groups_[static_cast<std::size_t>(x)]].push_back(std::move(cell));
    }
    for (auto& [group, some] : cells) {
        odds_.emplace(group, RowOdds(std::move(some), reachFor(wanted_, group)));
    }
}

void RowCase::findShifts(const Chart& chart, const Beliefs& beliefs, const RowBeliefs& row) {
    const Alphabet& alphabet = beliefs.alphabet();
    const std::vector<StitchIndex>& drawn = chart.row(rowIndex_).cells();
    const auto lettersOf = [&](const std::vector<StitchIndex>& cells) {
        std::vector<Alphabet::Letter> letters;
        letters.reserve(cells.size());
        for (const StitchIndex index : cells) letters.push_back(alphabet.letterOf[index]);
        return letters;
    };
    const double letters = alphabet.size();
    const double asDrawn = beliefs.weightOf(rowIndex_, row, lettersOf(drawn));
    const GroupMove inAll = sumOf(wanted_);
    const std::size_t width = drawn.size();
    // `coming` is the stitch that the row then holds besides, `going` the one it holds no longer.
    const auto consider = [&](bool putIn, std::size_t x, StitchIndex coming, StitchIndex going,
                              double log) {
        if (differenceOf(chart, coming, going) != inAll) return;
        std::vector<StitchIndex> after = drawn;
        if (putIn) after.pop_back();
        const auto at = after.begin() + static_cast<std::ptrdiff_t>(x);
        putIn ? after.insert(at, coming) : after.erase(at);
        if (!putIn) after.push_back(coming);
        if (after == drawn || !fitsAfter(chart, after)) return;
        log += beliefs.weightOf(rowIndex_, row, lettersOf(after)) - asDrawn;
        shifts_.push_back(
            {putIn, static_cast<int>(x) + 1, putIn ? coming : going, std::move(after), log});
    };
    const double pushedOut = alphabet.letterOf[drawn.back()] > Alphabet::kGround ? -kFigureLost : 0;
    for (std::size_t x = 0; x < width; ++x) {
        for (const StitchIndex stitch : alphabet.stitches) {
            if (x > 0 && drawn[x - 1] == stitch) continue;  // the same as put in one column before
            consider(true, x, stitch, drawn.back(),
                     pushedOut + std::log(kPutIn * slipsIn(alphabet.letterOf[stitch]) / letters));
        }
        if (x > 0 && drawn[x - 1] == drawn[x]) continue;  // the same as taken out one column before
        const bool twice = x + 1 < width && drawn[x + 1] == drawn[x];
        const double log = std::log(kTakenOut * slipsIn(alphabet.letterOf[drawn[x]]) *
                                    (twice ? 1 : kUnlikeNeighbour));
        for (const StitchIndex filler : alphabet.stitches)
            consider(false, x, filler, drawn[x], log);
    }
    std::stable_sort(shifts_.begin(), shifts_.end(),
                     [](const RowShift& a, const RowShift& b) { return a.logOdds > b.logOdds; });
    if (shifts_.size() > kShiftsKept) shifts_.resize(kShiftsKept);
    for (const RowShift& shift : shifts_) logShifts_ = logAdd(logShifts_, shift.logOdds);
}

bool RowCase::fitsAfter(const Chart& chart, const std::vector<StitchIndex>& after) const {
    std::vector<GroupMove> change(chart.repeats.size() + 1);
    const auto& before = chart.row(rowIndex_).cells();
    for (std::size_t x = 0; x < after.size(); ++x) {
        if (after[x] == before[x]) continue;
        const GroupMove difference = differenceOf(chart, after[x], before[x]);
        GroupMove& move = change[static_cast<std::size_t>(groups_[x] + 1)];
        move.takes += difference.takes;
        move.makes += difference.makes;
    }
    for (std::size_t g = 0; g < change.size(); ++g) {
        const auto found = wanted_.find(static_cast<int>(g) - 1);
        if (change[g] != (found == wanted_.end() ? GroupMove{} : found->second)) return false;
    }
    return true;
}

double RowCase::logOfAnySlip(int letters) {
    return std::log(kPutIn / letters);
}

}  // namespace lacewright
