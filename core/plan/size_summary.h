#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/check/companions.h"

namespace lacewright {

// Companions that an edge of a size parts on one row.
struct PartedByEdge {
    Edge edge = Edge::Start;
    int row = 0;  // row NUMBER as the knitter reads it
    CompanionPair pair;
    bool operator==(const PartedByEdge&) const = default;
};

// One size of a chart in figures. Repeats the size gives no times for are worked once.
struct SizeSummary {
    std::string name;
    Reach reach;
    std::string startPoint;  // letter, empty where no point stands
    std::string endPoint;
    std::vector<std::pair<std::string, int>> times;  // by repeat, in the order of the chart
    std::int64_t first = 0;                          // stitches row 1 takes
    std::int64_t last = 0;                           // stitches the last row leaves
    std::optional<double> cm;  // width of row 1 by the chart's gauge, with its edge stitches
    std::optional<double> lastCm;
    std::vector<PartedByEdge> parted;  // substituted stitches are parted no more
    bool operator==(const SizeSummary&) const = default;
};

// The sizes in the order of the chart. Requires: a chart with rows.
std::vector<SizeSummary> summarizeSizes(const Chart& chart);

}  // namespace lacewright
