#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/sheet/drawing.h"

// The words of a sheet: the legend, sizes, stitch counts, how to read the chart, notes.
namespace lacewright {

struct Line {
    Role role = Role::Body;
    double points = 9;
    std::string text;
};

inline constexpr int kCellGap = 8;  // units between the cell of a legend entry and its text

// A piece of text that is never torn apart, with or without the cells of a stitch before it.
struct Entry {
    std::string group;  // group of the sheet it belongs to
    int glyph = -1;     // index in Sheet::glyphs
    int cells = 0;      // cells drawn before the text; 0: none
    bool shaded = false;
    std::optional<Line> label;  // before the first line, in the space of the indent
    std::vector<Line> lines;
    int indent = 0;          // units before the text
    bool above = false;      // the text stands under the cells, not beside them
    bool heading = false;    // more space before it
    bool keepsNext = false;  // stays with the entry after it
    int gap = 0;             // units after it
};

// Every text for the foot of the sheet, lines broken to the width (units) of a column.
std::vector<Entry> textEntries(const Drawing& drawing, int columnWidth);

std::vector<std::string> sizeSentences(const Drawing& drawing, const Size& size);
std::vector<std::string> countSentences(const Drawing& drawing);
std::vector<std::string> readingSentences(const Chart& chart);

// Where entries may go.
struct Area {
    int x = 0;
    int y = 0;
    int width = 0;
    int height = 0;  // 0: no limit
};
struct Flowed {
    std::size_t next = 0;  // the first entry that found no room
    int height = 0;        // units used
};
int columnsOfText(int width);
int textColumnWidth(int width);
// Sets entries from `first` on in columns of even height, as many as the area holds.
Flowed flow(const Drawing& drawing, const std::vector<Entry>& entries, std::size_t first,
            const Area& area, std::vector<ItemGroup>& groups);

}  // namespace lacewright
