#pragma once

#include <QRegion>

#include "app/canvas/margin_pictures.h"
#include "app/canvas/overview.h"
#include "app/canvas/row_strip.h"
#include "app/canvas/tile_cache.h"

class QPainter;

namespace lacewright::app {

// Paints any part of the view, and owns the pictures needed for that.
class Renderer {
 public:
    // Paints all that lies within `exposed` and nothing beyond. Device pixels of the view.
    void paint(QPainter& painter, const ViewScene& scene, const QRegion& exposed);

    // Cells painted since the renderer was made, to prove that repaints stay small.
    long long paintedCells() const { return paintedCells_; }

 private:
    void paintGrid(QPainter& painter, const ViewScene& scene, const QRect& exposed);

    TileCache tiles_;
    RowStrip strip_;
    Overview overview_;
    MarginPictures sidePictures_;
    MarginPictures footPictures_;
    long long paintedCells_ = 0;
};

}  // namespace lacewright::app
