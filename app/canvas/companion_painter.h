#pragma once

#include "app/canvas/view_scene.h"

class QPainter;

namespace lacewright::app {

// Arcs from every increase to the decrease that makes up for it: over all rows in sight when the
// scene asks for them, or else for the stitch under the pointer alone. Pairs that meet over the
// edge of a repeat are dashed; a stitch without companion stands in a dashed ring.
void paintCompanions(QPainter& painter, const ViewScene& scene, const CellArea& seen);

// How far arcs rise above their row, in device pixels.
int companionReach(const ViewScene& scene);

}  // namespace lacewright::app
