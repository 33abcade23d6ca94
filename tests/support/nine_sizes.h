#pragma once

#include <array>
#include <string>
#include <vector>

#include "tests/support/charts.h"

// Charts with nine sizes, XS to 5XL, cut at awkward columns.
namespace lacewright::test {

// Columns from start to end, and how often every repeat is worked.
struct Cut {
    int start, end, times;
};

inline Chart withNineSizes(Chart chart, const std::array<Cut, 9>& cuts) {
    const char* const kNames[] = {"XS", "S", "M", "L", "XL", "2XL", "3XL", "4XL", "5XL"};
    for (std::size_t i = 0; i < cuts.size(); ++i)
        withSize(chart, kNames[i], cuts[i].start, cuts[i].end, cuts[i].times);
    return chart;
}

struct HardChart {
    std::string name;
    Chart chart;
};

std::vector<HardChart> hardNineSizes();

}  // namespace lacewright::test
