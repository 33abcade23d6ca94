#include "core/words/row_proof.h"

#include <algorithm>

#include "core/words/named_repeats.h"

namespace lacewright {
namespace {

std::int64_t takesOf(const std::vector<ChartedStitch>& stitches) {
    std::int64_t takes = 0;
    for (const ChartedStitch& stitch : stitches) takes += stitch.takes;
    return takes;
}

}  // namespace

std::optional<std::vector<ChartedStitch>> chartedStitches(const Chart& chart, int rowIndex,
                                                          const Size* size, const OpenTimes& open,
                                                          StitchWords& words) {
    std::vector<ChartedStitch> all;
    const Side side = chart.sideOf(rowIndex);
    for (const WorkedStretch& stretch : workedStretches(chart, rowIndex, size)) {
        std::vector<ChartedStitch> once;
        for (std::size_t i = 0; i < stretch.stitches.size(); ++i) {
            const Stitch& stitch = (*chart.stitches)[stretch.stitches[i]];
            const std::vector<std::string>& keys = words[words.of(stretch.stitches[i], side)].keys;
            // Loops are told once where a stitch is several workings.
            for (std::size_t k = 0; k < keys.size(); ++k) {
                once.push_back({keys[k], k == 0 ? stitch.takes : 0, k == 0 ? stitch.makes : 0,
                                stretch.columns[i]});
            }
        }
        const int times = stretch.open ? open.of(stretch.repeat) : stretch.times;
        for (int i = 0; i < times; ++i) {
            if (all.size() + once.size() > kMostUnrolled) return {};
            all.insert(all.end(), once.begin(), once.end());
        }
    }
    return all;
}

bool sameWork(const std::vector<ChartedStitch>& charted,
              const std::vector<UnrolledStitch>& written) {
    return std::equal(
        charted.begin(), charted.end(), written.begin(), written.end(),
        [](const ChartedStitch& a, const UnrolledStitch& b) { return a.key == b.key; });
}

bool provenSame(const Chart& chart, int rowIndex, const std::vector<const Size*>& sizes,
                StitchWords& words, const WrittenPattern& pattern, const WrittenRow& row) {
    if (row.side != chart.sideOf(rowIndex)) return false;
    const auto same = [&](const Size* size, std::size_t index, const OpenTimes& open) {
        const auto charted = chartedStitches(chart, rowIndex, size, open, words);
        const std::vector<CountedRow> readings = countedReadings(row, index, 1);
        if (!charted || readings.empty()) return false;
        const auto written = unrolledOver(pattern, row, index, readings.front(), takesOf(*charted),
                                          namedTimes(chart, pattern, open));
        return written && sameWork(*charted, *written);
    };
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        if (!same(sizes[i], i, {})) return false;
    }
    if (!sizes.empty()) return true;
    const std::vector<OpenTimes> tried = triedTimes(chart, rowIndex);
    return !tried.empty() && std::all_of(tried.begin(), tried.end(), [&](const OpenTimes& open) {
        return same(nullptr, 0, open);
    });
}

}  // namespace lacewright
