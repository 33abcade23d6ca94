#pragma once

#include <optional>
#include <vector>

#include "core/chart/chart.h"

// What the planner knows of every pair of a first and a last column before it asks for a width.
namespace lacewright {

struct EdgePair {
    Reach reach;
    std::int64_t once = 0;  // stitches before row 1 are once + times * each
    std::int64_t each = 0;
    bool fitsAlways = false;    // the rows fit for every number of times,
    std::optional<int> fitsAt;  // or for this one alone
    int parted = 0;
    int offCentre = 0;

    bool fits(int times) const { return fitsAlways || fitsAt == times; }
};

// Every pair, by start and then by end. Requires: the chart has rows.
// Cost: pairs x rows.
std::vector<EdgePair> edgePairs(const Chart& chart);

// Every row of a size with this reach and these times of every repeat is its own mirror picture.
bool isMirrored(const Chart& chart, const Reach& reach, int times);

}  // namespace lacewright
