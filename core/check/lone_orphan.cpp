#include "core/check/lone_orphan.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <limits>
#include <tuple>

namespace lacewright {
namespace {

constexpr int kMostHeights = 32;  // of a circle

// Leaving out an increase lowers F by 1 from there on. To put that off by a column costs, measured
// from a cut, 1 more where F lies above the cut there and 1 less where it does not: `rise` is the
// sum of these over the columns before a unit, and the cheapest unit the one where it is least.
struct Cheapest {
    int column = -1;
    int rise = std::numeric_limits<int>::max();
};

// Of equal ones the last. `sign` turns a decrease too many over, so that it is an increase.
Cheapest cheapest(const std::vector<int>& heights, int sign, int cut) {
    Cheapest best;
    int rise = 0;
    int before = 0;
    for (std::size_t i = 0; i < heights.size(); ++i) {
        const int height = heights[i] * sign;
        if (rise <= best.rise && height > before) best = {static_cast<int>(i), rise};
        rise += height > cut ? 1 : -1;
        before = height;
    }
    return best;
}

// How many columns have each height from `low` to `high`. There are few heights: counting them one
// after the other is quicker than adding every column to its own.
std::vector<int> countHeights(const std::vector<int>& heights, int low, int high) {
    std::vector<int> counts;
    counts.reserve(static_cast<std::size_t>(high - low) + 1);
    for (int height = low; height <= high; ++height) {
        int count = 0;
        for (const int other : heights) count += other == height ? 1 : 0;
        counts.push_back(count);
    }
    return counts;
}

struct Cut {
    std::int64_t least = 0;  // that pairing can cost, whichever unit is left out
    std::int64_t first = 0;  // what it costs if that is the first column
    int at = 0;
};

// The most promising first.
std::vector<Cut> cutsOf(const std::vector<int>& heights, int low, int high) {
    const int sign = heights.back();
    const std::vector<int> counts = countHeights(heights, low, high);
    std::vector<Cut> cuts;
    cuts.reserve(counts.size());
    for (int at = low; at <= high; ++at) {
        Cut cut{0, 0, at};
        for (int height = low; height <= high; ++height) {
            const std::int64_t columns = counts[static_cast<std::size_t>(height - low)];
            const int before = std::abs(height - at);
            const int after = std::abs(height - sign - at);
            cut.least += columns * std::min(before, after);
            cut.first += columns * after;
        }
        cuts.push_back(cut);
    }
    std::sort(cuts.begin(), cuts.end(),
              [](const Cut& a, const Cut& b) { return a.least < b.least; });
    return cuts;
}

}  // namespace

int loneOrphanOnLine(const std::vector<int>& heights) {
    return cheapest(heights, heights.back(), 0).column;
}

std::optional<int> loneOrphanOnRing(const std::vector<int>& heights) {
    const int sign = heights.back();
    int low = -1;
    int high = 1;
    for (const int height : heights) {
        low = std::min(low, height - 1);
        high = std::max(high, height + 1);
    }
    if (high - low >= kMostHeights) return std::nullopt;
    // Of equal cuts the one nearest to 0, and of these the lower.
    using Rank = std::tuple<std::int64_t, int, int>;
    Rank best(std::numeric_limits<std::int64_t>::max(), 0, 0);
    int orphan = -1;
    for (const Cut& cut : cutsOf(heights, low, high)) {
        if (cut.least > std::get<0>(best)) break;
        const Cheapest found = cheapest(heights, sign, cut.at * sign);
        const Rank rank(cut.first + found.rise, std::abs(cut.at), cut.at);
        if (rank >= best) continue;
        best = rank;
        orphan = found.column;
    }
    return orphan;
}

}  // namespace lacewright
