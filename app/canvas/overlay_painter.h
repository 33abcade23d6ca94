#pragma once

#include <QRect>

#include "app/canvas/view_scene.h"

class QPainter;

namespace lacewright::app {

// What lies over the cells: repeats with their names, the edges of the chosen size, cells that
// findings name, the selection and the cursor. Painter and `exposed` as in paintCells.
void paintOverlays(QPainter& painter, const ViewScene& scene, const QRect& exposed);

// What is written on a repeat: "A × n", or the times of the chosen size.
QString repeatLabel(const Repeat& repeat, const Size* chosen);

// How far overlays reach beyond the cells they belong to, in device pixels.
int overlayReach(const ViewScene& scene);

}  // namespace lacewright::app
