#pragma once

class QPainter;

namespace lacewright::app {

struct ViewScene;

// Draws the whole foot of the chart: column numbers, points and the lanes of the sizes. Painter in
// device pixels of the view.
void paintFoot(QPainter& painter, const ViewScene& scene);

}  // namespace lacewright::app
