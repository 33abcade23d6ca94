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
constexpr std::size_t kShiftsTried = 60;
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
    if (!chart.row(rowIndex).traits().hasWide) findShifts(chart, beliefs, row, y);
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

void RowCase::findShifts(const Chart& chart, const Beliefs& beliefs, const RowBeliefs& row, int y) {
    const Alphabet& alphabet = beliefs.alphabet();
    const int width = chart.width;
    const auto drawn = [&](int x) { return beliefs.grid().at(x, y); };
    // Cells that take no part are as likely as the ground.
    const auto belief = [&](int x, int letter) {
        return static_cast<double>(row.withoutNeighbours(x)[std::max(letter, 0)]);
    };
    const auto moved = [&](int x, int from) {
        return belief(x, drawn(from)) - belief(x, drawn(x));
    };
    struct Try {
        bool putIn;
        int x;
        StitchIndex stitch;
        double logOdds;
    };
    std::vector<Try> tries;
    const double pushedOut = drawn(width - 1) > 0 ? -kFigureLost : 0;
    int filler = 0;
    for (int letter = 1; letter < alphabet.size(); ++letter) {
        if (belief(width - 1, letter) > belief(width - 1, filler)) filler = letter;
    }
    double toLeft = pushedOut;  // everything beyond x moved one column to the left
    double toRight = belief(width - 1, filler) - belief(width - 1, drawn(width - 1));
    for (int x = width - 1; x >= 0; --x) {
        for (int letter = 0; letter < alphabet.size(); ++letter) {
            tries.push_back({true, x, alphabet.stitches[static_cast<std::size_t>(letter)],
                             toLeft + belief(x, letter) - belief(x, drawn(x)) +
                                 std::log(kPutIn / alphabet.size())});
        }
        if (x > 0) toLeft += moved(x, x - 1);
        if (x + 1 < width) toRight += moved(x, x + 1);
        const bool twice =
            (x > 0 && drawn(x - 1) == drawn(x)) || (x + 1 < width && drawn(x + 1) == drawn(x));
        tries.push_back({false, x, chart.row(rowIndex_).at(x + 1),
                         toRight + std::log(kTakenOut * (twice ? 1 : kUnlikeNeighbour))});
    }
    std::stable_sort(tries.begin(), tries.end(),
                     [](const Try& a, const Try& b) { return a.logOdds > b.logOdds; });
    if (tries.size() > kShiftsTried) tries.resize(kShiftsTried);
    for (const Try& t : tries) {
        std::vector<StitchIndex> after = chart.row(rowIndex_).cells();
        if (t.putIn) {
            after.insert(after.begin() + t.x, t.stitch);
            after.pop_back();
        } else {
            after.erase(after.begin() + t.x);
            after.push_back(alphabet.stitches[static_cast<std::size_t>(filler)]);
        }
        if (!fitsAfter(chart, after)) continue;
        const double log = std::min(t.logOdds, kSurest);
        logShifts_ = logAdd(logShifts_, log);
        shifts_.push_back({t.putIn, t.x + 1, t.stitch, std::move(after), log});
    }
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
