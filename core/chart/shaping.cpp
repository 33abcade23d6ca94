#include "core/chart/shaping.h"

#include <algorithm>

#include "core/chart/edit_steps.h"
#include "core/chart/edits.h"

namespace lacewright {
namespace {

// What is left of the changes outside the rows.
std::vector<ReachChange> outside(const std::vector<ReachChange>& changes, int firstRow,
                                 int lastRow) {
    std::vector<ReachChange> left;
    for (const ReachChange& change : changes) {
        ReachChange below = change;
        below.lastRow = std::min(change.lastRow, firstRow - 1);
        if (below.firstRow <= below.lastRow) left.push_back(std::move(below));
        ReachChange above = change;
        above.firstRow = std::max(change.firstRow, lastRow + 1);
        if (above.firstRow <= above.lastRow) left.push_back(std::move(above));
    }
    return left;
}

std::vector<ReachChange> joined(const std::vector<ReachChange>& changes) {
    std::vector<ReachChange> all;
    for (const ReachChange& change : changes) {
        const bool goesOn = !all.empty() && all.back().lastRow + 1 == change.firstRow &&
                            all.back().reach == change.reach && all.back().extras == change.extras;
        if (goesOn) {
            all.back().lastRow = change.lastRow;
        } else {
            all.push_back(change);
        }
    }
    return all;
}

}  // namespace

std::vector<WorkedReach> workedReaches(const Chart& chart, const Size& size) {
    std::vector<WorkedReach> all;
    const auto add = [&](int first, int last, const Reach& reach) {
        if (first > last) return;
        const auto known = std::find_if(all.begin(), all.end(),
                                        [&](const WorkedReach& w) { return w.reach == reach; });
        if (known == all.end()) {
            all.push_back({reach, {{first, last}}});
        } else if (known->rows.back().second + 1 == first) {
            known->rows.back().second = last;
        } else {
            known->rows.emplace_back(first, last);
        }
    };
    int next = 0;
    for (const ReachChange& change : size.changes) {
        add(next, change.firstRow - 1, size.reach);
        add(change.firstRow, change.lastRow, change.reach);
        next = change.lastRow + 1;
    }
    add(next, chart.height() - 1, size.reach);
    return all;
}

Result<Chart> shapeSize(const Chart& chart, const std::string& name, int firstRow, int lastRow,
                        const Reach& reach) {
    const Size* found = chart.findSize(name);
    if (found == nullptr) return notFound("The chart has no size " + name + ".");
    if (firstRow < 0 || lastRow >= chart.height() || firstRow > lastRow)
        return outOfRange("Those rows are not in the chart.");
    Size size = *found;
    size.changes = outside(size.changes, firstRow, lastRow);
    if (!(reach == size.reach)) {
        const auto next =
            std::find_if(size.changes.begin(), size.changes.end(),
                         [&](const ReachChange& change) { return change.firstRow > lastRow; });
        size.changes.insert(next, {firstRow, lastRow, reach, {}});
    }
    size.changes = joined(size.changes);
    return changeSize(chart, name, std::move(size));
}

}  // namespace lacewright
