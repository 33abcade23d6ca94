#include "app/panels/stitch_icon.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPalette>

#include "app/canvas/colours.h"
#include "app/canvas/stitch_picture.h"

namespace lacewright::app {

QPixmap stitchPixmap(const Stitch& stitch, const QPalette& palette, int cell, double pixelRatio) {
    const ChartColours colours = coloursFor(palette);
    PictureStyle style;
    style.cell = static_cast<int>(cell * pixelRatio);
    style.ground = stitch.shaded ? colours.groundNoStitch : colours.ground;
    style.ink = colours.glyph;
    style.hatch = colours.hatch;
    QImage image = stitchImage(stitch, style);
    QPainter painter(&image);
    painter.setPen(colours.gridTen);
    painter.drawRect(0, 0, image.width() - 1, image.height() - 1);
    painter.end();
    image.setDevicePixelRatio(pixelRatio);
    return QPixmap::fromImage(image);
}

QIcon stitchIcon(const Stitch& stitch, const QPalette& palette) {
    constexpr int kCell = 20;
    return QIcon(stitchPixmap(stitch, palette, kCell, qGuiApp->devicePixelRatio()));
}

}  // namespace lacewright::app
