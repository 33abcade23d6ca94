#include <algorithm>

#include "core/count/path.h"
#include "core/words/row_phrases.h"

namespace lacewright {
namespace {

// Columns first..last in right-side order, with the cells that are worked differently.
struct Pass {
    int first = 1;
    int last = 1;
    int times = 1;
    int repeat = -1;
    bool open = false;
    std::vector<std::pair<int, StitchIndex>> instead = {};  // by column

    bool covers(int column) const { return times > 0 && first <= column && column <= last; }
};

std::vector<Pass> passesOf(const Chart& chart, int rowIndex, const Size* size, bool withUnworked) {
    std::vector<Pass> passes;
    for (const Segment& segment : pathOn(chart, rowIndex, size)) {
        Pass pass{segment.first, segment.last};
        if (segment.isBox()) {
            pass.repeat = segment.repeat;
            pass.open = size == nullptr;
            if (size != nullptr) {
                const auto found =
                    size->times.find(chart.repeats[static_cast<std::size_t>(segment.repeat)].name);
                pass.times = found == size->times.end() ? 1 : found->second;
            }
        }
        if (pass.times > 0 || withUnworked) passes.push_back(std::move(pass));
    }
    return passes;
}

// Works one cell of the pass nearest the edge differently, parted from the other times.
void substitute(std::vector<Pass>& passes, const Substitution& change, StitchIndex stitch) {
    const auto covers = [&](const Pass& pass) { return pass.covers(change.column); };
    auto at = change.edge == Edge::Start ? std::find_if(passes.begin(), passes.end(), covers)
                                         : passes.end();
    if (change.edge == Edge::End) {
        const auto back = std::find_if(passes.rbegin(), passes.rend(), covers);
        if (back == passes.rend()) return;
        at = back.base() - 1;
    }
    if (at == passes.end()) return;
    if (at->times > 1) {
        Pass single = *at;
        single.times = 1;
        --at->times;
        at = passes.insert(change.edge == Edge::Start ? at : at + 1, std::move(single));
    }
    at->repeat = -1;
    at->instead.emplace_back(change.column, stitch);
}

// A substitute takes as many cells as the stitch it replaces; others are not worked.
bool fits(const Chart& chart, const Substitution& change, StitchIndex stitch) {
    if (change.column < 1 || change.column > chart.width) return false;
    const StitchIndex drawn = chart.row(change.row).at(change.column);
    return drawn != kCovered && chart.stitches->spans()[drawn] == chart.stitches->spans()[stitch];
}

}  // namespace

std::vector<WorkedStretch> workedStretches(const Chart& chart, int rowIndex, const Size* size,
                                           bool withUnworked) {
    std::vector<Pass> passes = passesOf(chart, rowIndex, size, withUnworked);
    if (size != nullptr) {
        for (const Substitution& change : size->substitutions) {
            const auto stitch = chart.stitches->find(change.stitch);
            if (change.row == rowIndex && stitch && fits(chart, change, *stitch))
                substitute(passes, change, *stitch);
        }
    }
    const Row& row = chart.row(rowIndex);
    std::vector<WorkedStretch> stretches;
    for (const Pass& pass : passes) {
        WorkedStretch stretch;
        stretch.times = pass.times;
        stretch.repeat = pass.repeat;
        stretch.open = pass.open;
        for (int column = pass.first; column <= pass.last; ++column) {
            StitchIndex stitch = row.at(column);
            for (const auto& [where, other] : pass.instead) {
                if (where == column) stitch = other;
            }
            if (stitch == kCovered || (*chart.stitches)[stitch].kind == StitchKind::NoStitch)
                continue;
            stretch.stitches.push_back(stitch);
            stretch.columns.push_back(column);
        }
        stretches.push_back(std::move(stretch));
    }
    if (chart.sideOf(rowIndex) == Side::Wrong) {
        std::reverse(stretches.begin(), stretches.end());
        for (WorkedStretch& stretch : stretches) {
            std::reverse(stretch.stitches.begin(), stretch.stitches.end());
            std::reverse(stretch.columns.begin(), stretch.columns.end());
        }
    }
    return stretches;
}

}  // namespace lacewright
