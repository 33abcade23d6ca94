#pragma once

class QPainter;

namespace lacewright::app {

class MarginPictures;
struct ViewScene;

// Draws the whole foot of the chart: column numbers, points and the lanes of the sizes. Painter in
// device pixels of the view.
void paintFoot(QPainter& painter, const ViewScene& scene, MarginPictures& pictures);

}  // namespace lacewright::app
