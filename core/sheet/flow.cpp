#include <algorithm>

#include "core/sheet/text_blocks.h"

namespace lacewright {
namespace {

constexpr int kColumnGap = 28;         // units between columns of text
constexpr int kNarrowestColumn = 260;  // 65 mm of standard paper
constexpr int kWidestRow = 4;          // columns
constexpr double kHeadingSpace = 0.8;  // before a heading, in sizes of running text
constexpr double kLeading = 1.3;       // line height in font sizes

int lineHeight(const Drawing& drawing, const Line& line) {
    return drawing.units(line.points * kLeading);
}

// A heading has space before it, except at the top of a column.
int spaceBefore(const Drawing& drawing, const Entry& entry, bool atTop) {
    return entry.heading && !atTop ? drawing.units(drawing.body() * kHeadingSpace) : 0;
}

int heightOf(const Drawing& drawing, const Entry& entry, bool atTop) {
    int height = spaceBefore(drawing, entry, atTop);
    for (const Line& line : entry.lines) height += lineHeight(drawing, line);
    const int cells = entry.cells > 0 ? kCellUnits + 2 : 0;
    return (entry.above ? height + cells : std::max(height, cells)) + entry.gap;
}

// Entries from `first` on that fit one column; a heading never ends it.
std::size_t fill(const Drawing& drawing, const std::vector<Entry>& entries, std::size_t first,
                 int height) {
    int used = 0;
    std::size_t next = first;
    while (next < entries.size()) {
        used += heightOf(drawing, entries[next], next == first);
        if (used > height) break;
        ++next;
    }
    while (next > first && next < entries.size() && entries[next - 1].keepsNext) --next;
    return next;
}

std::size_t fillColumns(const Drawing& drawing, const std::vector<Entry>& entries,
                        std::size_t first, int height, int columns) {
    for (int i = 0; i < columns; ++i) first = fill(drawing, entries, first, height);
    return first;
}

// The least height at which the columns hold everything, up to `limit`.
int evenHeight(const Drawing& drawing, const std::vector<Entry>& entries, std::size_t first,
               int columns, int limit) {
    int low = 0;
    int high = limit;
    while (low < high) {
        const int middle = low + (high - low) / 2;
        if (fillColumns(drawing, entries, first, middle, columns) == entries.size()) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    return low;
}

ItemGroup& groupNamed(std::vector<ItemGroup>& groups, const std::string& name) {
    const auto found = std::find_if(groups.begin(), groups.end(),
                                    [&](const ItemGroup& group) { return group.name == name; });
    if (found != groups.end()) return *found;
    groups.push_back(emptyGroup(name));
    return groups.back();
}

void drawCells(ItemGroup& group, const Entry& entry, Spot at) {
    addBox(group, entry.shaded ? Role::NoStitch : Role::LegendCell, at.x, at.y,
           entry.cells * kCellUnits, kCellUnits);
    if (entry.glyph >= 0) group.items.emplace_back(GlyphRun{entry.glyph, at.y, {at.x}});
}

// Gives the units used.
int drawEntry(const Drawing& drawing, const Entry& entry, Spot at, bool atTop,
              std::vector<ItemGroup>& groups) {
    ItemGroup& group = groupNamed(groups, entry.group);
    int y = at.y + spaceBefore(drawing, entry, atTop);
    if (entry.cells > 0) drawCells(group, entry, {at.x, y});
    if (entry.above) y += kCellUnits + 2;
    if (entry.label) {
        const Spot base{at.x, y + drawing.units(entry.label->points)};
        addText(group, entry.label->role, base, Anchor::Start, entry.label->points,
                entry.label->text);
    }
    for (const Line& line : entry.lines) {
        const Spot base{at.x + entry.indent, y + drawing.units(line.points)};
        addText(group, line.role, base, Anchor::Start, line.points, line.text);
        y += lineHeight(drawing, line);
    }
    return heightOf(drawing, entry, atTop);
}

}  // namespace

int columnsOfText(int width) {
    return std::clamp((width + kColumnGap) / (kNarrowestColumn + kColumnGap), 1, kWidestRow);
}

int textColumnWidth(int width) {
    const int columns = columnsOfText(width);
    return (width - (columns - 1) * kColumnGap) / columns;
}

Flowed flow(const Drawing& drawing, const std::vector<Entry>& entries, std::size_t first,
            const Area& area, std::vector<ItemGroup>& groups) {
    const int columns = columnsOfText(area.width);
    int limit = area.height;
    if (limit == 0) {
        for (const Entry& entry : entries) limit += heightOf(drawing, entry, false);
    }
    const int height = evenHeight(drawing, entries, first, columns, limit);
    Flowed flowed{first, 0};
    for (int column = 0; column < columns; ++column) {
        const std::size_t begin = flowed.next;
        const std::size_t end = fill(drawing, entries, begin, height);
        Spot at{area.x + column * (textColumnWidth(area.width) + kColumnGap), area.y};
        for (; flowed.next < end; ++flowed.next) {
            at.y += drawEntry(drawing, entries[flowed.next], at, flowed.next == begin, groups);
        }
        flowed.height = std::max(flowed.height, at.y - area.y);
    }
    return flowed;
}

}  // namespace lacewright
