#pragma once

#include <map>
#include <vector>

#include "core/check/balance_habit.h"
#include "core/check/row_odds.h"
#include "core/check/row_shifts.h"

namespace lacewright {

// One row under suspicion: the odds of every change of its cells.
class RowCase {
 public:
    // `wanted`: what would make it fit both neighbours. Requires: the beliefs hold the row.
    RowCase(const Chart& chart, int rowIndex, const Beliefs& beliefs, const GroupMoves& wanted,
            const OpenEnds& ends, const BalanceHabit& balance);

    const GroupMoves& wanted() const { return wanted_; }
    // Null for a group without cells on this row.
    const RowOdds* odds(int group) const;
    // Stitches that, put in or taken out, make the row fit on both sides; the likeliest first by
    // the row alone.
    const std::vector<RowShift>& shifts() const { return shifts_; }
    // What a move of the row adds to the log odds because of the rows around it.
    double favour(int group, const GroupMove& move) const;
    double favour(const GroupMoves& moves) const;
    // Logarithm of the summed odds of the shifts, and of redrawing cells as wanted; favours in.
    double logShifts() const { return logShifts_; }
    double logRedraws() const;
    // Of the shifts that move a group so much; favours left out.
    double logShiftsTo(int group, const GroupMove& move) const;
    // The likeliest ways to redraw the cells of a group so that it moves as asked, at most `count`;
    // favours in.
    std::vector<LetterRepair> redraws(int group, const GroupMove& move, std::size_t count) const;

 private:
    std::vector<GroupMove> fitting(int group, const GroupMove& wanted) const;

    int row_;
    const OpenEnds& ends_;
    const BalanceHabit& balance_;
    GroupMoves wanted_;
    std::map<int, RowOdds> odds_;
    std::vector<RowShift> shifts_;
    double logShifts_;
};

}  // namespace lacewright
