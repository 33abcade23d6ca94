#pragma once

#include <QRect>

#include "app/canvas/row_strip.h"
#include "app/canvas/tile_cache.h"
#include "app/canvas/view_scene.h"

class QPainter;

namespace lacewright::app {

// Draws the cells that `exposed` touches, the heavier lines every 5 and 10 cells and the frame of
// the chart. Painter and `exposed` are in device pixels of the view. Gives the number of cells
// drawn. Requires: `exposed` lies within the grid of the layout; the cache has the style of the
// scene. `strip` is room to work in.
int paintCells(QPainter& painter, const ViewScene& scene, TileCache& tiles, RowStrip& strip,
               const QRect& exposed);

// The lines and the frame alone; they are part of paintCells.
void paintGridLines(QPainter& painter, const ViewScene& scene, const QRect& exposed);

}  // namespace lacewright::app
