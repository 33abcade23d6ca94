#pragma once

#include <map>
#include <vector>

#include "core/check/row_odds.h"
#include "core/check/row_shifts.h"

namespace lacewright {

// One row under suspicion: the odds of every change of its cells.
class RowCase {
 public:
    // `wanted`: what would make it fit both neighbours. Requires: the beliefs hold the row.
    RowCase(const Chart& chart, int rowIndex, const Beliefs& beliefs, const GroupMoves& wanted,
            const OpenEnds& ends);

    const GroupMoves& wanted() const { return wanted_; }
    // Null for a group without cells on this row.
    const RowOdds* odds(int group) const;
    // Stitches that, put in or taken out, make the row fit on both sides; the likeliest first.
    const std::vector<RowShift>& shifts() const { return shifts_; }
    // Logarithm of their summed odds, and of those of redrawing cells to the same end.
    double logShifts() const { return logShifts_; }
    double logRedraws() const;

 private:
    GroupMoves wanted_;
    std::map<int, RowOdds> odds_;
    std::vector<RowShift> shifts_;
    double logShifts_;
};

}  // namespace lacewright
