#include <algorithm>

#include "core/chart/edit_steps.h"

namespace lacewright {
namespace {

bool meet(const Box& one, const Box& other) {
    return one.right <= other.left && other.right <= one.left;
}

// A row index on which both have a column in common.
std::optional<int> rowShared(const Repeat& a, const Repeat& b) {
    const int first = std::max(a.firstRow, b.firstRow);
    const int last = std::min(a.lastRow, b.lastRow);
    // Rows without a jog are all alike: the lowest of them stands for the others.
    int plain = first;
    for (; plain <= last; ++plain) {
        if (meet(a.on(plain), b.on(plain))) return plain;
        if (!a.jogs.contains(plain) && !b.jogs.contains(plain)) break;
    }
    for (const Repeat* repeat : {&a, &b}) {
        for (const auto& [row, jog] : repeat->jogs) {
            if (row > plain && row <= last && meet(a.on(row), b.on(row))) return row;
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<Error> overlapProblem(const Chart& chart, const std::string& name) {
    const Repeat* repeat = chart.findRepeat(name);
    for (const Repeat& other : chart.repeats) {
        if (&other == repeat) continue;
        const auto row = rowShared(other, *repeat);
        if (!row) continue;
        return refusal("Repeats " + other.name + " and " + name + " overlap on row " +
                       std::to_string(chart.rowNumber(*row)) + ".");
    }
    return std::nullopt;
}

}  // namespace lacewright
