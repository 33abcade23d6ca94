#pragma once

#include <vector>

#include "core/check/companions.h"

// The pairing of companions.h on one line or one circle.
namespace lacewright {

// The shaping units of one stitch: net > 0 increases, net < 0 decreases, never 0.
struct ShapingUnit {
    int column = 1;
    int net = 0;
};

// Requires: units by ascending column.
Companions pairOnLine(const std::vector<ShapingUnit>& units);
// The columns first..last closed to a circle. Requires: units by ascending column, within them.
Companions pairOnRing(const std::vector<ShapingUnit>& units, int first, int last);

// The units without partner alone, which is cheaper: columns, ascending, one for each unit.
std::vector<int> orphansOnLine(const std::vector<ShapingUnit>& units);
std::vector<int> orphansOnRing(const std::vector<ShapingUnit>& units, int first, int last);

}  // namespace lacewright
