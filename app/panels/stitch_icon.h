#pragma once

#include <QIcon>

#include "core/stitch/stitch.h"

class QPalette;

namespace lacewright::app {

// The symbol of a stitch in a framed cell, in the colours of the chart, `cell` device-independent
// pixels high and as many cells wide as the stitch spans.
QPixmap stitchPixmap(const Stitch& stitch, const QPalette& palette, int cell, double pixelRatio);
QIcon stitchIcon(const Stitch& stitch, const QPalette& palette);

}  // namespace lacewright::app
