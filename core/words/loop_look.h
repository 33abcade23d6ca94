#pragma once

#include <vector>

#include "core/chart/chart.h"
#include "core/words/row_proof.h"
#include "core/words/unrolled_row.h"

// How loops look on the right side of the fabric, which is what "knit the knits and purl the
// purls" goes by.
namespace lacewright {

enum class LoopLook { Knit, Purl };

// Of the loops that a stitch makes.
LoopLook lookOf(const Stitch& stitch);

// Of every loop that a charted row leaves, from the right edge of the fabric. `open`: how often the
// repeats are worked without a size.
std::vector<LoopLook> looksOf(const Chart& chart, int rowIndex, const Size* size,
                              const OpenTimes& open);

// Of every loop after the row that the chart's rule for uncharted rows puts above one that leaves
// `below`. Requires: the rule is not None.
std::vector<LoopLook> looksAbove(const Chart& chart, std::vector<LoopLook> below);

// Which work keeps every loop's look, in the order it is worked on that side.
std::vector<ChartedStitch> workKeepingLooks(std::vector<LoopLook> looks, Side side);

// Names the stitches that are worked as they present themselves by what they then are. `below` is
// from the right edge; a loop beyond its end looks knitted, as those of a cast-on do.
void settlePresented(std::vector<UnrolledStitch>& row, Side side,
                     const std::vector<LoopLook>& below);

}  // namespace lacewright
