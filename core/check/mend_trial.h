#pragma once

#include <set>

#include "core/check/check.h"
#include "core/check/problems.h"

namespace lacewright {

// Tries mends: each is applied to the chart, which is then checked again.
class MendTrial {
 public:
    // Requires: the report is check(chart); the chart outlives the trial. `closingKnown`: the rows
    // do not close, whether the report tells of it or not.
    MendTrial(const Chart& chart, const Report& report, bool closingKnown);

    // The mended chart, when the finding is gone from it, with what has the same cause, and no
    // fault has come up.
    std::optional<Chart> mended(const Finding& finding, const Mend& mend);
    // Adds the first of the mends that helps and leaves no yarn over bare at an edge.
    bool offerFirst(Finding& finding, const std::vector<Mend>& mends);

 private:
    bool helps(const Finding& finding, const Chart& mended);
    bool becameMilder(Problem problem) const;

    const Chart& chart_;
    std::set<Problem> known_;
    bool closingKnown_;
    std::ptrdiff_t bareEdges_;  // yarn overs at an edge before
    Checker checker_;
};

}  // namespace lacewright
