#include "app/canvas/renderer.h"

#include <QPainter>

#include "app/canvas/cell_painter.h"
#include "app/canvas/foot_painter.h"
#include "app/canvas/overlay_painter.h"
#include "app/canvas/side_painter.h"

namespace lacewright::app {
namespace {

constexpr double kSmallestTile = 5;  // device-independent pixels; below, glyphs say nothing

}  // namespace

void Renderer::paint(QPainter& painter, const ViewScene& scene, const QRegion& exposed) {
    const ViewLayout& layout = scene.layout;
    const QRect cells = scene.geometry.cells().translated(scene.origin());
    for (const QRect& rect : exposed - (cells & layout.grid)) {
        painter.fillRect(rect, scene.colours.margin);
    }
    // Cut to the grid, neighbouring pieces become one: no row is painted in slices.
    for (const QRect& rect : exposed& layout.grid) paintGrid(painter, scene, rect);
    const QRegion sides = exposed & (QRegion(layout.left) | layout.right);
    if (!sides.isEmpty()) {
        painter.save();
        painter.setClipRegion(sides, Qt::IntersectClip);
        paintSides(painter, scene, sidePictures_, sides.boundingRect());
        painter.restore();
    }
    const QRegion foot = exposed & layout.foot;
    if (!foot.isEmpty()) {
        painter.save();
        painter.setClipRegion(foot, Qt::IntersectClip);
        paintFoot(painter, scene, footPictures_);
        painter.restore();
    }
}

void Renderer::paintGrid(QPainter& painter, const ViewScene& scene, const QRect& exposed) {
    painter.save();
    painter.setClipRect(exposed, Qt::IntersectClip);
    if (scene.geometry.cell() < scene.px(kSmallestTile)) {
        overview_.paint(painter, scene, exposed);
    } else {
        tiles_.setStyle(scene.chart.stitches, scene.geometry.cell(), scene.colours);
        paintedCells_ += paintCells(painter, scene, tiles_, strip_, exposed);
    }
    paintOverlays(painter, scene, exposed);
    painter.restore();
}

}  // namespace lacewright::app
