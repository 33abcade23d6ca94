#include "app/canvas/colours.h"

#include <QPalette>
#include <algorithm>
#include <cmath>

namespace lacewright::app {
namespace {

constexpr QRgb kOrange = 0xFFE69F00;
constexpr QRgb kSkyBlue = 0xFF56B4E9;
constexpr QRgb kBluishGreen = 0xFF009E73;
constexpr QRgb kBlue = 0xFF0072B2;
constexpr QRgb kVermillion = 0xFFD55E00;
constexpr QRgb kReddishPurple = 0xFFCC79A7;

// `share` of the colour laid over the ground.
QColor tint(QRgb colour, QRgb ground, double share) {
    const auto mix = [share](int over, int under) {
        return static_cast<int>(std::lround(share * over + (1 - share) * under));
    };
    return {mix(qRed(colour), qRed(ground)), mix(qGreen(colour), qGreen(ground)),
            mix(qBlue(colour), qBlue(ground))};
}

double linear(int channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) +
           0.0722 * linear(colour.blue());
}

QColor translucent(QRgb colour, int alpha) {
    QColor result(colour);
    result.setAlpha(alpha);
    return result;
}

}  // namespace

ChartColours lightColours() {
    constexpr QRgb kPaper = 0xFFFFFFFF;
    ChartColours colours;
    colours.ground = kPaper;
    colours.groundInside = tint(kBluishGreen, kPaper, 0.10);
    colours.groundOutside = QColor(0xF3F3F2);
    colours.groundGuilty = tint(kVermillion, kPaper, 0.14);
    colours.groundWarned = tint(kOrange, kPaper, 0.22);
    colours.groundNoStitch = QColor(0xD6D6D4);
    colours.glyph = QColor(0x141414);
    colours.glyphOutside = QColor(0xA2A2A0);
    colours.hatch = QColor(0x9C9C9A);
    colours.gridFine = QColor(0xCFCFCC);
    colours.gridFive = QColor(0x9A9A97);
    colours.gridTen = QColor(0x5E5E5C);
    colours.frame = QColor(0x141414);
    colours.repeat = kBlue;
    colours.size = kBluishGreen;
    colours.fault = kVermillion;
    colours.warning = kOrange;
    colours.note = kBlue;
    colours.companion = tint(kReddishPurple, 0xFF000000, 0.74);
    colours.selection = translucent(kSkyBlue, 76);
    colours.hole = kBlue;
    colours.shaping = QColor(0x8E8E8B);
    colours.margin = QColor(0xFFFFFF);
    colours.text = QColor(0x141414);
    colours.textQuiet = QColor(0x62625F);
    return colours;
}

ChartColours darkColours() {
    constexpr QRgb kSlate = 0xFF1D1F21;
    ChartColours colours;
    colours.ground = kSlate;
    colours.groundInside = tint(kBluishGreen, kSlate, 0.16);
    colours.groundOutside = QColor(0x18191A);
    colours.groundGuilty = tint(kVermillion, kSlate, 0.20);
    colours.groundWarned = tint(kOrange, kSlate, 0.20);
    colours.groundNoStitch = QColor(0x43464A);
    colours.glyph = QColor(0xF0F0EE);
    colours.glyphOutside = QColor(0x6A6D70);
    colours.hatch = QColor(0x73777B);
    colours.gridFine = QColor(0x37393D);
    colours.gridFive = QColor(0x5C6065);
    colours.gridTen = QColor(0x8B9095);
    colours.frame = QColor(0xD8D8D6);
    colours.repeat = kSkyBlue;
    colours.size = tint(kBluishGreen, 0xFFFFFFFF, 0.82);
    colours.fault = tint(kVermillion, 0xFFFFFFFF, 0.86);
    colours.warning = kOrange;
    colours.note = kSkyBlue;
    colours.companion = kReddishPurple;
    colours.selection = translucent(kSkyBlue, 60);
    colours.hole = kSkyBlue;
    colours.shaping = QColor(0x85898D);
    colours.margin = QColor(0x141517);
    colours.text = QColor(0xF0F0EE);
    colours.textQuiet = QColor(0xA6A8AA);
    return colours;
}

ChartColours coloursFor(const QPalette& palette) {
    const bool dark = luminance(palette.color(QPalette::Base)) < 0.18;
    return dark ? darkColours() : lightColours();
}

double contrast(const QColor& a, const QColor& b) {
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

}  // namespace lacewright::app
