#pragma once

#include <QImage>
#include <array>
#include <vector>

#include "app/canvas/colours.h"
#include "core/stitch/catalogue.h"

namespace lacewright::app {

// What a cell is besides its stitch. The stronger comes last.
enum class TileState : std::uint8_t {
    Plain,
    Inside,   // within the chosen size
    Outside,  // beyond the chosen size
    Warned,   // named by a warning
    Guilty    // named by a fault
};
inline constexpr int kTileStates = 5;

// The ground of a cell in that state.
QColor groundOf(const ChartColours& colours, TileState state);

// Ready pictures of stitches: ground, glyph and the grid line at the left and upper edge in one
// opaque image of whole device pixels, so that a cell is one copy. Made when first asked for.
class TileCache {
 public:
    // Forgets everything when anything differs.
    void setStyle(StitchCataloguePtr stitches, int cell, const ChartColours& colours);

    // As wide as the stitch spans, without lines inside. kCovered gives the picture of a cell that
    // belongs to no stitch. The reference is good until setStyle. Requires: setStyle was called.
    const QImage& tile(StitchIndex stitch, TileState state) {
        const QImage& ready = tiles_[static_cast<std::size_t>(state)][stitch];
        return ready.isNull() ? draw(stitch, state) : ready;
    }

 private:
    const QImage& draw(StitchIndex stitch, TileState state);

    StitchCataloguePtr stitches_;
    ChartColours colours_;
    int cell_ = 0;
    std::array<std::vector<QImage>, kTileStates> tiles_;
};

}  // namespace lacewright::app
