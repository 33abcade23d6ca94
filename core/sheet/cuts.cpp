#include "core/sheet/cuts.h"

#include <algorithm>
#include <functional>

namespace lacewright {
namespace {

// A cut lies after a column (to the left of it) or after a row (above it); both counted from 1.
using Suits = std::function<bool(int)>;

// The last place up to `limit` that suits the first wish that any place suits. Places in the first
// half of the sheet count only when nothing else is left.
int bestCut(int begin, int limit, const std::vector<Suits>& wishes) {
    const int half = begin + (limit - begin) / 2;
    for (const Suits& suits : wishes) {
        for (int cut = limit; cut > half; --cut) {
            if (suits(cut)) return cut;
        }
    }
    for (int cut = limit; cut > begin; --cut) {
        if (wishes.back()(cut)) return cut;
    }
    return limit;
}

std::vector<int> cutLine(int length, int most, const std::vector<Suits>& wishes) {
    std::vector<int> cuts;
    int begin = 0;
    while (length - begin > most) {
        begin = bestCut(begin, begin + most, wishes);
        cuts.push_back(begin);
    }
    cuts.push_back(length);
    return cuts;
}

// By column: a stitch of several cells bridges the edge to the next column on some row.
std::vector<bool> bridgedColumns(const Chart& chart) {
    std::vector<bool> bridged(static_cast<std::size_t>(chart.width) + 1);
    for (int row = 0; row < chart.height(); ++row) {
        if (!chart.row(row).traits().hasWide) continue;
        for (int column = 1; column < chart.width; ++column) {
            if (chart.row(row).at(column + 1) == kCovered)
                bridged[static_cast<std::size_t>(column)] = true;
        }
    }
    return bridged;
}

bool isRepeatEdge(const Chart& chart, int column) {
    return std::any_of(chart.repeats.begin(), chart.repeats.end(), [column](const Repeat& repeat) {
        return repeat.left == column || repeat.right == column + 1;
    });
}

bool isRowEdge(const Chart& chart, int rowsBelow) {
    const auto edge = [rowsBelow](int first, int last) {
        return first == rowsBelow || last + 1 == rowsBelow;
    };
    if (chart.rowRepeat && edge(chart.rowRepeat->firstRow, chart.rowRepeat->lastRow)) return true;
    return std::any_of(chart.repeats.begin(), chart.repeats.end(),
                       [&](const Repeat& repeat) { return edge(repeat.firstRow, repeat.lastRow); });
}

}  // namespace

Piece Cuts::piece(int fromRight, int fromBottom) const {
    const auto i = static_cast<std::size_t>(fromRight);
    const auto j = static_cast<std::size_t>(fromBottom);
    return {i == 0 ? 1 : columns[i - 1] + 1, columns[i], j == 0 ? 0 : rows[j - 1] + 1, rows[j]};
}

Cuts cutChart(const Chart& chart, int mostColumns, int mostRows, int every) {
    const std::vector<bool> bridged = bridgedColumns(chart);
    const Suits whole = [&](int column) { return !bridged[static_cast<std::size_t>(column)]; };
    Cuts cuts;
    cuts.columns =
        cutLine(chart.width, mostColumns,
                {[&](int column) { return whole(column) && isRepeatEdge(chart, column); },
                 [&](int column) { return whole(column) && column % every == 0; }, whole});
    cuts.rows = cutLine(chart.height(), mostRows,
                        {[&](int rows) { return isRowEdge(chart, rows); },
                         [&](int rows) { return rows % every == 0; }, [](int) { return true; }});
    for (int& row : cuts.rows) row -= 1;
    return cuts;
}

}  // namespace lacewright
