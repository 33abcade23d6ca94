#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <initializer_list>
#include <string>
#include <vector>

#include "core/base/text.h"
#include "core/chart/chart.h"

// The small language in which tests write charts.
namespace lacewright::test {

// Row 1 first, cells as drawn from left to right, `id*N` for runs; wide stitches are written once.
inline RowPtr rowOf(const std::string& text, const StitchCatalogue& stitches = *builtInStitches()) {
    std::vector<StitchIndex> cells;
    const auto words = splitWords(text);
    for (auto word = words.rbegin(); word != words.rend(); ++word) {
        const auto star = word->find('*');
        const int run =
            star == std::string_view::npos ? 1 : std::stoi(std::string(word->substr(star + 1)));
        const auto found = stitches.find(word->substr(0, star));
        if (!found) {
            ADD_FAILURE() << "no stitch is called " << *word;
            continue;
        }
        for (int i = 0; i < run; ++i) {
            cells.push_back(*found);
            cells.insert(cells.end(), static_cast<std::size_t>(stitches.spans()[*found] - 1),
                         kCovered);
        }
    }
    return makeRow(std::move(cells), stitches);
}

inline Chart chartOf(std::initializer_list<std::string> rowsFromRow1) {
    Chart chart;
    std::vector<RowPtr> rows;
    for (const std::string& row : rowsFromRow1) rows.push_back(rowOf(row));
    chart.width = rows.empty() ? 1 : rows.front()->width();
    for (const RowPtr& row : rows)
        EXPECT_EQ(row->width(), chart.width) << "rows of one chart are equally wide";
    chart.rows = RowList(rows);
    return chart;
}

// A repeat over all rows.
inline Chart& withRepeat(Chart& chart, const std::string& name, int right, int left) {
    Repeat repeat;
    repeat.name = name;
    repeat.right = right;
    repeat.left = left;
    repeat.lastRow = chart.height() - 1;
    chart.repeats.push_back(repeat);
    return chart;
}

inline Size& withSize(Chart& chart, const std::string& name, int start, int end, int times) {
    Size size;
    size.name = name;
    size.reach = {start, end};
    for (const Repeat& repeat : chart.repeats) size.times[repeat.name] = times;
    chart.sizes.push_back(size);
    return chart.sizes.back();
}

// The chart in that language again, top row first, for failure messages.
inline std::string drawing(const Chart& chart) {
    std::string all;
    for (const Repeat& r : chart.repeats) {
        all += r.name + ": columns " + std::to_string(r.right) + ".." + std::to_string(r.left) +
               ", row indices " + std::to_string(r.firstRow) + ".." + std::to_string(r.lastRow) +
               "\n";
        for (const auto& [row, jog] : r.jogs) {
            all += "  jog on row index " + std::to_string(row) + ": " + std::to_string(jog.right) +
                   ", " + std::to_string(jog.left) + "\n";
        }
    }
    for (int row = chart.height() - 1; row >= 0; --row) {
        for (int column = chart.width; column >= 1; --column) {
            const StitchIndex stitch = chart.row(row).at(column);
            all += (stitch == kCovered ? std::string("<") : (*chart.stitches)[stitch].id) + " ";
        }
        all += "\n";
    }
    return all;
}

}  // namespace lacewright::test
