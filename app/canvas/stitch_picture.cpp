#include "app/canvas/stitch_picture.h"

#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>

namespace lacewright::app {
namespace {

constexpr double kPenUnits = 1.5;         // width of a stroke in cell units, when cells are large
constexpr double kThinnestPixels = 1.15;  // and never thinner than this on screen

double penUnits(int cell) {
    return std::max(kPenUnits, kThinnestPixels * kCellUnits / cell);
}

QByteArray attribute(const char* name, const QByteArray& value) {
    return QByteArray(" ") + name + "=\"" + value + '"';
}

QByteArray number(double value) {
    return QByteArray::number(value, 'g', 6);
}

QByteArray pathElement(const GlyphStroke& stroke, const QByteArray& ink, const QByteArray& pen) {
    QByteArray path = "<path";
    path += attribute("d", "M" + number(stroke.x) + ' ' + number(stroke.y) +
                               QByteArray::fromStdString(stroke.tail));
    if (stroke.filled) {
        path += attribute("fill", ink);
    } else {
        path += attribute("fill", "none") + attribute("stroke", ink) +
                attribute("stroke-width", pen) + attribute("stroke-linecap", "round") +
                attribute("stroke-linejoin", "round");
    }
    return path + "/>";
}

QByteArray rectElement(int width, const QColor& colour) {
    return "<rect" + attribute("width", number(width)) + attribute("height", number(kCellUnits)) +
           attribute("fill", colour.name().toLatin1()) + "/>";
}

// Diagonal lines that meet from cell to cell, so that grey is not the only sign.
QByteArray hatchElement(int width, const QByteArray& ink) {
    QByteArray lines;
    for (int x = -kCellUnits; x < width; x += kCellUnits / 2) {
        lines += 'M' + number(x) + ' ' + number(kCellUnits) + 'l' + number(kCellUnits) + ' ' +
                 number(-kCellUnits);
    }
    return "<path" + attribute("d", lines) + attribute("fill", "none") + attribute("stroke", ink) +
           attribute("stroke-width", "1") + "/>";
}

}  // namespace

QByteArray stitchSvg(const Stitch& stitch, const PictureStyle& style) {
    const int width = kCellUnits * stitch.span;
    const QByteArray ink = style.ink.name().toLatin1();
    const QByteArray pen = number(penUnits(style.cell));
    QByteArray svg = "<svg xmlns=\"http://www.w3.org/2000/svg\"";
    svg += attribute("viewBox", "0 0 " + number(width) + ' ' + number(kCellUnits)) + '>';
    svg += rectElement(width, style.ground);
    if (stitch.shaded) svg += hatchElement(width, style.hatch.name().toLatin1());
    for (const GlyphStroke& stroke : stitch.glyph) svg += pathElement(stroke, ink, pen);
    return svg + "</svg>";
}

QImage stitchImage(const Stitch& stitch, const PictureStyle& style) {
    QImage image(style.cell * stitch.span, style.cell, QImage::Format_RGB32);
    image.fill(style.ground);
    QSvgRenderer renderer(stitchSvg(stitch, style));
    QPainter painter(&image);
    renderer.render(&painter, image.rect());
    return image;
}

}  // namespace lacewright::app
