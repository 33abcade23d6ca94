#include "core/check/clean_edges.h"

#include <algorithm>

#include "core/check/parting.h"

namespace lacewright {

namespace {

// `counts` tells which of the pairs of a row count as parted.
template <class Counts>
std::vector<bool> linesWithout(const Chart& chart, Counts counts) {
    std::vector<bool> clean(static_cast<std::size_t>(chart.width) + 1, true);
    for (int row = 0; row < chart.height(); ++row) {
        PairsAcross pairs(chart, row);
        for (int line = 1; line < chart.width; ++line) {
            const auto at = static_cast<std::size_t>(line);
            if (!clean[at]) continue;
            const std::vector<CompanionPair> parted = pairs.partedAt(line);
            clean[at] = std::none_of(parted.begin(), parted.end(),
                                     [&](const CompanionPair& pair) { return counts(row, pair); });
        }
    }
    return clean;
}

}  // namespace

std::vector<bool> cleanLines(const Chart& chart) {
    return linesWithout(chart, [](int, const CompanionPair&) { return true; });
}

std::vector<bool> cleanLines(const Chart& chart, const Size& size, Edge edge) {
    return linesWithout(chart, [&](int row, const CompanionPair& pair) {
        return !isSubstituted(size, row, edge, pair);
    });
}

int nearestClean(const std::vector<bool>& clean, int line) {
    const int last = static_cast<int>(clean.size()) - 1;
    line = std::clamp(line, 0, last);
    for (int step = 0; step <= last; ++step) {
        for (const int tried : {line - step, line + step}) {
            if (tried >= 0 && tried <= last && clean[static_cast<std::size_t>(tried)]) return tried;
        }
    }
    return line;
}

int nextClean(const std::vector<bool>& clean, int line, int direction) {
    const int last = static_cast<int>(clean.size()) - 1;
    for (int tried = line + direction; tried >= 0 && tried <= last; tried += direction) {
        if (clean[static_cast<std::size_t>(tried)]) return tried;
    }
    return line;
}

}  // namespace lacewright
