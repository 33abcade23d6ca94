#pragma once

#include <string>
#include <vector>

#include "core/chart/chart.h"
#include "core/sheet/lay_out.h"

// Shared by the parts of a layout: the chart with what was found out about it once, the piece of it
// that a page shows, and small helpers that put items into groups.
namespace lacewright {

// On which sides of the work a stitch is used.
struct StitchUse {
    int glyph = -1;  // index in Sheet::glyphs; -1: an empty cell
    bool onRight = false;
    bool onWrong = false;
    bool used() const { return onRight || onWrong; }
};

struct Drawing {
    const Chart& chart;
    const SheetOptions& options;
    const Size* size = nullptr;  // the chosen one
    double unitMm = 0.25;
    std::vector<StitchUse> uses;  // by stitch index
    bool inWords = true;

    double unitsPerPoint() const;
    int units(double points) const;  // the height of letters of that size, rounded up
    double body() const { return options.textPoints; }
    double small() const;  // of numbers beside the grid: no taller than a cell
    int textUnits(std::string_view text, double points, bool bold = false) const;
    std::string rowWord() const { return chart.worked == Worked::Flat ? "row" : "round"; }
    bool hasWrongSides() const;  // wrong-side rows are charted
};

// Columns right..left and rows first..last (indices), all inclusive.
struct Piece {
    int right = 1;
    int left = 1;
    int firstRow = 0;
    int lastRow = 0;

    int columns() const { return left - right + 1; }
    int rows() const { return lastRow - firstRow + 1; }
    int width() const { return columns() * kCellUnits; }
    int height() const { return rows() * kCellUnits; }
    // With the upper left corner of the grid at (0,0): left edge of a column, top of a row.
    int x(int column) const { return (left - column) * kCellUnits; }
    int y(int row) const { return (lastRow - row) * kCellUnits; }
    bool operator==(const Piece&) const = default;
};

ItemGroup emptyGroup(std::string name);
void addBox(ItemGroup& group, Role role, int x, int y, int width, int height);
void addLine(ItemGroup& group, Role role, Spot from, Spot to);
void addText(ItemGroup& group, Role role, Spot at, Anchor anchor, double points, std::string text);

// What a drawing covers.
struct Extent {
    int left = 0;
    int top = 0;
    int right = 0;
    int bottom = 0;
    int width() const { return right - left; }
    int height() const { return bottom - top; }
};
// Of shapes and texts; glyphs stay inside their grid. Grows from (0,0).
Extent extentOf(const Drawing& drawing, const std::vector<ItemGroup>& groups);
void move(std::vector<ItemGroup>& groups, int dx, int dy);

}  // namespace lacewright
