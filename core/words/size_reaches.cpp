#include "core/words/size_reaches.h"

#include <algorithm>
#include <set>

#include "core/chart/letter_names.h"

namespace lacewright {

namespace {

// Columns low..high that one edge may have on a row.
struct EdgeRoom {
    int low = 1;
    int high = 1;
};

struct RowRoom {
    EdgeRoom start;
    EdgeRoom end;
};

// First and last column of every stitch of the row, from the right.
std::vector<EdgeRoom> stitchesOn(const Chart& chart, int rowIndex) {
    std::vector<EdgeRoom> stitches;
    const Row& row = chart.row(rowIndex);
    for (int column = 1; column <= chart.width; ++column) {
        const StitchIndex stitch = row.at(column);
        if (stitch == kCovered || (*chart.stitches)[stitch].kind == StitchKind::NoStitch) continue;
        stitches.push_back({column, column + chart.stitches->spans()[stitch] - 1});
    }
    return stitches;
}

std::optional<RowRoom> roomOn(const Chart& chart, int rowIndex, const NestedRow& nested) {
    const std::vector<EdgeRoom> stitches = stitchesOn(chart, rowIndex);
    if (nested.skippedRight + nested.skippedLeft >= stitches.size()) return {};
    const std::size_t first = nested.skippedRight;
    const std::size_t last = stitches.size() - 1 - nested.skippedLeft;
    RowRoom room;
    room.start = {first == 0 ? 1 : stitches[first - 1].high + 1, stitches[first].low};
    room.end = {stitches[last].high,
                last + 1 == stitches.size() ? chart.width : stitches[last + 1].low - 1};
    for (const Repeat& repeat : chart.repeats) {
        const Box box = repeat.on(rowIndex);
        // An edge outside a box stays outside.
        if (room.start.low <= box.right) room.start.high = std::min(room.start.high, box.right);
        if (room.end.high >= box.left) room.end.low = std::max(room.end.low, box.left);
    }
    if (room.start.low > room.start.high || room.end.low > room.end.high) return {};
    return room;
}

// What is left of both.
bool narrowed(RowRoom& room, const RowRoom& by) {
    const auto shared = [](EdgeRoom a, const EdgeRoom& b) {
        return EdgeRoom{std::max(a.low, b.low), std::min(a.high, b.high)};
    };
    const RowRoom both{shared(room.start, by.start), shared(room.end, by.end)};
    if (both.start.low > both.start.high || both.end.low > both.end.high) return false;
    room = both;
    return true;
}

void setOwnCells(const Chart& chart, int rowIndex, const NestedRow& nested, Size& size) {
    if (nested.own.empty()) return;
    const std::vector<EdgeRoom> stitches = stitchesOn(chart, rowIndex);
    for (const OwnCell& own : nested.own) {
        size.substitutions.push_back({rowIndex,
                                      stitches[own.stitch].low,
                                      own.nearStart ? Edge::Start : Edge::End,
                                      own.id,
                                      {}});
    }
}

}  // namespace

std::optional<std::size_t> setReaches(const Chart& chart, const std::vector<NestedRow>& nested,
                                      Size& size) {
    std::vector<ReachChange> spans;
    std::optional<RowRoom> shared;
    for (int row = 0; row < chart.height(); ++row) {
        const auto index = static_cast<std::size_t>(row);
        const auto room = roomOn(chart, row, nested[index]);
        if (!room) return index;
        setOwnCells(chart, row, nested[index], size);
        if (!shared || !narrowed(*shared, *room)) {
            shared = room;
            spans.push_back({row, row, {}});
        }
        spans.back().lastRow = row;
        spans.back().reach = {shared->start.high, shared->end.low};
    }
    // The longest span is the rule, the others are its exceptions.
    const auto longest = std::max_element(
        spans.begin(), spans.end(), [](const ReachChange& a, const ReachChange& b) {
            return a.lastRow - a.firstRow < b.lastRow - b.firstRow;
        });
    size.reach = longest->reach;
    for (const ReachChange& span : spans) {
        if (span.reach != size.reach) size.changes.push_back(span);
    }
    return {};
}

void letterReaches(Chart& chart) {
    std::set<int> columns;
    for (const Size& size : chart.sizes) columns.insert({size.reach.start, size.reach.end});
    chart.points.clear();
    for (const int column : columns) {
        chart.points.push_back({letterName(static_cast<int>(chart.points.size())), column, {}});
    }
}

}  // namespace lacewright
