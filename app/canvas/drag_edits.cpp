#include "app/canvas/drag_edits.h"

#include <algorithm>

#include "core/chart/shaping.h"

namespace lacewright::app {
namespace {

Error unknown(const std::string& name) {
    return {ErrorCode::NotFound, "There is no \"" + name + "\" in this chart.", {}};
}

void moveEnds(Reach& reach, int from, int to) {
    if (reach.start == from) reach.start = to;
    if (reach.end == from) reach.end = to;
}

}  // namespace

Result<Chart> moveRepeatEdge(const Chart& chart, const std::string& name, BoxSide side, int line,
                             std::optional<int> onlyRow) {
    const Repeat* found = chart.findRepeat(name);
    if (found == nullptr) return unknown(name);
    Repeat repeat = *found;
    if (side == BoxSide::Top) {
        repeat.lastRow = line;
    } else if (side == BoxSide::Bottom) {
        repeat.firstRow = line + 1;
    } else if (onlyRow) {
        Jog& jog = repeat.jogs[*onlyRow];
        if (side == BoxSide::Right) {
            jog.right = line + 1 - repeat.right;
        } else {
            jog.left = line - repeat.left;
        }
        if (jog == Jog{}) repeat.jogs.erase(*onlyRow);
    } else if (side == BoxSide::Right) {
        repeat.right = line + 1;
    } else {
        repeat.left = line;
    }
    std::erase_if(repeat.jogs, [&repeat](const auto& jog) { return !repeat.covers(jog.first); });
    return changeRepeat(chart, name, std::move(repeat));
}

Result<Chart> moveSizeMark(const Chart& chart, const std::string& name, Edge edge, int line,
                           std::optional<int> onRow) {
    const Size* found = chart.findSize(name);
    if (found == nullptr) return unknown(name);
    Size size = *found;
    Reach* reach = &size.reach;
    for (ReachChange& change : size.changes) {
        if (onRow && *onRow >= change.firstRow && *onRow <= change.lastRow) reach = &change.reach;
    }
    (edge == Edge::Start ? reach->start : reach->end) = edge == Edge::Start ? line + 1 : line;
    return changeSize(chart, name, std::move(size));
}

Result<Chart> shapeSizeMark(const Chart& chart, const std::string& name, Edge edge, int line,
                            const RowSpan& rows) {
    const Size* found = chart.findSize(name);
    if (found == nullptr) return unknown(name);
    const Size before = *found;
    Result<Chart> shaped = chart;
    for (int row = rows.first; shaped && row <= rows.last;) {
        Reach reach = before.on(row);
        int last = row;
        while (last < rows.last && before.on(last + 1) == reach) ++last;
        (edge == Edge::Start ? reach.start : reach.end) = edge == Edge::Start ? line + 1 : line;
        shaped = shapeSize(*shaped, name, row, last, reach);
        row = last + 1;
    }
    return shaped;
}

int cleanColumn(const Chart& chart, const Point& point, const std::vector<bool>& clean,
                int column) {
    bool starts = false;
    bool ends = false;
    for (const Size& size : chart.sizes) {
        starts = starts || size.reach.start == point.column;
        ends = ends || size.reach.end == point.column;
    }
    const auto fits = [&](int tried) {
        const auto line = static_cast<std::size_t>(tried);
        return tried >= 1 && tried <= chart.width && (!starts || clean[line - 1]) &&
               (!ends || clean[line]);
    };
    for (int step = 0; step < chart.width; ++step) {
        for (const int tried : {column - step, column + step}) {
            if (fits(tried)) return tried;
        }
    }
    return column;
}

Result<Chart> movePoint(const Chart& chart, const std::string& name, int column) {
    const Point* found = chart.findPoint(name);
    if (found == nullptr) return unknown(name);
    const int from = found->column;
    Chart moved = chart;
    for (Point& point : moved.points) {
        if (point.name == name) point.column = column;
    }
    for (Size& size : moved.sizes) {
        moveEnds(size.reach, from, column);
        for (ReachChange& change : size.changes) moveEnds(change.reach, from, column);
    }
    if (std::optional<Error> problem = frameProblem(moved)) return *problem;
    return moved;
}

}  // namespace lacewright::app
