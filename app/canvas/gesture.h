#pragma once

#include <QPoint>
#include <Qt>

#include "app/document/view_state.h"

namespace lacewright::app {

// Where the pointer is.
struct PointerPlace {
    QPoint sheet;  // device pixels on the sheet of the chart
    QPoint view;   // device pixels in the view
    Cell cell;     // the one under it, or nearest to it
    int line = 0;  // nearest line between columns, as ChartGeometry::lineNear
    Qt::KeyboardModifiers modifiers;
};

// What a pressed pointer does until it is released. Destroyed without finish() or cancel(), a
// gesture leaves things as they are at that moment.
class Gesture {
 public:
    Gesture() = default;
    Gesture(const Gesture&) = delete;
    Gesture& operator=(const Gesture&) = delete;
    virtual ~Gesture() = default;

    virtual void moveTo(const PointerPlace& place) = 0;
    virtual void finish() {}
    virtual void cancel() {}
    // Whether the cursor goes with the pointer, so that the view must follow it out of sight.
    virtual bool movesCursor() const { return false; }
    // The chart as it would be if the pointer were released now; null: as it is.
    virtual const Chart* preview() const { return nullptr; }
};

}  // namespace lacewright::app
