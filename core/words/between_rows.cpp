#include "core/words/between_rows.h"

#include <algorithm>

#include "core/words/named_repeats.h"

namespace lacewright {

Side sideBetween(const Chart& chart, int rowIndex) {
    const bool turned = chart.worked == Worked::Flat && chart.sideOf(rowIndex) == Side::Right;
    return turned ? Side::Wrong : Side::Right;
}

std::vector<ChartedStitch> chartedBetween(const Chart& chart, int rowIndex, const Size* size,
                                          const OpenTimes& open) {
    return workKeepingLooks(looksAbove(chart, looksOf(chart, rowIndex, size, open)),
                            sideBetween(chart, rowIndex));
}

bool provenBetween(const Chart& chart, int rowIndex, const std::vector<const Size*>& sizes,
                   const WrittenPattern& pattern, const WrittenRow& row) {
    if (row.side != sideBetween(chart, rowIndex)) return false;
    const auto same = [&](const Size* size, std::size_t index, const OpenTimes& open) {
        const auto charted = chartedBetween(chart, rowIndex, size, open);
        const std::vector<CountedRow> readings = countedReadings(row, index, 1);
        if (readings.empty()) return false;
        auto written = unrolledOver(pattern, row, index, readings.front(),
                                    static_cast<std::int64_t>(charted.size()));
        if (!written) return false;
        settlePresented(*written, row.side, looksOf(chart, rowIndex, size, open));
        return sameWork(charted, *written);
    };
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        if (!same(sizes[i], i, {})) return false;
    }
    if (!sizes.empty()) return true;
    // One stretch over the whole row is right for every number of repeats when it is for these.
    const std::vector<OpenTimes> tried = triedTimes(chart, rowIndex);
    return !tried.empty() && std::all_of(tried.begin(), tried.end(), [&](const OpenTimes& open) {
        return same(nullptr, 0, open);
    });
}

}  // namespace lacewright
