#pragma once

#include <QPolygon>
#include <functional>

#include "app/canvas/chart_geometry.h"

class QColor;
class QPainter;

namespace lacewright::app {

// The corners of an outline around a box of columns that may be another on each row, on the sheet,
// closed. Requires: firstRow <= lastRow.
QPolygon steppedOutline(const ChartGeometry& geometry, int firstRow, int lastRow,
                        const std::function<Box(int row)>& boxOn);

// Draws level and upright lines from corner to corner, centred on them, in whole pixels.
void paintSteps(QPainter& painter, const QPolygon& corners, int thickness, const QColor& colour);

// The frame of a rectangle of cells, centred on its edges; `dash` > 0 breaks it into pieces so
// long.
void paintBox(QPainter& painter, const QRect& cells, int thickness, const QColor& colour,
              int dash = 0);

}  // namespace lacewright::app
