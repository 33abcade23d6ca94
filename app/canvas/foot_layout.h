#pragma once

#include <QRect>

#include "app/canvas/view_scene.h"

namespace lacewright::app {

// How the foot of the chart is divided, top to bottom: column numbers, lettered points, one lane
// per size. Lanes get lower when there are many. Device pixels of the view.
struct FootLayout {
    QRect numbers;
    QRect points;
    QRect firstLane;
    int lanes = 0;

    // Requires: 0 <= index < lanes.
    QRect lane(int index) const { return firstLane.translated(0, index * firstLane.height()); }
    // The lane at that height; -1 for none.
    int laneAt(int y) const;
};

// `tallest` is what the view can spare for the foot.
int footHeight(const ViewScene& scene, int tallest);
FootLayout footLayout(const ViewScene& scene);

// Where a size's marks stand in its lane: its start at the right edge of its first column, its end
// at the left edge of its last.
struct SpanOfSize {
    int start = 0;  // x in the view
    int end = 0;    // x in the view, left of start
};
SpanOfSize spanOf(const ViewScene& scene, const Reach& reach);

}  // namespace lacewright::app
