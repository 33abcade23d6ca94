#include <algorithm>
#include <utility>

#include "core/sheet/grid.h"
#include "core/sheet/row_words.h"

namespace lacewright {
namespace {

constexpr int kNumberGap = 6;  // units between the grid and a row number

// The places of every glyph on a row, left to right, glyphs in order of their first place.
std::vector<GlyphRun> glyphRuns(const Drawing& drawing, const Piece& piece, int row) {
    std::vector<GlyphRun> runs;
    std::vector<int> slots;  // by glyph: its run, or -1
    const Row& cells = drawing.chart.row(row);
    const std::uint8_t* spans = drawing.chart.stitches->spans();
    for (int column = piece.left; column >= piece.right; --column) {
        const StitchIndex stitch = cells.at(column);
        const int glyph = stitch == kCovered ? -1 : drawing.uses[stitch].glyph;
        if (glyph < 0) continue;
        const int leftmost = column + spans[stitch] - 1;
        if (leftmost > piece.left) continue;  // reaches outside: it cannot be drawn
        const auto at = static_cast<std::size_t>(glyph);
        if (at >= slots.size()) slots.resize(at + 1, -1);
        if (slots[at] < 0) {
            slots[at] = static_cast<int>(runs.size());
            runs.push_back({glyph, piece.y(row), {}});
        }
        runs[static_cast<std::size_t>(slots[at])].xs.push_back(piece.x(leftmost));
    }
    return runs;
}

}  // namespace

ItemGroup drawRow(const Drawing& drawing, const Piece& piece, int row) {
    ItemGroup group = emptyGroup("row");
    group.rowNumber = drawing.chart.rowNumber(row);
    group.wrongSide = drawing.chart.sideOf(row) == Side::Wrong;
    if (drawing.inWords) group.title = rowInWords(drawing.chart, row);
    for (GlyphRun& run : glyphRuns(drawing, piece, row)) group.items.emplace_back(std::move(run));
    // The number stands where the row begins.
    const int x = group.wrongSide ? -kNumberGap : piece.width() + kNumberGap;
    const int y = piece.y(row) + (kCellUnits + drawing.units(drawing.small()) * 7 / 10) / 2;
    addText(group, Role::RowNumber, {x, y}, group.wrongSide ? Anchor::End : Anchor::Start,
            drawing.small(), std::to_string(group.rowNumber));
    return group;
}

}  // namespace lacewright
