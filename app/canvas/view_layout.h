#pragma once

#include "app/canvas/chart_geometry.h"

namespace lacewright::app {

// Room that the margins of the chart ask for, in device pixels.
struct MarginSizes {
    int left = 0;
    int right = 0;
    int foot = 0;
    bool operator==(const MarginSizes&) const = default;
};

// How the view is divided, in device pixels from its upper left corner. The margins hug the chart:
// when all of it fits, it stands in the middle with its numbers beside it.
struct ViewLayout {
    QRect grid;  // the window onto the sheet of the chart
    QRect left;  // beside the grid
    QRect right;
    QRect foot;         // below all three
    QSize scrollRange;  // how far the sheet can be moved; 0 where it fits

    // Where the sheet's (0, 0) lies when it is scrolled so far.
    QPoint origin(QPoint scrolled) const { return grid.topLeft() - scrolled; }
    bool operator==(const ViewLayout&) const = default;
};

// `step` is the device pixels in a device-independent pixel, rounded: edges fall on multiples of
// it.
ViewLayout layOut(QSize view, QSize sheet, const MarginSizes& margins, int step);

// The scroll position that brings `part` of the sheet into the window, with `spare` around it where
// there is room; `scrolled` itself when it is there already.
QPoint scrolledTo(const ViewLayout& layout, QPoint scrolled, const QRect& part, int spare);

}  // namespace lacewright::app
