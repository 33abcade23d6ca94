#pragma once

#include <string>
#include <vector>

#include "core/base/result.h"

// Stitches picked up along the side of a piece: so many for so many rows.
namespace lacewright {

struct Ratio {
    int stitches = 1;
    int rows = 1;  // > 0; in lowest terms
    bool operator==(const Ratio&) const = default;
};

// The ratio nearest to `value` among those with at most so many rows; of two as near, the one with
// fewer rows. Requires: 0 <= value <= 1000, 1 <= mostRows <= 10000.
Ratio nearestRatio(double value, int mostRows);

struct PickUp {
    double exact = 0;  // stitches for one row: stitch gauge of the band over row gauge of the piece
    Ratio ratio;       // fewest rows that come within half a stitch of it over the whole edge
    Ratio simple;      // nearest with at most kSimpleRows rows: easy to keep in mind
    int rows = 0;      // of the edge
    int stitches = 0;  // picked up along it: the nearest whole number, a half goes up
    std::vector<bool> picked;  // by row: a stitch is picked up, or the row is skipped; empty when
                               // there are more stitches than rows
    std::string recipe;        // "[pick up 3, skip 1] 5 times, pick up 2"
};
inline constexpr int kSimpleRows = 5;

// Refuses gauges that are not above 0 or beyond kMaxGauge, and edges of more than 100,000
// rows or none.
Result<PickUp> planPickUp(double stitchesPerTenCm, double rowsPerTenCm, int rows);

// "45 stitches along 60 rows: [pick up 3, skip 1] 15 times"
std::string pickUpSentence(const PickUp& plan);
// "3 stitches for every 4 rows"
std::string ratioWords(const Ratio& ratio);

}  // namespace lacewright
