#pragma once

#include <QPainter>

#include "core/sheet/sheet.h"

namespace lacewright::app {

// Draws a page in its own units, whatever transformation the painter has: texts come out at their
// size through it. Colours, line widths and order are those of the sheet.
// Requires: page < sheet.pages.size().
void paintSheet(QPainter& painter, const Sheet& sheet, std::size_t page);

}  // namespace lacewright::app
