#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/chart/chart.h"

// What the planner knows of every pair of a first and a last column before it asks for a width.
namespace lacewright {

// How often a repeat is worked when the planner says `times`: fixed + times * each.
struct RepeatShare {
    int fixed = 0;
    int each = 1;
    int at(int times) const { return fixed + times * each; }
    bool operator==(const RepeatShare&) const = default;
};
using RepeatShares = std::vector<RepeatShare>;  // by repeat index

// How often every repeat is worked, by repeat index.
std::vector<int> passesAt(const RepeatShares& shares, int times);

// Repeats that are held work their own number of times. The others work alike; but where they all
// stand on rows of their own and differ in width, each works so often that the widths agree: of
// repeats 6 and 12 stitches wide the one works 2 times for every time of the other.
RepeatShares repeatShares(const Chart& chart, const std::map<std::string, int>& held);

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

// Every pair, by start and then by end. Requires: the chart has rows, a share for every repeat.
// Cost: pairs x rows.
std::vector<EdgePair> edgePairs(const Chart& chart, const RepeatShares& shares);

// Every row of a size with this reach and these passes of the repeats is its own mirror picture.
bool isMirrored(const Chart& chart, const Reach& reach, const std::vector<int>& passes);

}  // namespace lacewright
