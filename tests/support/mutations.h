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
    bool countsChange = false;  // what the edges or a repeat take or make is no longer the same
};

// Half of the slips hit figures, half hit any cell. Nothing when the row came out the same, or
// holds nothing to hit.
std::optional<Mutant> mutated(const Chart& chart, Slip slip, int row, std::mt19937& random);

}  // namespace lacewright::test
