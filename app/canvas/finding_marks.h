#pragma once

#include <QRect>

#include "app/canvas/view_scene.h"

class QPainter;

namespace lacewright::app {

// Outlines of the cells that faults (unbroken line) and warnings (dashes) name, row by row.
void paintFindingMarks(QPainter& painter, const ViewScene& scene, const CellArea& seen);

// The sign of a severity within a square: an octagon for a fault, a triangle for a warning, a small
// ring for a note, so that they differ in shape as well as in colour.
void paintSign(QPainter& painter, const ViewScene& scene, Severity severity, const QRect& square);

}  // namespace lacewright::app
