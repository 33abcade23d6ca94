#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <vector>

#include "core/chart/chart.h"
#include "core/count/path.h"

// Where and by how much rows do not take what is on the needle, in a form that repairs can aim at.
namespace lacewright {

// Cells that are counted together: the edges of a row (everything outside repeats), or one repeat.
// Edges first, then the repeats by index.
inline constexpr int kOutsideRepeats = -1;

// A row against the one it is worked on.
struct Link {
    int below = -1;  // row index of the row it is worked on; -1: the cast-on, or nothing
    // By how much it takes more than there is: for the edges, then for each repeat of the chart.
    // Absent where the two cannot be compared repeat by repeat, or nothing is known.
    using Excess = std::vector<std::optional<int>>;
    Excess excess;
    // Where a row's own repeat does not go into the loops there are, it may be out in other ways as
    // well: in its repeat, in its edges or in both. Those that are out by most come last.
    std::vector<Excess> otherwise;

    bool fits() const;
    std::optional<int> of(int group) const { return excess[static_cast<std::size_t>(group + 1)]; }
};

// The links of a chart, by row index, and of the first row of the row repeat to its last row.
struct Links {
    std::vector<Link> rows;
    std::optional<Link> closing;
    int closingRow = 0;  // the first row of the row repeat

    bool fit() const;
    // Rows and the closing that do not fit, for comparing charts.
    std::vector<bool> faults() const;
};
Links linksOf(const Chart& chart);

// By how much a row should take and make more, for the edges and every repeat.
struct GroupMove {
    int takes = 0;
    int makes = 0;
    bool operator==(const GroupMove&) const = default;
};
using GroupMoves = std::map<int, GroupMove>;  // by group; absent: as drawn

// The group of a column, for a path of the whole width; nothing outside the path.
std::vector<int> groupsOf(const Path& path, int width);

}  // namespace lacewright
