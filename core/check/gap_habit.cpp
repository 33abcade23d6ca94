#include "core/check/gap_habit.h"

#include <array>
#include <cmath>

namespace lacewright {
namespace {

// Cells above one another thought to have been seen: both or neither a gap, and one of two.
constexpr double kAlikeBefore = 2;
constexpr double kUnlikeBefore = 1;

// [is a gap][the cell beside it is one]
using Pairs = std::array<std::array<double, 2>, 2>;

double oddsBeside(const Pairs& pairs, std::size_t beside) {
    const auto share = [&](std::size_t own) {
        return pairs[own][beside] / (pairs[own][0] + pairs[own][1]);
    };
    return std::log(share(1) / share(0));
}

}  // namespace

std::vector<float> gapOdds(const LetterGrid& grid, Alphabet::Letter noStitch, int y) {
    if (noStitch == Alphabet::kNone) return {};
    const auto isGap = [&](int x, int row) -> std::size_t { return grid.at(x, row) == noStitch; };
    Pairs pairs{{{kAlikeBefore, kUnlikeBefore}, {kUnlikeBefore, kAlikeBefore}}};
    for (int row = 0; row + 1 < grid.height(); ++row) {
        if (row == y || row + 1 == y) continue;
        for (int x = 0; x < grid.width(); ++x) {
            ++pairs[isGap(x, row)][isGap(x, row + 1)];
            ++pairs[isGap(x, row + 1)][isGap(x, row)];
        }
    }
    const std::array<double, 2> beside{oddsBeside(pairs, 0), oddsBeside(pairs, 1)};
    std::vector<float> odds;
    odds.reserve(static_cast<std::size_t>(grid.width()));
    for (int x = 0; x < grid.width(); ++x) {
        double here = 0;
        if (y > 0) here += beside[isGap(x, y - 1)];
        if (y + 1 < grid.height()) here += beside[isGap(x, y + 1)];
        odds.push_back(static_cast<float>(here));
    }
    return odds;
}

}  // namespace lacewright
