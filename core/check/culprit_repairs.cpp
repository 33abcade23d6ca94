#include <algorithm>
#include <cmath>

#include "core/check/culprits.h"
#include "core/check/log_odds.h"
#include "core/check/nearest_cast_ons.h"
#include "core/check/slips.h"
#include "core/count/tally.h"

// What would mend rows that do not fit.
namespace lacewright {
namespace {

constexpr std::size_t kRedrawsTried = 4;  // of each group
constexpr double kUnexplained = 6.0;      // log odds against leaving the neighbour row in error

}  // namespace

// Every group that is out is mended by its likeliest set of changes; then each in turn by its
// second and third.
void CulpritSearch::addRedraws(int rowIndex, bool byWhatItMakes, std::vector<Repair>& repairs) {
    const RowCase* rowCase = caseOf(rowIndex);
    if (rowCase == nullptr) return;
    // Both neighbours at once, or the one in question alone.
    for (const bool both : {true, false}) {
        std::vector<std::vector<LetterRepair>> choices;
        bool differs = false;
        bool possible = true;
        double logOdds = both ? 0 : -kUnexplained;
        for (const auto& [group, wanted] : rowCase->wanted()) {
            GroupMove move = wanted;
            if (!both) (byWhatItMakes ? move.takes : move.makes) = 0;
            differs = differs || move != wanted;
            if (move == GroupMove{}) {
                logOdds += rowCase->favour(group, move);
                continue;
            }
            choices.push_back(rowCase->redraws(group, move, kRedrawsTried));
            possible = possible && !choices.back().empty();
        }
        if (choices.empty() || !possible || (!both && !differs)) continue;
        const auto combine = [&](std::size_t varied, std::size_t rank) {
            Repair repair{{}, {}, {}, logOdds};
            for (std::size_t g = 0; g < choices.size(); ++g) {
                const LetterRepair& chosen = choices[g][g == varied ? rank : 0];
                for (const LetterChange& change : chosen.changes) {
                    repair.cells.push_back(
                        {rowIndex, change.column, alphabet_.stitchIn(rowIndex, change.letter)});
                }
                repair.logOdds += chosen.logOdds;
            }
            repairs.push_back(std::move(repair));
        };
        combine(0, 0);
        for (std::size_t g = 0; g < choices.size(); ++g) {
            for (std::size_t rank = 1; rank < choices[g].size(); ++rank) combine(g, rank);
        }
    }
}

void CulpritSearch::addShifts(int rowIndex, std::vector<Repair>& repairs) {
    const RowCase* rowCase = caseOf(rowIndex);
    if (rowCase == nullptr) return;
    for (const RowShift& shift : rowCase->shifts()) {
        if (!shift.movesCells) continue;  // told as a redraw
        const bool known = std::any_of(repairs.begin(), repairs.end(), [&](const Repair& other) {
            return other.shift && other.cells[0].row == rowIndex &&
                   other.shift->after == shift.after;
        });
        if (!known)
            repairs.push_back({{{rowIndex, shift.column, shift.stitch}},
                               shift,
                               {},
                               shift.logOdds + rowCase->favour(shift.moves)});
    }
}

// The likeliest changes of all rows of the run together: the chain once more, with the best way
// instead of the sum over all.
std::optional<Repair> CulpritSearch::jointRepair(int rowIndex) {
    const std::vector<int> run = runAround(rowIndex);
    Repair joint;
    for (const int group : groups()) {
        struct Way {
            double logOdds = kImpossible;
            std::vector<Repair::Cell> cells;
        };
        std::map<int, Way> ways{{0, {0, {}}}};
        for (const int row : run) {
            const RowCase* rowCase = caseOf(row);
            const RowOdds* odds = rowCase == nullptr ? nullptr : rowCase->odds(group);
            if (odds == nullptr) return std::nullopt;
            std::map<int, Way> next;
            for (const auto& [from, way] : ways) {
                for (int to = -odds->reach(); to <= odds->reach(); ++to) {
                    const int takes = from - excessIn(row, group);
                    if (std::abs(takes) > odds->reach()) continue;
                    Way longer = way;
                    if (takes != 0 || to != 0) {
                        const auto best = odds->best(takes, to, 1);
                        if (best.empty()) continue;
                        longer.logOdds += best[0].logOdds + rowCase->favour(group, {takes, to});
                        for (const LetterChange& change : best[0].changes) {
                            longer.cells.push_back(
                                {row, change.column, alphabet_.stitchIn(row, change.letter)});
                        }
                    }
                    if (longer.logOdds > next[to].logOdds) next[to] = std::move(longer);
                }
            }
            ways = std::move(next);
        }
        const Way& way = ways[excessOut(run.back(), group)];  // ends left as they are drawn
        if (way.logOdds == kImpossible) return std::nullopt;
        joint.cells.insert(joint.cells.end(), way.cells.begin(), way.cells.end());
        joint.logOdds += way.logOdds;
    }
    if (joint.cells.empty()) return std::nullopt;
    return joint;
}

// Where all rows fit one another, it may be the cast-on that is wrong.
void CulpritSearch::addCastOns(std::vector<Repair>& repairs) const {
    const bool alone = links_.rows.size() == 1 || links_.rows[1].fits();
    if (!chart_.castOn || !alone) return;
    const AffineForm takes = formsOf(chart_.row(0), pathOn(chart_, 0, nullptr)).takes;
    const auto castOns = castOnsFor(*chart_.castOn, takes);
    const double each =
        kCastOnMistaken / static_cast<double>(std::max<std::size_t>(1, castOns.size()));
    for (const CastOn& castOn : castOns) repairs.push_back({{}, {}, castOn, std::log(each)});
}

void CulpritSearch::addRepairs(int rowIndex, bool closing, std::vector<Repair>& repairs) {
    for (const auto& [row, byWhatItMakes] : rowsToBlame(rowIndex, closing)) {
        judgeFirst(row, closing && !byWhatItMakes, [&, row = row, makes = byWhatItMakes] {
            addRedraws(row, makes, repairs);
            addShifts(row, repairs);
        });
    }
}

std::vector<Repair> CulpritSearch::repairs(int rowIndex, bool closing) {
    const Link* link = closing ? (links_.closing ? &*links_.closing : nullptr)
                               : &links_.rows[static_cast<std::size_t>(rowIndex)];
    if (link == nullptr || link->fits()) return {};
    std::vector<Repair> repairs;
    std::optional<Repair> joint;
    inEveryWay(rowIndex, closing, [&] {
        addRepairs(rowIndex, closing, repairs);
        if (!closing && !joint && runAround(rowIndex).size() > 1) joint = jointRepair(rowIndex);
    });
    if (rowIndex == 0 && !closing) addCastOns(repairs);
    std::stable_sort(repairs.begin(), repairs.end(),
                     [](const Repair& a, const Repair& b) { return a.logOdds > b.logOdds; });
    if (joint) repairs.push_back(std::move(*joint));
    return repairs;
}

}  // namespace lacewright
