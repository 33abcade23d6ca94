#pragma once

#include <QByteArray>
#include <QColor>
#include <QImage>

#include "core/stitch/stitch.h"

namespace lacewright::app {

// How a stitch is to look. Sizes in device pixels.
struct PictureStyle {
    int cell = 20;
    QColor ground;
    QColor ink;
    QColor hatch;  // over the ground of a shaded stitch
};

// The glyph as an SVG document of its own, span x 1 cells of kCellUnits.
QByteArray stitchSvg(const Stitch& stitch, const PictureStyle& style);
// The same rendered, opaque, without grid lines: span * cell wide and cell high.
QImage stitchImage(const Stitch& stitch, const PictureStyle& style);

}  // namespace lacewright::app
