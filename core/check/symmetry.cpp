#include "core/check/symmetry.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/check/figure_pairs.h"

namespace lacewright {
namespace {

constexpr double kMinStrength = 5.0;  // beyond what the luckiest of so many maps reaches by chance
constexpr double kMinStrengthPlain = 0.0;  // the same among the few maps that most charts have
constexpr double kMinAgreement = 0.25;     // of the figures; fewer, and the map is not looked at
constexpr int kMinAgreeing = 3;            // figures that must land on their like
constexpr int kMinAgreeingPlain = 2;
constexpr int kMinCentred = 2;  // centred decreases on an axis that make it worth believing

// How a map carries the cells of its region: every pair (cell, image) is one of these. Rows without
// figures are left out: that they are plain is no news.
struct Landing {
    double cells = 0;     // pairs in all
    double figures = 0;   // cells that are figures, origins and images together
    double both = 0;      // figure on figure
    double same = 0;      // figure on its like
    double byChance = 0;  // figure on figure, if it mattered only how many of them each row holds
    double mixed() const { return figures - 2 * both; }
    double ground() const { return cells - figures + both; }
};

double gain(double observed, double expected) {
    return observed <= 0 || expected <= 0 ? 0 : observed * std::log(observed / expected);
}

// Evidence against "cells and their images have nothing to do with each other".
double strengthOf(const Landing& landing, double likeByChance) {
    if (landing.both <= landing.byChance) return 0;
    return gain(landing.both, landing.byChance) +
           gain(landing.mixed(), landing.figures - 2 * landing.byChance) +
           gain(landing.ground(), landing.cells - landing.figures + landing.byChance) +
           gain(landing.same, landing.both * likeByChance) +
           gain(landing.both - landing.same, landing.both * (1 - likeByChance));
}

class MapSearch {
 public:
    // Of the figures that `isFigure` tells by their place in the region.
    template <class IsFigure>
    MapSearch(const LetterGrid& grid, const Alphabet& alphabet, const SymmetryRegion& region,
              const IsFigure& isFigure)
        : alphabet_(alphabet),
          region_(region),
          sums_(region, isFigure),
          centredInColumn_(static_cast<std::size_t>(region.width), 0) {
        for (int y = 0; y < region.height; ++y) {
            for (int x = 0; x < region.width; ++x) {
                const auto letter = grid.at(region.right + x, region.bottom + y);
                if (!isFigure(x, y)) continue;
                figures_.push_back({x, y, letter});
                if (!alphabet.centred[static_cast<std::size_t>(letter)]) continue;
                ++centredInColumn_[static_cast<std::size_t>(x)];
                ++centred_;
            }
        }
        std::vector<double> count(static_cast<std::size_t>(alphabet.size()), 0);
        for (const FigureCell& figure : figures_) ++count[static_cast<std::size_t>(figure.letter)];
        const double all = std::max<double>(1, static_cast<double>(figures_.size()));
        for (const double c : count) likeByChance_ += c * c / (all * all);
        likeByChance_ = std::min(likeByChance_, 0.95);
        leastStrength_ = kMinStrength + std::log(3.0 * region.width * region.height);
        leastStrengthPlain_ = kMinStrengthPlain + std::log(1.0 + region.height);
    }

    void collect(std::vector<SymmetryMap>& maps) const {
        if (static_cast<int>(figures_.size()) > kMaxFigures) return;
        const PairCounts shifts(region_, figures_, alphabet_, false);
        const PairCounts mirrors(region_, figures_, alphabet_, true);
        double copies = 1;  // of a figure within one row
        const auto considerAll = [&](int dy) {
            double more = 0;
            for (const bool mirror : {false, true}) {
                const auto [from, to] = rangeOfDx(mirror, dy);
                for (int dx = from; dx <= to; ++dx)
                    more += consider(mirror ? mirrors : shifts, mirror, dx, dy, copies, maps);
            }
            return more;
        };
        copies += considerAll(0);
        const int lastDy = region_.wrapsUp ? region_.height / 2 : region_.height - 1;
        for (int dy = 1; dy <= lastDy; ++dy) considerAll(dy);
    }

 private:
    // Each map once: neither the identity nor the way back of another one.
    std::pair<int, int> rangeOfDx(bool mirror, int dy) const {
        const int width = region_.width;
        if (mirror) return {0, region_.wrapsAcross ? width - 1 : 2 * width - 2};
        const bool halfTurn = dy == 0 || (region_.wrapsUp && 2 * dy == region_.height);
        if (region_.wrapsAcross) return {dy == 0 ? 1 : 0, halfTurn ? width / 2 : width - 1};
        return {dy == 0 ? 1 : (halfTurn ? 0 : 1 - width), width - 1};
    }

    Landing landingOf(const PairCounts& counts, bool mirror, int dx, int dy) const {
        const int width = region_.width;
        const int height = region_.height;
        const auto [both, same] = counts.at(dx, dy);
        int x0 = 0, x1 = width, u0 = 0, u1 = width;  // columns of origins and of images
        if (!region_.wrapsAcross && mirror) {
            x0 = u0 = std::max(0, dx - width + 1);
            x1 = u1 = std::min(width, dx + 1);
        } else if (!region_.wrapsAcross) {
            x0 = std::max(0, -dx);
            x1 = std::min(width, width - dx);
            u0 = x0 + dx;
            u1 = x1 + dx;
        }
        const double ends = isInvolution(region_, mirror, dx, dy) ? 2 : 1;
        Landing landing;
        landing.both = both;
        landing.same = same;
        for (int y = 0; y < (region_.wrapsUp ? height : height - dy); ++y) {
            const int there = wrappedTo(y + dy, height);
            if (sums_.in(0, width, y, y + 1) == 0 || sums_.in(0, width, there, there + 1) == 0)
                continue;
            const double here = sums_.in(x0, x1, y, y + 1);
            const double images = sums_.in(u0, u1, there, there + 1);
            landing.cells += (x1 - x0) / ends;
            landing.figures += (here + images) / ends;
            landing.byChance += here * images / (x1 - x0) / ends;
        }
        // Cells on the axis of a mirror are their own image and say nothing.
        landing.figures = std::max(landing.figures, 2 * landing.both);
        landing.cells = std::max(landing.cells, landing.figures - landing.both);
        return landing;
    }

    // The share of the region that a map keeps within it.
    double overlap(int dx, int dy, bool mirror) const {
        const double across =
            region_.wrapsAcross ? 0 : (mirror ? std::abs(dx + 1 - region_.width) : std::abs(dx));
        const double up = region_.wrapsUp ? 0 : dy;
        return (1 - across / region_.width) * (1 - up / region_.height) *
               (isInvolution(region_, mirror, dx, dy) ? 0.5 : 1.0);
    }

    // Straight up, or a mirror in the middle: half of what is worth believing is of this kind.
    bool isPlain(bool mirror, int dx, int dy) const {
        return mirror ? dx == region_.width - 1 && dy == 0 : dx == 0;
    }

    // A mirror that most centred decreases stand on: what they are drawn for.
    bool standsOnCentred(bool mirror, int dx, int dy) const {
        if (!mirror || dy != 0 || centred_ < kMinCentred) return false;
        int onAxis = 0;
        for (int x = 0; x < region_.width; ++x) {
            const bool isOwnImage =
                region_.wrapsAcross ? wrappedTo(2 * x - dx, region_.width) == 0 : 2 * x == dx;
            if (isOwnImage) onAxis += centredInColumn_[static_cast<std::size_t>(x)];
        }
        return onAxis >= kMinCentred && 2 * onAxis >= centred_;
    }

    // Where a row holds `copies` of one figure, one accident shows as often. Gives how many more
    // copies the map shows there to be, those that hold for half of the figures not counted.
    double consider(const PairCounts& counts, bool mirror, int dx, int dy, double copies,
                    std::vector<SymmetryMap>& maps) const {
        const int same = counts.at(dx, dy).second;
        const bool centred = standsOnCentred(mirror, dx, dy);
        const bool plain = centred || isPlain(mirror, dx, dy);
        if (same < (plain ? kMinAgreeingPlain : kMinAgreeing) ||
            same < kMinAgreement * sums_.in(0, region_.width, 0, region_.height) *
                       overlap(dx, dy, mirror))
            return 0;
        const Landing landing = landingOf(counts, mirror, dx, dy);
        const double strength = strengthOf(landing, likeByChance_) / copies;
        if (strength < (centred ? kMinStrengthPlain : plain ? leastStrengthPlain_ : leastStrength_))
            return 0;
        maps.push_back({region_, mirror, dx, dy, strength});
        const double agreement = 2 * landing.same / landing.figures;
        return std::max(0.0, 2 * agreement - 1) * (isInvolution(region_, mirror, dx, dy) ? 1 : 2);
    }

    const Alphabet& alphabet_;
    SymmetryRegion region_;
    FigureSums sums_;
    std::vector<FigureCell> figures_;
    std::vector<int> centredInColumn_;
    int centred_ = 0;
    double likeByChance_ = 0;
    double leastStrength_ = 0;
    double leastStrengthPlain_ = 0;
};

// Of all figures, and of the shaping alone: purl columns may run straight up where eyelets wander.
void collectMaps(const LetterGrid& grid, const Alphabet& alphabet, const SymmetryRegion& region,
                 std::vector<SymmetryMap>& maps) {
    const auto isFigure = [&](int x, int y) {
        return grid.isFigure(region.right + x, region.bottom + y);
    };
    bool texture = false;
    const auto isShaping = [&](int x, int y) {
        if (!isFigure(x, y)) return false;
        const auto letter = grid.at(region.right + x, region.bottom + y);
        const bool shapes = alphabet.kinds[Alphabet::placeOf(letter)] == LetterKind::Shaping;
        texture = texture || !shapes;
        return shapes;
    };
    const std::size_t first = maps.size();
    MapSearch(grid, alphabet, region, isFigure).collect(maps);
    const MapSearch ofShaping(grid, alphabet, region, isShaping);
    if (!texture) return;
    std::vector<SymmetryMap> more;
    ofShaping.collect(more);
    for (const SymmetryMap& map : more) {
        const auto known = std::find_if(
            maps.begin() + static_cast<std::ptrdiff_t>(first), maps.end(), [&](const auto& other) {
                return other.mirror == map.mirror && other.dx == map.dx && other.dy == map.dy;
            });
        if (known == maps.end()) {
            maps.push_back(map);
        } else {
            known->strength = std::max(known->strength, map.strength);
        }
    }
}

GridPlace moved(const SymmetryMap& map, GridPlace place, int sign) {
    const SymmetryRegion& region = map.region;
    int x = place.x - region.right;
    int y = place.y - region.bottom;
    if (x < 0 || x >= region.width || y < 0 || y >= region.height) return {};
    x = map.mirror ? map.dx - x : x + sign * map.dx;
    y += sign * map.dy;
    if (region.wrapsAcross) x = wrappedTo(x, region.width);
    if (region.wrapsUp) y = wrappedTo(y, region.height);
    if (x < 0 || x >= region.width || y < 0 || y >= region.height) return {};
    return {x + region.right, y + region.bottom};
}

}  // namespace

GridPlace imageOf(const SymmetryMap& map, GridPlace place) {
    return moved(map, place, 1);
}
GridPlace originOf(const SymmetryMap& map, GridPlace place) {
    return moved(map, place, -1);
}

std::vector<SymmetryMap> symmetriesOf(const LetterGrid& grid, const Alphabet& alphabet,
                                      const std::vector<SymmetryRegion>& regions) {
    std::vector<SymmetryMap> maps;
    for (const SymmetryRegion& region : regions) collectMaps(grid, alphabet, region, maps);
    std::stable_sort(maps.begin(), maps.end(),
                     [](const auto& a, const auto& b) { return a.strength > b.strength; });
    if (maps.size() > kMaxMaps) maps.resize(kMaxMaps);
    return maps;
}

std::vector<SymmetryRegion> regionsOf(const Chart& chart, const LetterGrid& grid) {
    std::vector<SymmetryRegion> regions{{0, 0, grid.width(), grid.height(), false, false}};
    for (const Repeat& repeat : chart.repeats) {
        if (!repeat.jogs.empty()) continue;
        const int first = std::max(repeat.firstRow, grid.firstRow());
        const int last = std::min(repeat.lastRow, grid.lastRow());
        if (first > last || repeat.left - repeat.right < 1) continue;
        SymmetryRegion ring{repeat.right - 1,
                            first - grid.firstRow(),
                            repeat.left - repeat.right + 1,
                            last - first + 1,
                            true,
                            false};
        const auto& rows = chart.rowRepeat;
        if (rows && rows->firstRow >= first && rows->lastRow <= last && rows->grows == 0) {
            ring.bottom = rows->firstRow - grid.firstRow();
            ring.height = rows->lastRow - rows->firstRow + 1;
            ring.wrapsUp = true;
        }
        regions.push_back(ring);
    }
    return regions;
}

}  // namespace lacewright
