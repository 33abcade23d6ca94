#pragma once

#include <QPainterPath>

#include "core/stitch/stitch.h"

namespace lacewright::app {

// A stroke of a glyph as a path, in cell units with the upper left corner of its cell at (0,0).
// Empty when its tail does not follow the grammar.
QPainterPath glyphPath(const GlyphStroke& stroke);

}  // namespace lacewright::app
