#pragma once

#include <vector>

#include "core/check/misfits.h"

namespace lacewright {

// Rows thought to have been seen before any of the pattern, and how many of them were balanced.
inline constexpr double kRowsSeenBefore = 2.0;
inline constexpr double kBalancedBefore = 1.6;

// Most lace rows make as many loops as they take, in their edges and in every repeat; how many do
// in a chart is learnt from its rows that fit. It tells which of two rows is out that do not fit
// one another.
class BalanceHabit {
 public:
    // Requires: links = linksOf(chart).
    BalanceHabit(const Chart& chart, const Links& links);

    // What a move of a row adds to the log odds for that reason.
    double odds(int row, int group, const GroupMove& move) const;
    double odds(int row, const GroupMoves& moves) const;

 private:
    std::vector<std::vector<int>> nets_;  // by row, by group + 1: loops made less those taken
    double balanced_ = 0;                 // log odds of a balanced group
};

}  // namespace lacewright
