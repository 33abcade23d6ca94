#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "core/sheet/lay_out.h"
#include "tests/support/drawn_rows.h"

// Questions that tests ask of a laid-out sheet.
namespace lacewright::test {

inline std::vector<Text> textsOf(const Page& page, Role role) {
    std::vector<Text> texts;
    for (const ItemGroup& group : page.groups) {
        for (const Item& item : group.items) {
            const auto* text = std::get_if<Text>(&item);
            if (text != nullptr && text->role == role) texts.push_back(*text);
        }
    }
    return texts;
}

inline std::vector<std::string> wordsOf(const Page& page, Role role) {
    std::vector<std::string> words;
    for (const Text& text : textsOf(page, role)) words.push_back(text.text);
    return words;
}

inline std::vector<std::vector<Spot>> runsOf(const Page& page, Role role) {
    std::vector<std::vector<Spot>> runs;
    for (const ItemGroup& group : page.groups) {
        for (const Item& item : group.items) {
            const auto* shape = std::get_if<Shape>(&item);
            if (shape == nullptr || shape->role != role) continue;
            runs.insert(runs.end(), shape->runs.begin(), shape->runs.end());
        }
    }
    return runs;
}

// The frame of a chart shown whole: {left, top, right, bottom}.
struct Rectangle {
    int left = 0;
    int top = 0;
    int right = 0;
    int bottom = 0;
    bool operator==(const Rectangle&) const = default;
};
inline Rectangle boundsOf(const std::vector<Spot>& run) {
    Rectangle box{run.front().x, run.front().y, run.front().x, run.front().y};
    for (const Spot spot : run) {
        box = {std::min(box.left, spot.x), std::min(box.top, spot.y), std::max(box.right, spot.x),
               std::max(box.bottom, spot.y)};
    }
    return box;
}
inline Rectangle frameOf(const Page& page) {
    const auto frame = runsOf(page, Role::Frame);
    EXPECT_EQ(frame.size(), 1U) << "the chart is not shown whole";
    return frame.empty() ? Rectangle{} : boundsOf(frame.front());
}

// Every glyph of the chart as (stitch, row number, column of its leftmost cell).
using Placed = std::set<std::tuple<std::string, int, int>>;
inline Placed placedGlyphs(const Sheet& sheet, const Page& page) {
    Placed placed;
    const Rectangle frame = frameOf(page);
    for (const ItemGroup& group : page.groups) {
        if (group.rowNumber == 0) continue;
        for (const Item& item : group.items) {
            const auto* run = std::get_if<GlyphRun>(&item);
            if (run == nullptr) continue;
            for (const int x : run->xs) {
                placed.emplace(sheet.glyphs[static_cast<std::size_t>(run->glyph)].stitch,
                               group.rowNumber, (frame.right - x) / kCellUnits);
            }
        }
    }
    return placed;
}

inline const ItemGroup* groupOf(const Page& page, const std::string& name) {
    const auto found = std::find_if(page.groups.begin(), page.groups.end(),
                                    [&](const ItemGroup& group) { return group.name == name; });
    return found == page.groups.end() ? nullptr : &*found;
}

// A panel with everything a sheet can show: two repeats, jogs, a row repeat, points, sizes.
inline Chart panel() {
    Chart chart = chartOf({"k k yo ssk k k k2tog yo k k k k", "k k k yo ssk k2tog yo k k k k k",
                           "k k k k yo s2kp yo k k k no-stitch k", "k p c22r k k k k p k"});
    chart.name = "Tide <panel> & \"edge\"";
    chart.notes = "Slip the first stitch of every row.";
    chart.source = "Invented for this test";
    Repeat a;
    a.name = "A";
    a.right = 4;
    a.left = 9;
    a.lastRow = 2;
    a.jogs[1] = {1, 1, {}};
    chart.repeats = {a};
    chart.rowRepeat = RowRepeat{0, 2, 0, {}};
    chart.points = {{"P", 2, {}}, {"Q", 6, {}}, {"R", 11, {}}};
    Size small;
    small.name = "small";
    small.reach = {6, 11};
    small.times["A"] = 3;
    small.stitches = 25;
    Size large;
    large.name = "large";
    large.reach = {2, 11};
    large.times["A"] = 5;
    large.changes.push_back({3, 3, {3, 10}, {}});
    chart.sizes = {small, large};
    return chart;
}

}  // namespace lacewright::test
