#pragma once

#include <QRect>

#include "app/canvas/margin_pictures.h"
#include "app/canvas/view_scene.h"

class QPainter;

namespace lacewright::app {

// Room beside the grid, in device pixels.
struct SideWidths {
    int left = 0;
    int right = 0;
};
SideWidths sideWidths(const ViewScene& scene);

// What stands beside the rows: each row's number at the end where the row begins, the sign of its
// gravest finding at the right, the bracket of the row repeat at the left. Painter and `exposed` in
// device pixels of the view.
void paintSides(QPainter& painter, const ViewScene& scene, MarginPictures& pictures,
                const QRect& exposed);

}  // namespace lacewright::app
