#include "core/check/row_case.h"

#include <algorithm>
#include <cmath>

#include "core/check/log_odds.h"
#include "core/check/row_mirror.h"
#include "core/check/slips.h"

namespace lacewright {
namespace {

constexpr double kSurest = 40.0;  // log odds no belief about one cell goes beyond
constexpr int kLargestReach = 6;

int reachFor(const GroupMoves& wanted, int group) {
    const auto found = wanted.find(group);
    if (found == wanted.end()) return 2;
    const int largest = std::max(std::abs(found->second.takes), std::abs(found->second.makes));
    return std::clamp(largest + 1, 2, kLargestReach);
}

// For every group of the row.
std::map<int, RowOdds> oddsOf(const Chart& chart, int rowIndex, const Beliefs& beliefs,
                              const RowBeliefs& row, const std::vector<int>& groups,
                              const GroupMoves& wanted) {
    const Alphabet& alphabet = beliefs.alphabet();
    const int y = rowIndex - beliefs.grid().firstRow();
    const double each = kRedrawn / std::max(1, alphabet.size() - 1);
    const auto stitchOf = [&](Alphabet::Letter letter) -> const Stitch& {
        return (*chart.stitches)[alphabet.stitchIn(rowIndex, letter)];
    };
    const RowMirror mirror(*chart.stitches, alphabet, groups);
    std::vector<StitchIndex> redrawn = chart.row(rowIndex).cells();
    const double mirrored = mirror.odds(redrawn);
    std::map<int, std::vector<CellAlternatives>> cells;
    for (int x = 0; x < chart.width; ++x) {
        const auto drawn = beliefs.grid().at(x, y);
        if (drawn < 0) continue;
        CellAlternatives cell{x + 1, {}};
        for (int i = 0; i < alphabet.size(); ++i) {
            const auto letter = static_cast<Alphabet::Letter>(i);
            const int takes = stitchOf(letter).takes - stitchOf(drawn).takes;
            const int makes = stitchOf(letter).makes - stitchOf(drawn).makes;
            if (takes == 0 && makes == 0) continue;
            redrawn[static_cast<std::size_t>(x)] = alphabet.stitchIn(rowIndex, letter);
            const double log = row.of(x)[letter] - row.of(x)[drawn];
            const double alone = std::exp(mirror.odds(redrawn) - mirrored);
            redrawn[static_cast<std::size_t>(x)] = alphabet.stitchIn(rowIndex, drawn);
            cell.others.push_back(
                {letter, takes, makes,
                 each * slipsIn(alphabet, letter) * std::exp(std::clamp(log, -kSurest, kSurest)),
                 alone});
        }
        cells[groups[static_cast<std::size_t>(x)]].push_back(std::move(cell));
    }
    std::map<int, RowOdds> odds;
    for (auto& [group, some] : cells)
        odds.emplace(group, RowOdds(std::move(some), reachFor(wanted, group)));
    return odds;
}

}  // namespace

RowCase::RowCase(const Chart& chart, int rowIndex, const Beliefs& beliefs, const GroupMoves& wanted,
                 const OpenEnds& ends, const BalanceHabit& balance)
    : row_(rowIndex), ends_(ends), balance_(balance), wanted_(wanted), logShifts_(kImpossible) {
    const RowBeliefs row = beliefs.of(rowIndex);
    const auto groups = groupsOf(pathOn(chart, rowIndex, nullptr), chart.width);
    odds_ = oddsOf(chart, rowIndex, beliefs, row, groups, wanted);
    if (chart.row(rowIndex).traits().hasWide) return;
    shifts_ = shiftsOf(chart, rowIndex, beliefs, row, groups, wanted, ends);
    for (const RowShift& shift : shifts_)
        logShifts_ = logAdd(logShifts_, shift.logOdds + favour(shift.moves));
}

double RowCase::favour(int group, const GroupMove& move) const {
    return favour({{group, move}});
}

double RowCase::favour(const GroupMoves& moves) const {
    return balance_.odds(row_, moves) + ends_.closingOdds(row_, moves);
}

const RowOdds* RowCase::odds(int group) const {
    const auto found = odds_.find(group);
    return found == odds_.end() ? nullptr : &found->second;
}

double RowCase::logRedraws() const {
    double sum = 0;
    for (const auto& [group, wanted] : wanted_) {
        double ofGroup = kImpossible;
        for (const GroupMove& move : fitting(group, wanted))
            ofGroup =
                logAdd(ofGroup, odds(group)->logSum(move.takes, move.makes) + favour(group, move));
        sum += ofGroup;
    }
    return sum;
}

double RowCase::logShiftsTo(int group, const GroupMove& move) const {
    double sum = kImpossible;
    for (const RowShift& shift : shifts_) {
        const auto found = shift.moves.find(group);
        if (found != shift.moves.end() && found->second == move) sum = logAdd(sum, shift.logOdds);
    }
    return sum;
}

// The moves within reach that fit where this one is wanted: the same or, where nothing holds the
// row to what it makes, with any number made.
std::vector<GroupMove> RowCase::fitting(int group, const GroupMove& wanted) const {
    const RowOdds* odds = this->odds(group);
    if (odds == nullptr || std::abs(wanted.takes) > odds->reach()) return {};
    std::vector<GroupMove> moves;
    for (int makes = -odds->reach(); makes <= odds->reach(); ++makes) {
        if (makes == wanted.makes || (wanted != GroupMove{} && ends_.leaveMakes(row_)))
            moves.push_back({wanted.takes, makes});
    }
    return moves;
}

std::vector<LetterRepair> RowCase::redraws(int group, const GroupMove& move,
                                           std::size_t count) const {
    std::vector<LetterRepair> all;
    for (const GroupMove& fits : fitting(group, move)) {
        for (LetterRepair& repair : odds(group)->best(fits.takes, fits.makes, count)) {
            repair.logOdds += favour(group, fits);
            all.push_back(std::move(repair));
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; });
    if (all.size() > count) all.resize(count);
    return all;
}

}  // namespace lacewright
