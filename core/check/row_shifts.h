#pragma once

#include <vector>

#include "core/check/beliefs.h"
#include "core/check/open_ends.h"

namespace lacewright {

// One stitch put into a row or taken out of it: the cells to the left of it move by one column, as
// far as the left edge, the end of the repeat or a cell without a stitch.
struct RowShift {
    bool putIn = false;  // or else taken out
    int column = 1;      // of the stitch; where one cell changes and nothing moves, of that cell
    StitchIndex stitch = kCovered;   // the one put in or taken out
    std::vector<StitchIndex> after;  // the whole row
    GroupMoves moves;                // what the row then takes and makes more
    bool movesCells = true;          // or else it comes to one cell drawn anew
    double logOdds = 0;              // against the drawn row
    bool operator==(const RowShift&) const = default;
};

// The shifts of a row that change what it takes and makes as wanted, or as the ends of the chart
// allow beyond that, the likeliest first.
// Requires: the row holds no wide stitch; row = beliefs.of(rowIndex); groups = groupsOf its path.
std::vector<RowShift> shiftsOf(const Chart& chart, int rowIndex, const Beliefs& beliefs,
                               const RowBeliefs& row, const std::vector<int>& groups,
                               const GroupMoves& wanted, const OpenEnds& ends);

// The part of a shift's log odds that is no evidence, but how rare shifts are: about this much.
double logOfAnyShift(int letters);

}  // namespace lacewright
