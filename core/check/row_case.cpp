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
constexpr double kFigureLost = 3.0;        // log odds against pushing a figure out of the chart
constexpr double kSurest = 40.0;           // log odds no belief goes beyond
constexpr std::size_t kShiftsKept = 40;
constexpr int kLargestReach = 6;
constexpr double kNever = -std::numeric_limits<double>::infinity();

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
            cell.others.push_back({static_cast<Alphabet::Letter>(letter), takes, makes,
                                   each * std::exp(std::clamp(log, -kSurest, kSurest))});
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
        for (const StitchIndex index : cells) letters.push_back(alphabet.letterOf[index]);
        return letters;
    };
    const double asDrawn = beliefs.weightOf(rowIndex_, row, lettersOf(drawn));
    const auto consider = [&](bool putIn, std::size_t x, StitchIndex stitch,
                              std::vector<StitchIndex> after, double log) {
        if (!fitsAfter(chart, after)) return;
        log += beliefs.weightOf(rowIndex_, row, lettersOf(after)) - asDrawn;
        shifts_.push_back(
            {putIn, static_cast<int>(x) + 1, stitch, std::move(after), std::min(log, kSurest)});
    };
    const std::size_t width = drawn.size();
    const auto* last = row.of(chart.width - 1);
    const StitchIndex filler =
        alphabet
            .stitches[static_cast<std::size_t>(std::max_element(last, last + row.letters) - last)];
    const double pushedOut = alphabet.letterOf[drawn.back()] > Alphabet::kGround ? -kFigureLost : 0;
    for (std::size_t x = 0; x < width; ++x) {
        for (const StitchIndex stitch : alphabet.stitches) {
            if (x > 0 && drawn[x - 1] == stitch) continue;  // the same as put in one column before
            std::vector<StitchIndex> after = drawn;
            after.insert(after.begin() + static_cast<std::ptrdiff_t>(x), stitch);
            after.pop_back();
            consider(true, x, stitch, std::move(after),
                     pushedOut + std::log(kPutIn / alphabet.size()));
        }
        if (x > 0 && drawn[x - 1] == drawn[x]) continue;  // the same as taken out one column before
        std::vector<StitchIndex> after = drawn;
        after.erase(after.begin() + static_cast<std::ptrdiff_t>(x));
        after.push_back(filler);
        const bool twice = x + 1 < width && drawn[x + 1] == drawn[x];
        consider(false, x, drawn[x], std::move(after),
                 std::log(kTakenOut * (twice ? 1 : kUnlikeNeighbour)));
    }
    std::stable_sort(shifts_.begin(), shifts_.end(),
                     [](const RowShift& a, const RowShift& b) { return a.logOdds > b.logOdds; });
    if (shifts_.size() > kShiftsKept) shifts_.resize(kShiftsKept);
    for (const RowShift& shift : shifts_) logShifts_ = logAdd(logShifts_, shift.logOdds);
}

bool RowCase::fitsAfter(const Chart& chart, const std::vector<StitchIndex>& after) const {
    std::map<int, GroupMove> change;
    const auto& before = chart.row(rowIndex_).cells();
    for (std::size_t x = 0; x < after.size(); ++x) {
        GroupMove& move = change[groups_[x]];
        for (const auto& [index, sign] : {std::pair{after[x], 1}, std::pair{before[x], -1}}) {
            if (index == kCovered) continue;
            move.takes += sign * (*chart.stitches)[index].takes;
            move.makes += sign * (*chart.stitches)[index].makes;
        }
    }
    return std::all_of(change.begin(), change.end(), [&](const auto& entry) {
        const auto found = wanted_.find(entry.first);
        return entry.second == (found == wanted_.end() ? GroupMove{} : found->second);
    });
}

}  // namespace lacewright
