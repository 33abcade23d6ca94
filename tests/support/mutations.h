#pragma once

#include <optional>
#include <random>
#include <set>
#include <vector>

#include "core/chart/chart.h"

// Charts with errors put in on purpose.
namespace lacewright::test {

enum class Slip : std::uint8_t { Replaced, Dropped, Doubled, LeanSwapped };
inline constexpr Slip kSlips[] = {Slip::Replaced, Slip::Dropped, Slip::Doubled, Slip::LeanSwapped};
const char* nameOf(Slip slip);

struct Mutant {
    Chart chart;
    int row = 0;                // row index
    std::set<int> columns;      // where undoing the slip gives the right row again
    bool countsChange = false;  // the counts no longer fit; else it is a chart that could be meant
};

// Half of the slips hit figures, half hit any cell. Nothing when the row came out the same, holds
// nothing to hit, or wide stitches would be cut.
// Requires: the chart fits.
std::optional<Mutant> mutated(const Chart& chart, Slip slip, int row, std::mt19937& random);

}  // namespace lacewright::test
