#include <algorithm>
#include <cmath>

#include "core/check/culprits.h"
#include "core/check/log_odds.h"

// Rows that are out one above the other, judged together.
namespace lacewright {
namespace {

constexpr int kLongestRun = 12;  // rows on either side

}  // namespace

std::vector<int> CulpritSearch::runAround(int rowIndex) const {
    int first = rowIndex;
    int last = rowIndex;
    while (first > 0 && rowIndex - first < kLongestRun && involved(first - 1)) --first;
    while (last + 1 < chart_.height() && last - rowIndex < kLongestRun && involved(last + 1))
        ++last;
    std::vector<int> run;
    for (int row = first; row <= last; ++row) run.push_back(row);
    return run;
}

// The chain over the rows of a run: the state between two rows is how many loops more the lower one
// was meant to make.
std::optional<CulpritSearch::Moves> CulpritSearch::movesOf(const std::vector<int>& run, int group,
                                                           int rowIndex) {
    constexpr int kStates = 6;  // as large as any reach
    using States = std::vector<double>;
    const auto at = [](int makes) { return static_cast<std::size_t>(makes + kStates); };
    const States nothing(2 * kStates + 1, kImpossible);
    const auto each = [](auto visit) {
        for (int makes = -kStates; makes <= kStates; ++makes) visit(makes);
    };
    States below = nothing;
    below[at(0)] = 0;
    std::size_t i = 0;
    for (; run[i] != rowIndex; ++i) {
        if (caseOf(run[i]) == nullptr) return std::nullopt;
        const int in = excessIn(run[i], group);
        States next = nothing;
        each([&](int from) {
            if (below[at(from)] == kImpossible) return;
            each([&](int to) {
                next[at(to)] =
                    logAdd(next[at(to)], below[at(from)] + logMove(run[i], group, {from - in, to}));
            });
        });
        below = next;
    }
    States above = nothing;
    const int end = excessOut(run.back(), group);
    if (std::abs(end) > kStates) return std::nullopt;
    each([&](int makes) {
        if (makes == end || ends_.leaveMakes(run.back())) above[at(makes)] = 0;
    });
    for (std::size_t j = run.size() - 1; j > i; --j) {
        if (caseOf(run[j]) == nullptr) return std::nullopt;
        const int in = excessIn(run[j], group);
        States next = nothing;
        each([&](int to) {
            if (above[at(to)] == kImpossible) return;
            each([&](int from) {
                next[at(from)] =
                    logAdd(next[at(from)], above[at(to)] + logMove(run[j], group, {from - in, to}));
            });
        });
        above = next;
    }
    const RowCase* rowCase = caseOf(rowIndex);
    if (rowCase == nullptr || rowCase->odds(group) == nullptr) return std::nullopt;
    Moves moves{rowCase->odds(group)->reach(), {}, 0};
    double total = kImpossible;
    for (int takes = -moves.reach; takes <= moves.reach; ++takes) {
        for (int makes = -moves.reach; makes <= moves.reach; ++makes) {
            const int from = takes + excessIn(rowIndex, group);
            const double log =
                std::abs(from) > kStates
                    ? kImpossible
                    : below[at(from)] + above[at(makes)] + logMove(rowIndex, group, {takes, makes});
            moves.share.push_back(log);
            total = logAdd(total, log);
        }
    }
    if (total == kImpossible) return std::nullopt;
    moves.logOdds = total;
    for (double& share : moves.share) share = std::exp(share - total);
    return moves;
}

}  // namespace lacewright
