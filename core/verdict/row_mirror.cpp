#include "core/verdict/row_mirror.h"

#include <algorithm>
#include <cmath>

#include "core/stitch/catalogue.h"

namespace lacewright {
namespace {

// How often a row mirrors about its centred decrease if it has one, about any other place of its
// repeat, and about its middle if it has no repeat.
constexpr double kAboutDecrease = 0.5;
constexpr double kAnywhere = 0.15;
constexpr double kAboutMiddle = 0.3;
// What it takes to foretell a stitch, as a logarithm of its odds.
constexpr double kPlain = 0.2;
constexpr double kFigure = 2.5;
constexpr double kSurest = 12.0;

const Stitch* known(const RowStitch& stitch) {
    const StitchCatalogue& stitches = *builtInStitches();
    const auto index = stitch.own ? std::nullopt : stitches.find(stitch.id);
    return index ? &stitches[*index] : nullptr;
}

bool isFigure(const RowStitch& stitch) {
    return stitch.takes != 1 || stitch.makes != 1;
}

bool isCentred(const RowStitch& stitch) {
    const Stitch* of = known(stitch);
    return of != nullptr && of->takes == 3 && of->makes == 1;
}

bool isMirrored(const RowStitch& stitch, const RowStitch& image, bool swaps) {
    const Stitch* of = known(stitch);
    return image.id == (swaps && of != nullptr && !of->mirror.empty() ? of->mirror : stitch.id);
}

// The logarithm of the odds of the half that the other foretells; nothing when they part, or when
// nothing but plain stitches mirrors.
std::optional<double> foretold(const std::vector<RowStitch>& stitches, std::size_t axis, bool ring,
                               bool swaps) {
    const std::size_t length = stitches.size();
    double sum = 0;
    bool figures = false;
    for (std::size_t x = 0; x < length; ++x) {
        const std::size_t image = ring ? (axis + length - x) % length : axis - x;
        if (!isMirrored(stitches[x], stitches[image], swaps) && image != x) return std::nullopt;
        if (image <= x) continue;
        figures = figures || isFigure(stitches[x]);
        sum += isFigure(stitches[x]) ? kFigure : kPlain;
    }
    return figures ? std::optional(std::min(sum, kSurest)) : std::nullopt;
}

double oddsAbout(const std::vector<RowStitch>& stitches, std::size_t axis, bool ring) {
    double best = 0;
    for (const bool swaps : {true, false}) {
        if (const auto log = foretold(stitches, axis, ring, swaps))
            best = std::max(best, std::exp(*log));
    }
    return best;
}

}  // namespace

double mirrorOdds(const PlacedRow& row) {
    const auto repeat = std::find_if(row.parts.begin(), row.parts.end(),
                                     [](const PlacedRow::Part& part) { return part.repeats; });
    if (repeat == row.parts.end()) {
        if (row.stitches.size() < 3) return 0;
        return std::log(1 - kAboutMiddle +
                        kAboutMiddle * oddsAbout(row.stitches, row.stitches.size() - 1, false));
    }
    const auto first = row.stitches.begin() + static_cast<std::ptrdiff_t>(repeat->first);
    const std::vector<RowStitch> ring(first, first + static_cast<std::ptrdiff_t>(repeat->length));
    if (ring.size() < 3) return 0;
    const auto centred = static_cast<double>(std::count_if(ring.begin(), ring.end(), isCentred));
    double odds = 1 - kAnywhere - (centred > 0 ? kAboutDecrease : 0);
    for (std::size_t axis = 0; axis < ring.size(); ++axis) {
        double share = kAnywhere / static_cast<double>(ring.size());
        for (std::size_t x = 0; x < ring.size(); ++x) {
            if ((2 * x) % ring.size() == axis && isCentred(ring[x]))
                share += kAboutDecrease / centred;
        }
        odds += share * oddsAbout(ring, axis, true);
    }
    return std::log(odds);
}

}  // namespace lacewright
