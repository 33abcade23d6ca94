#pragma once

#include <map>
#include <vector>

#include "core/check/beliefs.h"
#include "core/check/row_odds.h"

namespace lacewright {

// One stitch put into a row or taken out of it: the cells to the left of it move by one column, as
// far as the left edge, the end of the repeat or a cell without a stitch.
struct RowShift {
    bool putIn = false;  // or else taken out
    int column = 1;
    StitchIndex stitch = kCovered;   // the one put in or taken out
    std::vector<StitchIndex> after;  // the whole row
    double logOdds = 0;              // against the drawn row
    bool operator==(const RowShift&) const = default;
};

// By how much a row should take and make more, for the edges and every repeat.
struct GroupMove {
    int takes = 0;
    int makes = 0;
    bool operator==(const GroupMove&) const = default;
};
using GroupMoves = std::map<int, GroupMove>;  // by group; absent: as drawn

// One row under suspicion: the odds of every change of its cells.
class RowCase {
 public:
    // `wanted`: what would make it fit both neighbours. Requires: the beliefs hold the row.
    RowCase(const Chart& chart, int rowIndex, const Beliefs& beliefs, const GroupMoves& wanted);

    const GroupMoves& wanted() const { return wanted_; }
    // Null for a group without cells on this row.
    const RowOdds* odds(int group) const;
    // Stitches that, put in or taken out, make the row fit on both sides; the likeliest first.
    const std::vector<RowShift>& shifts() const { return shifts_; }
    // Logarithm of their summed odds, and of those of redrawing cells to the same end.
    double logShifts() const { return logShifts_; }
    double logRedraws() const;
    // The part of a shift's log odds that is no evidence, but how rare shifts are: about this much.
    static double logOfAnySlip(int letters);

 private:
    void findOdds(const Chart& chart, const Beliefs& beliefs, const RowBeliefs& row, int y);
    void findShifts(const Chart& chart, const Beliefs& beliefs, const RowBeliefs& row);
    std::vector<std::size_t> endsOfShift(const Alphabet& alphabet,
                                         const std::vector<StitchIndex>& drawn,
                                         std::size_t x) const;
    bool fitsAfter(const Chart& chart, const std::vector<StitchIndex>& after) const;

    int rowIndex_;
    GroupMoves wanted_;
    std::vector<int> groups_;  // by column - 1
    std::map<int, RowOdds> odds_;
    std::vector<RowShift> shifts_;
    double logShifts_;
};

}  // namespace lacewright
