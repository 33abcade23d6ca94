#pragma once

#include <array>
#include <vector>

#include "core/chart/chart.h"

namespace lacewright::test {

// A large chart as lace is drawn: a motif of 24 columns and 16 rows, every second row plain, 27 %
// of all cells not plain (13 of 24 on a patterned row).
inline Chart largeLace(int width, int height) {
    constexpr std::array<const char*, 24> kMotif = {
        "yo", "ssk", "k",  "yo",  "sk2p", "yo", "k", "k2tog", "yo", "k", "k",    "k2tog",
        "yo", "k",   "yo", "ssk", "k",    "k",  "k", "k",     "k",  "p", "ktbl", "k"};
    Chart chart = blankChart(width, height);
    std::vector<StitchIndex> motif;
    for (const char* id : kMotif) motif.push_back(*chart.stitches->find(id));
    for (int row = 0; row < height; row += 2) {
        std::vector<StitchIndex> cells;
        for (int column = 0; column < width; ++column) {
            cells.push_back(motif[static_cast<std::size_t>((column + row % 16) % 24)]);
        }
        chart.rows.replace(static_cast<std::size_t>(row), makeRow(cells, *chart.stitches));
    }
    return chart;
}

inline double cellsNotPlain(const Chart& chart) {
    const StitchIndex knit = *chart.stitches->find("k");
    double count = 0;
    for (int row = 0; row < chart.height(); ++row) {
        for (const StitchIndex cell : chart.row(row).cells()) count += cell != knit;
    }
    return count;
}

}  // namespace lacewright::test
