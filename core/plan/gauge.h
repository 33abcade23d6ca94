#pragma once

#include <string>

#include "core/base/length.h"
#include "core/chart/chart.h"

// Lengths and counts; a gauge over 4 in is one over 10.16 cm.
namespace lacewright {

// Stitches and rows counted over 4 in, as a chart holds them: over 10 cm, not rounded.
Gauge gaugeOverFourInches(double stitches, double rows);

// The whole number nearest to a length; a half goes up. Requires: 0 <= cm, 0 < perTenCm, and a
// count of at most kMaxNeedle.
int countNearest(double cm, double perTenCm);

// Which rows come to a wanted length: those below the row repeat once, the repeat a whole number of
// times, those above it once; without a row repeat the chart is worked whole times.
struct LengthPlan {
    int repeats = 1;  // whole passes of the row repeat, at least 1
    int rows = 0;     // rows on the needle, uncharted ones included
    double cm = 0;
    double differenceCm = 0;  // reached less wanted
    bool operator==(const LengthPlan&) const = default;
};
// The number of passes nearest to the length; of two as near, the larger.
// Requires: the chart has rows, rowsPerTenCm > 0, wantedCm > 0.
LengthPlan planLength(const Chart& chart, double rowsPerTenCm, double wantedCm);

}  // namespace lacewright
