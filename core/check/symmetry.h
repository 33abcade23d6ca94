#pragma once

#include <vector>

#include "core/check/alphabet.h"

// What a chart says about itself: shifting it, or holding it to a mirror, often gives the same
// chart again. Every such map that holds well lets each cell testify for another.
namespace lacewright {

// A region of a grid that a map moves within. Where it wraps, its left edge meets its right edge
// (a repeat worked across) or its top meets its bottom (a row repeat).
struct SymmetryRegion {
    int right = 0;   // x of its right edge
    int bottom = 0;  // y of its lowest row
    int width = 0;
    int height = 0;
    bool wrapsAcross = false;
    bool wrapsUp = false;
};

// Translation: (x, y) -> (x + dx, y + dy). Mirror: (x, y) -> (dx - x, y + dy), a glide when dy is
// not 0; leaning stitches change sides. Coordinates within the region.
struct SymmetryMap {
    SymmetryRegion region;
    bool mirror = false;
    int dx = 0;
    int dy = 0;
    double strength = 0;  // evidence that the map is no accident, as a log likelihood ratio
};

// Where a cell goes, or (the other way round) where it comes from; x < 0 when outside the region.
struct GridPlace {
    int x = -1;
    int y = -1;
    bool inside() const { return x >= 0; }
    bool operator==(const GridPlace&) const = default;
};
GridPlace imageOf(const SymmetryMap& map, GridPlace place);
GridPlace originOf(const SymmetryMap& map, GridPlace place);

// The strongest maps, strongest first. Cost: pairs of figure cells; a region with more than
// kMaxFigures of them gives none.
inline constexpr int kMaxFigures = 2500;
inline constexpr int kMaxMaps = 24;
std::vector<SymmetryMap> symmetriesOf(const LetterGrid& grid, const Alphabet& alphabet,
                                      const std::vector<SymmetryRegion>& regions);

// The whole grid, and every straight repeat that reaches over all its rows, closed to a ring.
std::vector<SymmetryRegion> regionsOf(const Chart& chart, const LetterGrid& grid);

}  // namespace lacewright
