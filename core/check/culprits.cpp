#include "core/check/culprits.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/check/log_odds.h"

namespace lacewright {
namespace {

constexpr std::size_t kMaxNeighbourhoods = 4;
constexpr double kWorthALook = 0.01;  // moves less likely than this are left aside

}  // namespace

CulpritSearch::CulpritSearch(const Chart& chart)
    : chart_(chart),
      alphabet_(alphabetOf(chart)),
      links_(linksOf(chart)),
      ends_(chart, links_),
      balance_(chart, links_) {}

const Beliefs* CulpritSearch::beliefsAt(int rowIndex) {
    for (const auto& beliefs : beliefs_) {
        if (beliefs->covers(rowIndex)) return beliefs.get();
    }
    if (beliefs_.size() == kMaxNeighbourhoods) return nullptr;
    beliefs_.push_back(std::make_unique<Beliefs>(chart_, alphabet_, rowIndex));
    return beliefs_.back().get();
}

RowCase* CulpritSearch::caseOf(int rowIndex) {
    auto& rowCase = cases_[rowIndex];
    if (rowCase != nullptr) return rowCase.get();
    const Beliefs* beliefs = beliefsAt(rowIndex);
    if (beliefs == nullptr) return nullptr;
    GroupMoves wanted;
    for (const int group : groups()) {
        const GroupMove move{-excessIn(rowIndex, group), excessOut(rowIndex, group)};
        if (move != GroupMove{}) wanted[group] = move;
    }
    rowCase = std::make_unique<RowCase>(chart_, rowIndex, *beliefs, wanted, ends_, balance_);
    return rowCase.get();
}

// Log odds that a row was meant to take and make so much more in a group. Requires: caseOf(the
// row).
double CulpritSearch::logMove(int rowIndex, int group, const GroupMove& move) {
    const RowCase& rowCase = *caseOf(rowIndex);
    const RowOdds* odds = rowCase.odds(group);
    if (odds == nullptr) return move == GroupMove{} ? 0 : kImpossible;
    if (std::abs(move.takes) > odds->reach() || std::abs(move.makes) > odds->reach())
        return kImpossible;
    const double redraws = odds->logSum(move.takes, move.makes);
    return rowCase.favour(group, move) + logAdd(redraws, rowCase.logShiftsTo(group, move));
}

std::vector<int> CulpritSearch::groups() const {
    std::vector<int> groups;
    for (int group = kOutsideRepeats; group < static_cast<int>(chart_.repeats.size()); ++group) {
        groups.push_back(group);
    }
    return groups;
}

int CulpritSearch::excessIn(int rowIndex, int group) const {
    if (closingAt_ == rowIndex) return links_.closing->of(group).value_or(0);
    return links_.rows[static_cast<std::size_t>(rowIndex)].of(group).value_or(0);
}

int CulpritSearch::excessOut(int rowIndex, int group) const {
    const int above = rowIndex + 1 < chart_.height() ? excessIn(rowIndex + 1, group) : 0;
    const bool closes = links_.closing && links_.closing->below == rowIndex && !closingAt_;
    if (!closes || above != 0) return above;
    // An excess that the first row shows against the row below it as well is its own.
    const int closing = links_.closing->of(group).value_or(0);
    return excessIn(links_.closingRow, group) == closing ? 0 : closing;
}

bool CulpritSearch::involved(int rowIndex) const {
    const auto all = groups();
    return std::any_of(all.begin(), all.end(), [&](int group) {
        return excessIn(rowIndex, group) != 0 || excessOut(rowIndex, group) != 0;
    });
}

double CulpritSearch::accuse(int rowIndex, bool byWhatItMakes, std::vector<CellGuess>& guesses) {
    const RowCase* rowCase = caseOf(rowIndex);
    if (rowCase == nullptr) return kImpossible;
    const std::vector<int> run = runAround(rowIndex);
    const double shifted =
        rowCase->shifts().empty()
            ? 0
            : std::exp(rowCase->logShifts() - logAdd(rowCase->logShifts(), rowCase->logRedraws()));
    double guilty = 0;
    double logOdds = 0;
    for (const int group : groups()) {
        const auto moves = movesOf(run, group, rowIndex);
        const bool out = excessIn(rowIndex, group) != 0 || excessOut(rowIndex, group) != 0;
        if (!moves && out) logOdds = kImpossible;
        if (!moves) continue;
        logOdds += moves->logOdds;
        const RowOdds& odds = *rowCase->odds(group);
        double ofGroup = 0;
        for (int takes = -moves->reach, i = 0; takes <= moves->reach; ++takes) {
            for (int makes = -moves->reach; makes <= moves->reach; ++makes, ++i) {
                const double share = moves->share[static_cast<std::size_t>(i)];
                if ((byWhatItMakes ? makes : takes) == 0 || share < kWorthALook) continue;
                ofGroup += share;
                if (odds.logSum(takes, makes) == kImpossible) continue;
                const auto shares = odds.shares(takes, makes);
                for (std::size_t cell = 0; cell < shares.size(); ++cell) {
                    if (shares[cell] <= 0) continue;
                    guesses.push_back({rowIndex, odds.cells()[cell].column,
                                       share * shares[cell] * (1 - shifted)});
                }
            }
        }
        guilty = std::max(guilty, ofGroup);
    }
    for (const RowShift& shift : rowCase->shifts()) {
        guesses.push_back(
            {rowIndex, shift.column,
             guilty * shifted *
                 std::exp(shift.logOdds + rowCase->favour(shift.moves) - rowCase->logShifts())});
    }
    return logAdd(logOdds, rowCase->logShifts());
}

std::vector<std::pair<int, bool>> CulpritSearch::rowsToBlame(int rowIndex, bool closing) const {
    std::vector<std::pair<int, bool>> rows{{rowIndex, false}};
    const int below = closing ? links_.closing->below : rowIndex - 1;
    if (below >= 0) rows.push_back({below, true});
    return rows;
}

double CulpritSearch::logApart(int rowIndex) {
    if (caseOf(rowIndex) == nullptr || caseOf(rowIndex + 1) == nullptr) return 0;
    double apart = kImpossible;
    double together = kImpossible;
    inEveryWay(rowIndex, false, [&] {
        double eachByItself = 0;
        double asOne = 0;
        int out = 0;  // groups
        for (const int group : groups()) {
            const int in = excessIn(rowIndex, group);
            const int above = excessIn(rowIndex + 1, group);
            if (in != 0 || above != 0) ++out;
            eachByItself +=
                logMove(rowIndex, group, {-in, 0}) + logMove(rowIndex + 1, group, {-above, 0});
            asOne += logMove(rowIndex, group, {-in, above});
        }
        // Where stitches only change groups, it is the edge of a repeat that is wrong.
        if (out > 1) return;
        apart = std::max(apart, eachByItself);
        together = std::max(together, asOne);
    });
    return apart == together ? 0 : apart - together;
}

// Gives the log odds of this fault, with all that may have come about.
double CulpritSearch::accuseAll(int rowIndex, bool closing, const std::vector<int>& following,
                                std::vector<CellGuess>& guesses) {
    double logOdds = 0;
    for (const auto& [row, byWhatItMakes] : rowsToBlame(rowIndex, closing)) {
        judgeFirst(row, closing && !byWhatItMakes, [&, row = row, makes = byWhatItMakes] {
            const double ofRow = accuse(row, makes, guesses);
            if (!makes) logOdds = ofRow;
        });
    }
    for (const int row : following) accuse(row, false, guesses);
    return logOdds;
}

std::vector<CellGuess> CulpritSearch::suspects(int rowIndex, bool closing,
                                               const std::vector<int>& following) {
    const Link* link = closing ? (links_.closing ? &*links_.closing : nullptr)
                               : &links_.rows[static_cast<std::size_t>(rowIndex)];
    if (link == nullptr || link->fits()) return {};
    struct Way {
        std::vector<CellGuess> guesses;
        double logOdds = kImpossible;
    };
    std::vector<Way> ways;
    double likeliest = kImpossible;
    inEveryWay(rowIndex, closing, [&] {
        Way& way = ways.emplace_back();
        way.logOdds = accuseAll(rowIndex, closing, following, way.guesses);
        likeliest = std::max(likeliest, way.logOdds);
    });
    std::map<std::pair<int, int>, double> merged;
    double sum = 0;
    for (const Way& way : ways) {
        const double chance = ways.size() == 1 ? 1 : std::exp(way.logOdds - likeliest);
        for (const CellGuess& guess : way.guesses) {
            merged[{guess.row, guess.column}] += chance * guess.weight;
            sum += chance * guess.weight;
        }
    }
    std::vector<CellGuess> ranked;
    if (!(sum > 0)) return ranked;
    for (const auto& [cell, weight] : merged)
        ranked.push_back({cell.first, cell.second, weight / sum});
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](const auto& a, const auto& b) { return a.weight > b.weight; });
    return ranked;
}

}  // namespace lacewright
