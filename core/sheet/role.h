#pragma once

#include <cstdint>

namespace lacewright {

// What an item of a sheet is for. Decides its pen, its filling and the class a style sheet finds it
// by; in the order of the table in role.cpp.
enum class Role : std::uint8_t {
    Paper,       // the ground of the page
    NoStitch,    // the grey ground of cells that exist only on paper
    SizeGround,  // the tint of the cells the chosen size works
    Grid,
    HeavyGrid,
    Stitch,
    SolidStitch,  // the filled parts of a glyph
    Veil,         // over cells the chosen size does not work
    Frame,
    Cut,  // where the chart goes on on another sheet
    Repeat,
    Bracket,  // of a repeat or a row repeat, beside the grid
    SizeOutline,
    SizeEdge,  // where the chosen size begins and ends inside a repeat
    SizeLine,
    ChosenSizeLine,
    Swap,         // corner of a cell the chosen size works differently,
    SwapOutline,  // and the line around it
    PointMark,
    Join,  // where sheets meet
    LegendCell,
    Rule,
    // Texts
    Title,
    Heading,
    Name,
    Body,
    RowNumber,
    ColumnNumber,
    RepeatName,
    PointName,
    SizeName,
    ChosenSizeName,
    JoinMark,
    Count
};

// How a role is drawn. Widths in units of the sheet, colours 0xRRGGBB.
struct Look {
    const char* name;       // class in SVG
    double pen = 0;         // line width; 0: no line
    std::uint32_t ink = 0;  // of the line, or of the text
    bool filled = false;
    std::uint32_t filling = 0xFFFFFF;
    double opacity = 1;  // of the filling
    double dash = 0;     // length of dashes and gaps; 0: a whole line
    bool bold = false;   // texts
};

const Look& lookOf(Role role);

// Figures of a standard cell of 5 mm: a unit is 0.25 mm, so that the lines of a sheet follow the
// ladder thin 0.25, symbols 0.35, thick 0.5, extra 1.0 mm of ISO 128-20, line group 0.5.
inline constexpr double kStandardCellMm = 5.0;

// Fonts asked for, first that exists.
inline constexpr const char* kFontFamilies[] = {"DejaVu Sans", "Verdana", "Arial", "sans-serif"};

}  // namespace lacewright
