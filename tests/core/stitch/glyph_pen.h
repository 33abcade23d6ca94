#pragma once

#include <optional>
#include <vector>

#include "core/stitch/stitch.h"

namespace lacewright {

struct PenPoint {
    double x = 0;
    double y = 0;
};

// Follows one stroke of a glyph and returns points along its line, dense enough to measure it;
// nothing when the tail leaves the allowed subset (relative l h v c q a z, plain numbers).
std::optional<std::vector<PenPoint>> pointsAlong(const GlyphStroke& stroke);

}  // namespace lacewright
