#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/edge_pairs.h"

// Which columns each size begins and ends at and how often it works the repeats, so that it comes
// out as wide as wanted. Widths are those of row 1.
namespace lacewright {

struct WantedWidth {
    std::string name;                 // of the size
    double cm = 0;                    // finished width: body and ease
    std::optional<double> body = {};  // centimetres around the body, for the checks of the ease
    bool operator==(const WantedWidth&) const = default;
};

struct PlanRequest {
    Gauge gauge;  // both above 0
    std::vector<WantedWidth> sizes;
    int edgeStitches = 0;  // plain stitches at each side beside the charted ones; part of the width
    double toleranceCm = 0;           // widths this near to the wanted one are as good as it
    int multiple = 1;                 // all stitches of a size are a multiple of this,
    int remainder = 0;                // plus this
    int pieces = 1;                   // so many pieces of this width go round the body
    std::map<std::string, int> held;  // times of repeats that are alike in every size, by name
};

// One way of working a size. A repeat is worked as often as its share of `times` says; where all
// shares are alike that is `times`, at least once.
struct EdgeChoice {
    Reach reach;
    int times = 0;            // 0: the chart has no repeat but held ones
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
    int pieces = 1;
    RepeatShares shares;
    std::vector<PlannedSize> sizes;
    bool operator==(const Plan&) const = default;
};

inline constexpr int kMostPlannedColumns = 400;  // width of a chart that can be planned

// Several repeats: what tells the sizes apart is one number of times, in which all repeats share
// (repeatShares). A panel of which only the ground beside the motif widens is planned by holding
// the motif's repeat. Sizes that differ in more than one number are not searched for: they would be
// wide alike in many ways, and which of them is wanted is the designer's choice.
//
// For every size the best of all pairs of columns and all times: at least half as wide as wanted
// where any is, then rows that fit, then the fewest
// parted pairs, then nearest to the wanted width (within the tolerance all widths are alike), then
// mirrored, then least off centre, then nearest, then the fewest stitches, then the columns that
// the chart's size of that name has now, then the first columns. Refuses gauges, widths and
// multiples out of bounds, sizes without name or with one name, charts wider than
// kMostPlannedColumns, held repeats the chart does not have, and demands that no choice meets.
Result<Plan> planSizes(const Chart& chart, const PlanRequest& request);

// The chart with the plan's sizes instead of its own, their points, the plan's gauge, pieces and
// edge stitches: one edit. A size that the chart has already keeps its members that this version
// does not know, its shoulder and, unless the plan has one, its body; a size that begins and ends
// where it did keeps the rows of its own (changes), and an edge that stays keeps its substitutions.
// Refuses as edits do.
Result<Chart> usePlan(const Chart& chart, const Plan& plan);

// What usePlan leaves behind, a sentence for each size concerned; empty when nothing is lost.
std::vector<std::string> lostByPlan(const Chart& chart, const Plan& plan);

}  // namespace lacewright
