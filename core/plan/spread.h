#pragma once

#include <string>
#include <vector>

#include "core/base/result.h"

// Changes spread evenly over a row. Whatever is shared out, no two shares differ by more than one:
// of n things in k shares, share i gets floor((i + 1) n / k) - floor(i n / k). (Bresenham's line;
// the same sets as Euclid's algorithm gives.)
namespace lacewright {

// Requires: things >= 0, shares >= 1.
std::vector<int> sharedEvenly(int things, int shares);

enum class Change : std::uint8_t {
    MakeOne,       // m1, between two stitches
    FrontAndBack,  // kfb, out of one stitch
    Together       // k2tog, two stitches become one
};

// What stands at the ends of the row.
enum class SpreadEnds : std::uint8_t {
    Half,     // half a gap before the first change and after the last: a flat piece
    Whole,    // a whole gap at both ends: one gap more than changes
    Grouped,  // every change closes its group, the last one ends the row: in the round
};

struct Spread {
    std::vector<int> plain;  // plain stitches before each change, and after the last one
    int before = 0;          // stitches on the needle
    int after = 0;
    std::string recipe;  // "[k7, m1] 5 times, k4"
    bool operator==(const Spread&) const = default;
};

// Refuses more changes than the stitches allow, and numbers out of bounds.
Result<Spread> spreadChanges(int stitches, int changes, Change change, SpreadEnds ends);

// From so many stitches to so many: `increase` where they become more, k2tog where they become
// fewer. Refuses as above, and to change nothing.
Result<Spread> spreadTo(int before, int after, Change increase, SpreadEnds ends);

// "[k7, m1] 5 times, k4 (39 sts become 44 sts)"
std::string spreadSentence(const Spread& spread);

// The units one after the other, runs that come again taken together: "[k7, m1] 5 times, k4".
// Empty units are left out.
std::string recipeText(const std::vector<std::string>& units);

}  // namespace lacewright
