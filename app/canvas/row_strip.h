#pragma once

#include <QImage>

#include "app/canvas/tile_cache.h"

namespace lacewright::app {

// A row of cells put together in memory, so that a painter copies it at once: copying thousands of
// pictures one by one takes it many times as long.
class RowStrip {
 public:
    // An empty strip with room for so many cells. Requires: cell > 0.
    void begin(int cells, int cell);
    // Puts the upper left cell of a picture `times` times to the right end, beginning `from` pixels
    // from the left edge of the picture. Requires: there is room; the picture is as high as a cell.
    void append(const TilePixels& tile, int from, int times);

    // What has been put together stands at the left; the rest is left over from longer strips.
    const QImage& image() const { return image_; }
    int width() const { return width_; }  // pixels

 private:
    QImage image_;
    int cell_ = 0;
    int width_ = 0;
};

}  // namespace lacewright::app
