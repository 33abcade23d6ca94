#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/sheet/role.h"
#include "core/stitch/stitch.h"

// What a printed chart looks like, as a list of things to draw. Every back end (SVG, PDF, PNG,
// printer, preview) draws this list and adds nothing of its own. Coordinates are whole units, x to
// the right, y downward, (0,0) the upper left corner of the page; a cell is kCellUnits wide.
namespace lacewright {

struct Spot {
    int x = 0;
    int y = 0;
    bool operator==(const Spot&) const = default;
};

// Runs of straight lines; `closed` joins the last spot of each run to its first.
struct Shape {
    Role role = Role::Grid;
    std::vector<std::vector<Spot>> runs;
    bool closed = false;
    bool operator==(const Shape&) const = default;
};

// The same glyph set down at several places on one line.
struct GlyphRun {
    int glyph = 0;        // index in Sheet::glyphs
    int y = 0;            // top of the cells
    std::vector<int> xs;  // left edge of the leftmost cell of each
    bool operator==(const GlyphRun&) const = default;
};

enum class Anchor : std::uint8_t { Start, Middle, End };

struct Text {
    Role role = Role::Body;
    Spot at;  // on the base line
    Anchor anchor = Anchor::Start;
    double points = 9;
    std::string text;
    bool upward = false;  // read from bottom to top
    bool operator==(const Text&) const = default;
};

using Item = std::variant<Shape, GlyphRun, Text>;

// Items that belong together: a charted row, the legend ...
struct ItemGroup {
    std::string name;   // "row", "legend": what a style sheet calls it
    int rowNumber = 0;  // as the knitter reads it; 0: not a row
    bool wrongSide = false;
    std::string title;  // the group in words, for those who do not see it; may be empty
    std::vector<Item> items;
    bool operator==(const ItemGroup&) const = default;
};

struct Page {
    int width = 0;  // units
    int height = 0;
    std::vector<ItemGroup> groups;  // drawn in this order
    bool operator==(const Page&) const = default;
};

// A glyph as the sheet uses it.
struct GlyphShape {
    std::string stitch;  // id
    std::vector<GlyphStroke> strokes;
    bool operator==(const GlyphShape&) const = default;
};

struct Sheet {
    std::string title;
    std::string description;
    double unitMm = 0.25;      // millimetres of paper a unit
    bool rowsInWords = false;  // row groups carry titles
    std::vector<GlyphShape> glyphs;
    std::vector<Page> pages;  // at least one
    bool operator==(const Sheet&) const = default;
};

}  // namespace lacewright
