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

// The pixels of a picture, line by line.
struct TilePixels {
    const QRgb* pixels = nullptr;
    qsizetype stride = 0;  // pixels from a line to the next
};

// Ready pictures of stitches: ground, glyph and the grid line at the left and upper edge in one
// opaque image of whole device pixels (RGB32), so that a cell is one copy. Made when first asked
// for.
class TileCache {
 public:
    // Forgets everything when anything differs.
    void setStyle(StitchCataloguePtr stitches, int cell, const ChartColours& colours);

    // As wide as the stitch spans, without lines inside. kCovered gives the picture of a cell that
    // belongs to no stitch. The reference is good until setStyle. Requires: setStyle was called.
    const QImage& tile(StitchIndex stitch, TileState state) { return ready(stitch, state).image; }
    const TilePixels& pixels(StitchIndex stitch, TileState state) {
        return ready(stitch, state).pixels;
    }

 private:
    struct Tile {
        QImage image;
        TilePixels pixels;  // of the image
    };

    const Tile& ready(StitchIndex stitch, TileState state) {
        const Tile& tile = tiles_[static_cast<std::size_t>(state)][stitch];
        return tile.pixels.pixels == nullptr ? draw(stitch, state) : tile;
    }
    const Tile& draw(StitchIndex stitch, TileState state);

    StitchCataloguePtr stitches_;
    ChartColours colours_;
    int cell_ = 0;
    std::array<std::vector<Tile>, kTileStates> tiles_;
};

}  // namespace lacewright::app
