#include "core/words/rows_once.h"

#include <algorithm>

#include "core/words/stitch_words.h"
#include "core/words/worked_order.h"

namespace lacewright {

namespace {

WrittenPattern without(const WrittenPattern& pattern, std::size_t again) {
    WrittenPattern once = pattern;
    once.again.erase(once.again.begin() + static_cast<std::ptrdiff_t>(again));
    return once;
}

bool differsBySize(const RowsAgain& again) {
    const std::vector<int>& times = again.times.bySize;
    return !again.until &&
           std::any_of(times.begin(), times.end(), [&](int n) { return n != times.front(); });
}

// The rows leave as many stitches as they found, in every size.
bool keepsCount(const WrittenPattern& pattern, const RowsAgain& again) {
    const WrittenRow* first = pattern.findRow(again.first);
    const WrittenRow* last = pattern.findRow(again.last);
    if (first == nullptr || last == nullptr || again.after != again.last) return false;
    const auto from = static_cast<std::size_t>(first - pattern.rows.data());
    const auto to = static_cast<std::size_t>(last - pattern.rows.data());
    for (std::size_t size = 0; size < pattern.sizeCount(); ++size) {
        const WrittenProof proof = proveWritten(pattern, size);
        if (!proof.knittable || proof.rows[from].before != proof.rows[to].after) return false;
    }
    return true;
}

// The rows among those worked one after the other.
RowRepeat workedRows(const WrittenPattern& once, const RowsAgain& again, std::size_t size) {
    WrittenPattern before = once;
    std::erase_if(before.rows, [&](const WrittenRow& row) { return row.number >= again.first; });
    std::erase_if(before.again, [&](const RowsAgain& a) { return a.after >= again.first; });
    const std::size_t first = inWorkingOrder(before, proveWritten(before, size)).rows.size();
    const auto length =
        std::count_if(once.rows.begin(), once.rows.end(), [&](const WrittenRow& row) {
            return row.number >= again.first && row.number <= again.last;
        });
    return {static_cast<int>(first), static_cast<int>(first) + static_cast<int>(length) - 1, 0, {}};
}

}  // namespace

std::optional<RowsOnce> withRowsOnce(const WrittenPattern& pattern) {
    if (pattern.repeatFrom ||
        std::count_if(pattern.again.begin(), pattern.again.end(), differsBySize) != 1)
        return {};
    const auto found = std::find_if(pattern.again.begin(), pattern.again.end(), differsBySize);
    if (!keepsCount(pattern, *found)) return {};
    const auto index = static_cast<std::size_t>(found - pattern.again.begin());
    RowsOnce once{without(pattern, index), {}, {}};
    once.repeat = workedRows(once.pattern, *found, 0);
    std::vector<int> times = found->times.bySize;
    for (int& n : times) ++n;
    const std::string last = std::to_string(once.repeat.lastRow + 1);
    const bool one = once.repeat.firstRow == once.repeat.lastRow;
    once.remark = (one ? "Row " : "Rows " + std::to_string(once.repeat.firstRow + 1) + " to ") +
                  last + (one ? " is" : " are") + " drawn once; the sizes work " +
                  (one ? "it " : "them ") + timesText(times, Numerals::Digits) + ".";
    return once;
}

WrittenPattern asChartRepeats(const WrittenPattern& pattern, const Chart& chart, std::size_t size) {
    if (!chart.rowRepeat || chart.uncharted != Uncharted::None) return pattern;
    for (std::size_t i = 0; i < pattern.again.size(); ++i) {
        const WrittenPattern once = without(pattern, i);
        const RowRepeat rows = workedRows(once, pattern.again[i], size);
        if (rows.firstRow != chart.rowRepeat->firstRow || rows.lastRow != chart.rowRepeat->lastRow)
            continue;
        const std::size_t worked = inWorkingOrder(once, proveWritten(once, size)).rows.size();
        if (worked == static_cast<std::size_t>(chart.height())) return once;
    }
    return pattern;
}

}  // namespace lacewright
