#pragma once

#include "core/sheet/drawing.h"

// The parts of a chart piece, each drawn with the upper left corner of the grid at (0,0).
namespace lacewright {

// Every piece of the grid, in the order they are drawn: grounds, grid, rows with their glyphs and
// numbers, what the chosen size leaves out, frame, repeats, foot.
std::vector<ItemGroup> drawPiece(const Drawing& drawing, const Piece& piece);

ItemGroup drawGrounds(const Drawing& drawing, const Piece& piece);
ItemGroup drawGrid(const Drawing& drawing, const Piece& piece);
ItemGroup drawFrame(const Drawing& drawing, const Piece& piece);
ItemGroup drawRow(const Drawing& drawing, const Piece& piece, int row);
ItemGroup drawRepeats(const Drawing& drawing, const Piece& piece);
ItemGroup drawRowRepeat(const Drawing& drawing, const Piece& piece);

// The chosen size: tint under the cells it works; veil over the others and outline around its own.
ItemGroup drawSizeGround(const Drawing& drawing, const Piece& piece);
ItemGroup drawSizeOutline(const Drawing& drawing, const Piece& piece);

// Everything under the grid: column numbers, brackets of the repeats, points, sizes.
ItemGroup drawFoot(const Drawing& drawing, const Piece& piece);

}  // namespace lacewright
