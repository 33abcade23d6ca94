#include "core/words/loop_look.h"

#include <algorithm>

namespace lacewright {

namespace {

std::string keyFor(LoopLook look, Side side) {
    return workKey(look == LoopLook::Purl ? "p" : "k", side);
}

}  // namespace

LoopLook lookOf(const Stitch& stitch) {
    const std::string& id = stitch.id;
    const bool purl = id == "ptbl" || id == "p" || id.starts_with("p2") || id.starts_with("p3") ||
                      id.starts_with("ssp") || id == "sssp" || id == "pfb";
    return purl ? LoopLook::Purl : LoopLook::Knit;
}

std::vector<LoopLook> looksOf(const Chart& chart, int rowIndex, const Size* size,
                              const OpenTimes& open) {
    std::vector<LoopLook> looks;
    for (const WorkedStretch& stretch : workedStretches(chart, rowIndex, size)) {
        std::vector<LoopLook> once;
        for (const StitchIndex index : stretch.stitches) {
            const Stitch& stitch = (*chart.stitches)[index];
            once.insert(once.end(), static_cast<std::size_t>(stitch.makes), lookOf(stitch));
        }
        const int times = stretch.open ? open.of(stretch.repeat) : stretch.times;
        for (int i = 0; i < times && looks.size() + once.size() <= kMostUnrolled; ++i)
            looks.insert(looks.end(), once.begin(), once.end());
    }
    if (chart.sideOf(rowIndex) == Side::Wrong) std::reverse(looks.begin(), looks.end());
    return looks;
}

std::vector<LoopLook> looksAbove(const Chart& chart, std::vector<LoopLook> below) {
    if (chart.uncharted == Uncharted::AsTheyPresent) return below;
    // Purl worked from the wrong side looks knitted.
    const bool flat = chart.worked == Worked::Flat && chart.firstSide == Side::Right;
    const bool knit = (chart.uncharted == Uncharted::Knit) != flat;
    std::fill(below.begin(), below.end(), knit ? LoopLook::Knit : LoopLook::Purl);
    return below;
}

std::vector<ChartedStitch> workKeepingLooks(std::vector<LoopLook> looks, Side side) {
    if (side == Side::Wrong) std::reverse(looks.begin(), looks.end());
    std::vector<ChartedStitch> row;
    for (const LoopLook look : looks) row.push_back({keyFor(look, side), 1, 1, 0});
    return row;
}

void settlePresented(std::vector<UnrolledStitch>& row, Side side,
                     const std::vector<LoopLook>& below) {
    std::size_t next = 0;  // loop in working order
    for (UnrolledStitch& stitch : row) {
        if (stitch.presents) {
            const std::size_t at = side == Side::Right ? next : below.size() - 1 - next;
            stitch.key = keyFor(next < below.size() ? below[at] : LoopLook::Knit, side);
        }
        next += static_cast<std::size_t>(std::max(0, stitch.takes));
    }
}

}  // namespace lacewright
