#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "core/check/symmetry.h"

// Figures of a region counted for the search of its symmetries.
namespace lacewright {

struct FigureCell {
    int x;
    int y;
    Alphabet::Letter letter;
};

inline int wrappedTo(int value, int period) {
    return ((value % period) + period) % period;
}

// Done twice it moves nothing: every pair is carried from both ends.
inline bool isInvolution(const SymmetryRegion& region, bool mirror, int dx, int dy) {
    const bool backUp = dy == 0 || (region.wrapsUp && 2 * dy == region.height);
    const bool backAcross = mirror || dx == 0 || (region.wrapsAcross && 2 * dx == region.width);
    return backUp && backAcross;
}

// Sums of figures over rectangles in constant time.
class FigureSums {
 public:
    // `isFigure` tells it of a place of the region.
    template <class IsFigure>
    FigureSums(const SymmetryRegion& region, const IsFigure& isFigure)
        : stride_(region.width + 1),
          sums_(static_cast<std::size_t>(stride_) * static_cast<std::size_t>(region.height + 1),
                0) {
        for (int y = 0; y < region.height; ++y) {
            for (int x = 0; x < region.width; ++x) {
                const int here = isFigure(x, y) ? 1 : 0;
                sums_[slot(x + 1, y + 1)] = here + at(x, y + 1) + at(x + 1, y) - at(x, y);
            }
        }
    }
    // Columns x0..x1 and rows y0..y1, ends excluded.
    int in(int x0, int x1, int y0, int y1) const {
        return at(x1, y1) - at(x0, y1) - at(x1, y0) + at(x0, y0);
    }

 private:
    std::size_t slot(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(stride_) +
               static_cast<std::size_t>(x);
    }
    int at(int x, int y) const { return sums_[slot(x, y)]; }
    int stride_;
    std::vector<int> sums_;
};

// Counts, for every map of one kind, the figures that land on figures.
class PairCounts {
 public:
    PairCounts(const SymmetryRegion& region, const std::vector<FigureCell>& figures,
               const Alphabet& alphabet, bool mirror)
        : region_(region),
          mirror_(mirror),
          spanX_(region.wrapsAcross ? region.width : 2 * region.width),
          both_(static_cast<std::size_t>(spanX_) * static_cast<std::size_t>(region.height), 0),
          same_(both_.size(), 0) {
        // Figures come by rows, so the second of a pair is never below the first: dy >= 0.
        for (std::size_t i = 0; i < figures.size(); ++i) {
            const FigureCell& a = figures[i];
            const auto alike =
                mirror ? alphabet.mirrors[static_cast<std::size_t>(a.letter)] : a.letter;
            for (std::size_t j = i + 1; j < figures.size(); ++j) {
                const FigureCell& b = figures[j];
                const std::size_t at = slot(mirror ? a.x + b.x : b.x - a.x, b.y - a.y);
                ++both_[at];
                if (b.letter == alike) ++same_[at];
            }
        }
    }
    // Figures that map (dx, dy) carries onto figures, and onto their like. On a ring the second of
    // a pair may be the one that is carried onto the first.
    std::pair<int, int> at(int dx, int dy) const {
        const std::size_t there = slot(dx, dy);
        int both = both_[there];
        int same = same_[there];
        const bool backToo = dy > 0 ? region_.wrapsUp : region_.wrapsAcross && !mirror_;
        if (backToo && !isInvolution(region_, mirror_, dx, dy)) {
            const std::size_t back = slot(mirror_ ? dx : -dx, dy > 0 ? region_.height - dy : 0);
            both += both_[back];
            same += same_[back];
        }
        return {both, same};
    }

 private:
    std::size_t slot(int dx, int dy) const {
        const int shifted = region_.wrapsAcross ? wrappedTo(dx, region_.width)
                            : mirror_           ? dx
                                                : dx + region_.width;
        return static_cast<std::size_t>(dy) * static_cast<std::size_t>(spanX_) +
               static_cast<std::size_t>(shifted);
    }
    SymmetryRegion region_;
    bool mirror_;
    int spanX_;
    std::vector<int> both_;
    std::vector<int> same_;
};

}  // namespace lacewright
