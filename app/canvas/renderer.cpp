#include "app/canvas/renderer.h"

#include <QPainter>
#include <QRegion>

#include "app/canvas/cell_painter.h"
#include "app/canvas/foot_painter.h"
#include "app/canvas/overlay_painter.h"
#include "app/canvas/side_painter.h"

namespace lacewright::app {
namespace {

constexpr double kSmallestTile = 5;  // device-independent pixels; below, glyphs say nothing

}  // namespace

void Renderer::paint(QPainter& painter, const ViewScene& scene, const QRect& exposed) {
    const QRect cells = scene.geometry.cells().translated(scene.origin());
    painter.save();
    painter.setClipRect(exposed, Qt::IntersectClip);
    const QRegion around = QRegion(exposed) - (cells & scene.layout.grid);
    for (const QRect& rect : around) painter.fillRect(rect, scene.colours.margin);
    const QRect inGrid = exposed & scene.layout.grid;
    if (!inGrid.isEmpty()) paintGrid(painter, scene, inGrid);
    if (exposed.intersects(scene.layout.left) || exposed.intersects(scene.layout.right)) {
        painter.save();
        painter.setClipRect(scene.layout.left | scene.layout.right, Qt::IntersectClip);
        paintSides(painter, scene, exposed);
        painter.restore();
    }
    if (exposed.intersects(scene.layout.foot)) paintFoot(painter, scene);
    painter.restore();
}

void Renderer::paintGrid(QPainter& painter, const ViewScene& scene, const QRect& exposed) {
    painter.save();
    painter.setClipRect(exposed, Qt::IntersectClip);
    if (scene.geometry.cell() < scene.px(kSmallestTile)) {
        overview_.paint(painter, scene, exposed);
    } else {
        tiles_.setStyle(scene.chart.stitches, scene.geometry.cell(), scene.colours);
        paintedCells_ += paintCells(painter, scene, tiles_, exposed);
    }
    paintOverlays(painter, scene, exposed);
    painter.restore();
}

}  // namespace lacewright::app
