#include "core/check/row_case.h"

#include <algorithm>
#include <cmath>

#include "core/check/log_odds.h"
#include "core/check/misfits.h"
#include "core/count/tally.h"

namespace lacewright {
namespace {

// How often a cell is drawn wrong, or a stitch lost or drawn twice, before anything is known.
constexpr double kRedrawn = 0.002;
constexpr double kPutIn = 0.002;
constexpr double kTakenOut = 0.001;
constexpr double kUnlikeNeighbour = 0.05;  // a surplus stitch is mostly one drawn twice
constexpr double kFigureSlips = 5.0;       // times as often as in the ground, a slip is in a figure
constexpr double kFigureLost = 3.0;        // log odds against pushing a figure out of the chart
constexpr double kSurest = 40.0;           // log odds no belief about one cell goes beyond
constexpr std::size_t kShiftsKept = 40;
constexpr std::size_t kMapsAtFirst = 6;
constexpr int kLargestReach = 6;

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

RowCase::RowCase(const Chart& chart, int rowIndex, const Beliefs& beliefs, const GroupMoves& wanted)
    : rowIndex_(rowIndex),
      wanted_(wanted),
      groups_(groupsOf(pathOn(chart, rowIndex, nullptr), chart.width)),
      logShifts_(kImpossible) {
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
        sum += reachable ? odds->logSum(move.takes, move.makes) : kImpossible;
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
    const double asDrawn = beliefs.weightOf(row, lettersOf(drawn));
    const double atFirst = beliefs.weightOf(row, lettersOf(drawn), kMapsAtFirst);
    const GroupMove inAll = sumOf(wanted_);
    const auto isFigure = [&](StitchIndex index) {
        const auto letter = alphabet.letterOf[index];
        return letter > Alphabet::kGround && letter != alphabet.noStitch;
    };
    // `coming` is the stitch that the row then holds besides, `going` the one it holds no longer;
    // the cells between `x` and `end` move.
    const auto consider = [&](bool putIn, std::size_t x, std::size_t end, StitchIndex coming,
                              StitchIndex going, double log) {
        if (differenceOf(chart, coming, going) != inAll) return;
        std::vector<StitchIndex> after = drawn;
        const auto cell = [&](std::size_t at) {
            return after.begin() + static_cast<std::ptrdiff_t>(at);
        };
        if (putIn) {
            std::rotate(cell(x), cell(end), cell(end + 1));
            after[x] = coming;
        } else {
            std::rotate(cell(x), cell(x + 1), cell(end + 1));
            after[end] = coming;
        }
        const bool known = std::any_of(shifts_.begin(), shifts_.end(),
                                       [&](const RowShift& s) { return s.after == after; });
        if (after == drawn || known || !fitsAfter(chart, after)) return;
        log += beliefs.weightOf(row, lettersOf(after), kMapsAtFirst) - atFirst;
        shifts_.push_back(
            {putIn, static_cast<int>(x) + 1, putIn ? coming : going, std::move(after), log});
    };
    for (std::size_t x = 0; x < drawn.size(); ++x) {
        for (const std::size_t end : endsOfShift(alphabet, drawn, x)) {
            const double pushedOut = isFigure(drawn[end]) ? -kFigureLost : 0;
            for (const StitchIndex stitch : alphabet.stitches) {
                if (x > 0 && drawn[x - 1] == stitch) continue;  // the same as one column before
                consider(
                    true, x, end, stitch, drawn[end],
                    pushedOut + std::log(kPutIn * slipsIn(alphabet.letterOf[stitch]) / letters));
            }
            if (x > 0 && drawn[x - 1] == drawn[x]) continue;  // the same as one column before
            const bool twice = x + 1 < drawn.size() && drawn[x + 1] == drawn[x];
            const double log = std::log(kTakenOut * slipsIn(alphabet.letterOf[drawn[x]]) *
                                        (twice ? 1 : kUnlikeNeighbour));
            for (const StitchIndex filler : alphabet.stitches)
                consider(false, x, end, filler, drawn[x], log);
        }
    }
    // The likeliest by a few symmetries are judged by all of them.
    const auto likelier = [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; };
    std::stable_sort(shifts_.begin(), shifts_.end(), likelier);
    if (shifts_.size() > kShiftsKept) shifts_.resize(kShiftsKept);
    for (RowShift& shift : shifts_) {
        const auto after = lettersOf(shift.after);
        shift.logOdds += (beliefs.weightOf(row, after) - asDrawn) -
                         (beliefs.weightOf(row, after, kMapsAtFirst) - atFirst);
    }
    std::stable_sort(shifts_.begin(), shifts_.end(), likelier);
    for (const RowShift& shift : shifts_) logShifts_ = logAdd(logShifts_, shift.logOdds);
}

// Where cells that move from column index `x` on may come to rest: in a gap, at the end of the
// repeat, at the end of the row.
std::vector<std::size_t> RowCase::endsOfShift(const Alphabet& alphabet,
                                              const std::vector<StitchIndex>& drawn,
                                              std::size_t x) const {
    std::size_t ofGroup = x;
    while (ofGroup + 1 < drawn.size() && groups_[ofGroup + 1] == groups_[x]) ++ofGroup;
    std::vector<std::size_t> ends{drawn.size() - 1};
    if (ofGroup != ends[0]) ends.push_back(ofGroup);
    for (std::size_t gap = x + 1; alphabet.noStitch != Alphabet::kNone && gap <= ofGroup; ++gap) {
        if (alphabet.letterOf[drawn[gap]] != alphabet.noStitch) continue;
        if (std::find(ends.begin(), ends.end(), gap) == ends.end()) ends.push_back(gap);
        break;
    }
    return ends;
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
