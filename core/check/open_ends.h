#pragma once

#include <map>
#include <utility>

#include "core/check/misfits.h"
#include "core/count/needle.h"
#include "core/count/tally.h"

namespace lacewright {

// Log odds that rows can be worked again after the last one, where nothing says so.
inline constexpr double kCloses = 3.0;

// The first row of a chart may take, and the last one make, what nothing in the chart holds it to:
// a slip there can leave every row fitting.
class OpenEnds {
 public:
    // Requires: links = linksOf(chart).
    OpenEnds(const Chart& chart, const Links& links);

    // Whether there is anything that the row may take or make otherwise.
    bool reach(int row) const;
    // Whether a row that takes and makes so much more leaves the chart without a new fault. Of one
    // group: looked up.
    bool allow(int row, int group, const GroupMove& move) const;
    // The same where the row is wanted to take and make so much more already: nothing else may hold
    // it to that.
    bool allow(int row, const GroupMoves& moves, const GroupMoves& wanted) const;
    // Whether nothing holds the row to what it makes.
    bool leaveMakes(int row) const { return row == lastRow_ && above_; }
    // Patterns mostly end on the count they begin with, whether the chart says so or not: what a
    // move adds for that reason, in log odds.
    double closingOdds(int row, const GroupMoves& moves) const;

 private:
    bool mayTake(const GroupMoves& moves) const;

    Needle start_;
    AffineForm takes_;    // what the first row takes
    AffineForm closing_;  // by how much it takes more than the last row makes
    std::map<std::pair<int, int>, bool> known_;  // by group and loops more: the first row fits
    int lastRow_ = 0;
    bool below_ = false;   // the first row may take another number
    bool above_ = false;   // the last row may make another number
    bool untold_ = false;  // the chart does not say which rows are worked again
};

}  // namespace lacewright
