#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/chart/chart.h"

// Which columns each size begins and ends at and how often it works the repeats, so that it comes
// out as wide as wanted. Widths are those of row 1.
namespace lacewright {

struct WantedWidth {
    std::string name;  // of the size
    double cm = 0;     // finished width: body and ease
    bool operator==(const WantedWidth&) const = default;
};

struct PlanRequest {
    Gauge gauge;  // both above 0
    std::vector<WantedWidth> sizes;
    int edgeStitches = 0;  // plain stitches at each side beside the charted ones; part of the width
    double toleranceCm = 0;  // widths this near to the wanted one are as good as it
    int multiple = 1;        // all stitches of a size are a multiple of this,
    int remainder = 0;       // plus this
};

// One way of working a size. Every repeat is worked `times` times, at least once.
struct EdgeChoice {
    Reach reach;
    int times = 0;            // 0: the chart has no repeat
    int stitches = 0;         // charted ones, before row 1
    double cm = 0;            // finished width, edge stitches included
    double differenceCm = 0;  // reached less wanted
    bool fits = false;        // every row takes what the row below leaves
    int parted = 0;           // pairs of companions that the edges part, all rows together
    bool mirrored = false;    // every row, as this size works it, is its own mirror picture
    int offCentre = 0;        // columns by which the parts beside the full repeats differ on row 1
    bool operator==(const EdgeChoice&) const = default;
};

struct PlannedSize {
    WantedWidth wanted;
    EdgeChoice chosen;
    // What was given up: the nearest width where that fits worse or parts more, and the nearest one
    // that lies better centred.
    std::optional<EdgeChoice> nearer;
    std::optional<EdgeChoice> centred;
    bool operator==(const PlannedSize&) const = default;
};

struct Plan {
    Gauge gauge;
    int edgeStitches = 0;
    std::vector<PlannedSize> sizes;
    bool operator==(const Plan&) const = default;
};

inline constexpr int kMostPlannedColumns = 400;  // width of a chart that can be planned

// For every size the best of all pairs of columns and all times: rows that fit, then the fewest
// parted pairs, then nearest to the wanted width (within the tolerance all widths are alike), then
// mirrored, then least off centre, then nearest, then the fewest stitches, then the first columns.
// Refuses gauges, widths and multiples out of bounds, sizes without name or with one name, charts
// wider than kMostPlannedColumns, and demands that no choice meets.
Result<Plan> planSizes(const Chart& chart, const PlanRequest& request);

// The chart with the plan's sizes instead of its own, their points and the plan's gauge: one edit.
// Refuses as edits do.
Result<Chart> usePlan(const Chart& chart, const Plan& plan);

}  // namespace lacewright
