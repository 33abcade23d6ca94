#include "app/canvas/tile_cache.h"

#include <QPainter>
#include <cassert>
#include <utility>

#include "app/canvas/stitch_picture.h"

namespace lacewright::app {
namespace {

// A cell that lost its stitch: shown crossed out, as no glyph of any stitch fills a whole cell.
const Stitch& orphan() {
    static const Stitch stitch = [] {
        Stitch made;
        made.glyph = {{0, 0, "l20 20", false}, {20, 0, "l-20 20", false}};
        return made;
    }();
    return stitch;
}

PictureStyle styleOf(const Stitch& stitch, int cell, const ChartColours& colours, TileState state) {
    PictureStyle style{cell, groundOf(colours, state), colours.glyph, colours.hatch};
    if (state == TileState::Outside) style.ink = colours.glyphOutside;
    if (stitch.shaded && state < TileState::Warned) style.ground = colours.groundNoStitch;
    return style;
}

}  // namespace

QColor groundOf(const ChartColours& colours, TileState state) {
    switch (state) {
        case TileState::Plain:
            return colours.ground;
        case TileState::Inside:
            return colours.groundInside;
        case TileState::Outside:
            return colours.groundOutside;
        case TileState::Warned:
            return colours.groundWarned;
        case TileState::Guilty:
            return colours.groundGuilty;
    }
    return colours.ground;
}

void TileCache::setStyle(StitchCataloguePtr stitches, int cell, const ChartColours& colours) {
    if (stitches == stitches_ && cell == cell_ && colours == colours_) return;
    stitches_ = std::move(stitches);
    cell_ = cell;
    colours_ = colours;
    for (std::vector<Tile>& tiles : tiles_) tiles.assign(stitches_->size() + 1, {});
}

const TileCache::Tile& TileCache::draw(StitchIndex stitch, TileState state) {
    assert(stitches_ && stitch <= stitches_->size());
    const Stitch& drawn = stitch == kCovered ? orphan() : (*stitches_)[stitch];
    QImage image = stitchImage(drawn, styleOf(drawn, cell_, colours_, state));
    QPainter painter(&image);
    painter.fillRect(0, 0, image.width(), 1, colours_.gridFine);
    painter.fillRect(0, 0, 1, image.height(), colours_.gridFine);
    painter.end();
    Tile& tile = tiles_[static_cast<std::size_t>(state)][stitch];
    tile.image = std::move(image);
    tile.pixels = {reinterpret_cast<const QRgb*>(tile.image.constBits()),
                   tile.image.bytesPerLine() / static_cast<qsizetype>(sizeof(QRgb))};
    return tile;
}

}  // namespace lacewright::app
