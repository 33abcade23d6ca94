#pragma once

#include <algorithm>
#include <cstdlib>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/chart/chart.h"

// A knitter who works one size of a chart cell by cell. It is an oracle: it uses the chart as data
// and nothing that counts, walks or pairs for the program.
namespace lacewright::test {

// The columns a size works on a row, in the order of a right-side row. Times by repeat index.
inline std::vector<int> columnsWorked(const Chart& chart, int row, Reach reach,
                                      const std::vector<int>& times) {
    struct BoxHere {
        int right, left, times;
    };
    std::vector<BoxHere> boxes;
    for (std::size_t i = 0; i < chart.repeats.size(); ++i) {
        const Repeat& repeat = chart.repeats[i];
        if (row < repeat.firstRow || row > repeat.lastRow) continue;
        const auto jog = repeat.jogs.find(row);
        const bool jogged = jog != repeat.jogs.end();
        boxes.push_back({repeat.right + (jogged ? jog->second.right : 0),
                         repeat.left + (jogged ? jog->second.left : 0), times[i]});
    }
    std::vector<int> worked;
    for (int column = reach.start; column <= reach.end;) {
        const auto in = std::find_if(boxes.begin(), boxes.end(), [column](const BoxHere& box) {
            return box.right <= column && column <= box.left;
        });
        if (in == boxes.end()) {
            worked.push_back(column++);
            continue;
        }
        // The part of the box from the start, the box in full, the part to the end.
        if (column > in->right) {
            for (int c = column; c <= in->left; ++c) worked.push_back(c);
        }
        for (int pass = 0; pass < in->times; ++pass) {
            for (int c = in->right; c <= in->left; ++c) worked.push_back(c);
        }
        if (reach.end < in->left) {
            for (int c = in->right; c <= reach.end; ++c) worked.push_back(c);
        }
        column = in->left + 1;
    }
    return worked;
}

inline std::vector<int> timesBySize(const Chart& chart, const Size& size) {
    std::vector<int> times;
    for (const Repeat& repeat : chart.repeats) {
        const auto found = size.times.find(repeat.name);
        times.push_back(found == size.times.end() ? 1 : found->second);
    }
    return times;
}

inline Reach reachOn(const Size& size, int row) {
    for (const ReachChange& change : size.changes) {
        if (row >= change.firstRow && row <= change.lastRow) return change.reach;
    }
    return size.reach;
}

// The stitches of a size on a row in right-side order, its substitutions in place; nothing when a
// wide stitch is cut.
inline std::optional<std::vector<StitchIndex>> stitchesWorked(const Chart& chart, int row,
                                                              const Size& size) {
    const std::vector<StitchIndex>& cells = chart.row(row).cells();
    const std::vector<int> columns =
        columnsWorked(chart, row, reachOn(size, row), timesBySize(chart, size));
    std::vector<std::pair<int, StitchIndex>> worked;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const StitchIndex cell = cells[static_cast<std::size_t>(columns[i] - 1)];
        if (cell == kCovered) {
            if (i == 0 || columns[i - 1] != columns[i] - 1) return std::nullopt;
            continue;
        }
        const auto span = static_cast<std::size_t>((*chart.stitches)[cell].span);
        for (std::size_t k = 1; k < span; ++k) {
            if (i + k >= columns.size() || columns[i + k] != columns[i] + static_cast<int>(k))
                return std::nullopt;
        }
        worked.emplace_back(columns[i], cell);
    }
    for (const Substitution& other : size.substitutions) {
        if (other.row != row) continue;
        const auto isThere = [&](const auto& one) { return one.first == other.column; };
        if (other.edge == Edge::Start) {
            const auto at = std::find_if(worked.begin(), worked.end(), isThere);
            if (at != worked.end()) at->second = *chart.stitches->find(other.stitch);
        } else {
            const auto at = std::find_if(worked.rbegin(), worked.rend(), isThere);
            if (at != worked.rend()) at->second = *chart.stitches->find(other.stitch);
        }
    }
    std::vector<StitchIndex> stitches;
    for (const auto& [column, stitch] : worked) stitches.push_back(stitch);
    return stitches;
}

// What a knitter meets on one row.
struct KnittedRow {
    bool cut = false;  // a wide stitch is cut, so nothing is counted
    std::int64_t takes = 0;
    std::int64_t makes = 0;
};

inline std::vector<KnittedRow> knitSize(const Chart& chart, const Size& size) {
    std::vector<KnittedRow> rows;
    for (int row = 0; row < chart.height(); ++row) {
        KnittedRow knitted;
        if (const auto stitches = stitchesWorked(chart, row, size)) {
            for (const StitchIndex index : *stitches) {
                knitted.takes += (*chart.stitches)[index].takes;
                knitted.makes += (*chart.stitches)[index].makes;
            }
        } else {
            knitted.cut = true;
        }
        rows.push_back(knitted);
    }
    return rows;
}

// How many pairs of companions stand on both sides of the gap between the columns right and
// right + 1. Every way of leaving out surplus units is tried; the rest, in balance, is paired at
// the least sum of distances when as many pairs cross a gap as the units right of it are out of
// balance. Of ways as short the one is taken that leaves out the units read last.
inline int pairsCrossing(const Chart& chart, int row, int right) {
    struct Unit {
        int column, sign;
    };
    std::vector<Unit> units;
    for (int column = 1; column <= chart.width; ++column) {
        const StitchIndex index = chart.row(row).cells()[static_cast<std::size_t>(column - 1)];
        if (index == kCovered) continue;
        const Stitch& stitch = (*chart.stitches)[index];
        if (stitch.kind == StitchKind::BindOff || stitch.kind == StitchKind::CastOn) continue;
        const int net = stitch.makes - stitch.takes;
        for (int i = 0; i < std::abs(net); ++i) units.push_back({column, net > 0 ? 1 : -1});
    }
    int sum = 0;
    for (const Unit& unit : units) sum += unit.sign;
    const int sign = sum > 0 ? 1 : -1;
    std::vector<bool> left(units.size(), false);
    long long least = -1;
    std::vector<int> leftColumns;
    int crossing = 0;
    const auto judge = [&] {
        long long distance = 0;
        int balance = 0;
        int here = 0;
        std::size_t next = 0;
        for (int gap = 1; gap < chart.width; ++gap) {
            for (; next < units.size() && units[next].column <= gap; ++next)
                balance += left[next] ? 0 : units[next].sign;
            distance += std::abs(balance);
            if (gap == right) here = std::abs(balance);
        }
        std::vector<int> columns;
        for (std::size_t i = units.size(); i-- > 0;) {
            if (left[i]) columns.push_back(units[i].column);
        }
        if (least < 0 || distance < least || (distance == least && columns > leftColumns)) {
            least = distance;
            leftColumns = columns;
            crossing = here;
        }
    };
    const auto leaveOut = [&](auto&& self, std::size_t from, int many) -> void {
        if (many == 0) return judge();
        for (std::size_t i = from; i < units.size(); ++i) {
            if (units[i].sign != sign) continue;
            left[i] = true;
            self(self, i + 1, many - 1);
            left[i] = false;
        }
    };
    leaveOut(leaveOut, 0, std::abs(sum));
    return crossing;
}

}  // namespace lacewright::test
