#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/words/compare.h"
#include "core/words/loop_look.h"
#include "core/words/prove.h"

// One row of a chart held against the same row of a text.
namespace lacewright {

// What the chart works and how far the text agrees.
struct HeldRow {
    RowContrast contrast = RowContrast::Stitches;
    bool same = true;
    std::vector<ChartedStitch> charted;
    std::vector<UnrolledStitch> written;
};

// A text as it is held against a chart, for one of its sizes. `row` is always of `pattern`.
struct HeldText {
    const WrittenPattern& pattern;
    const WrittenProof& proof;  // of the pattern for that size
    std::size_t size = 0;
};

// `charted` in the reading that the proof took, or in any other that is the same. `below`: the
// loops on the needle; `named`: values of the counts that the text names.
HeldRow heldAgainst(const HeldText& text, const WrittenRow& row, std::vector<ChartedStitch> charted,
                    const std::vector<LoopLook>& below, const OpenCounts& named);

// Both side by side, aligned, as worded on that side.
std::vector<ContrastedStitch> contrasted(const HeldRow& held, Side side);

}  // namespace lacewright
