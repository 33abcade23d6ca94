#include "core/sheet/drawing.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/sheet/text_width.h"

namespace lacewright {
namespace {

constexpr double kMmPerPoint = 25.4 / 72;
constexpr double kTallestNumber = 0.7;  // share of a cell that a number beside the grid may fill

void include(Extent& extent, int left, int top, int right, int bottom) {
    extent.left = std::min(extent.left, left);
    extent.top = std::min(extent.top, top);
    extent.right = std::max(extent.right, right);
    extent.bottom = std::max(extent.bottom, bottom);
}

void includeText(Extent& extent, const Drawing& drawing, const Text& text) {
    const int length = drawing.textUnits(text.text, text.points, lookOf(text.role).bold);
    const int height = drawing.units(text.points);
    const int before = text.anchor == Anchor::Start ? 0
                       : text.anchor == Anchor::End ? length
                                                    : length / 2;
    if (text.upward) {
        const int bottom = text.at.y + before;
        include(extent, text.at.x - height, bottom - length, text.at.x + height / 4, bottom);
    } else {
        const int left = text.at.x - before;
        include(extent, left, text.at.y - height, left + length, text.at.y + height / 4);
    }
}

}  // namespace

double Drawing::unitsPerPoint() const {
    return kMmPerPoint / unitMm;
}

int Drawing::units(double points) const {
    return static_cast<int>(std::ceil(points * unitsPerPoint()));
}

double Drawing::small() const {
    return std::min(options.textPoints * 0.95, kTallestNumber * kCellUnits / unitsPerPoint());
}

int Drawing::textUnits(std::string_view text, double points, bool bold) const {
    return static_cast<int>(std::ceil(textWidth(text, bold) * points * unitsPerPoint()));
}

bool Drawing::hasWrongSides() const {
    return chart.sideOf(0) == Side::Wrong || (chart.height() > 1 && chart.sideOf(1) == Side::Wrong);
}

ItemGroup emptyGroup(std::string name) {
    ItemGroup group;
    group.name = std::move(name);
    return group;
}

void addBox(ItemGroup& group, Role role, int x, int y, int width, int height) {
    group.items.emplace_back(
        Shape{role, {{{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}}, true});
}

void addLine(ItemGroup& group, Role role, Spot from, Spot to) {
    group.items.emplace_back(Shape{role, {{from, to}}, false});
}

void addText(ItemGroup& group, Role role, Spot at, Anchor anchor, double points, std::string text) {
    group.items.emplace_back(Text{role, at, anchor, points, std::move(text), false});
}

Extent extentOf(const Drawing& drawing, const std::vector<ItemGroup>& groups) {
    Extent extent;
    for (const ItemGroup& group : groups) {
        for (const Item& item : group.items) {
            if (const auto* text = std::get_if<Text>(&item)) includeText(extent, drawing, *text);
            const auto* shape = std::get_if<Shape>(&item);
            if (shape == nullptr) continue;
            for (const auto& run : shape->runs) {
                for (const Spot spot : run) include(extent, spot.x, spot.y, spot.x, spot.y);
            }
        }
    }
    return extent;
}

void move(std::vector<ItemGroup>& groups, int dx, int dy) {
    const auto moveSpot = [dx, dy](Spot& spot) {
        spot.x += dx;
        spot.y += dy;
    };
    for (ItemGroup& group : groups) {
        for (Item& item : group.items) {
            if (auto* text = std::get_if<Text>(&item)) moveSpot(text->at);
            if (auto* shape = std::get_if<Shape>(&item)) {
                for (auto& run : shape->runs) std::for_each(run.begin(), run.end(), moveSpot);
            }
            if (auto* glyphs = std::get_if<GlyphRun>(&item)) {
                glyphs->y += dy;
                for (int& x : glyphs->xs) x += dx;
            }
        }
    }
}

}  // namespace lacewright
