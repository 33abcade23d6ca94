#pragma once

#include <optional>
#include <vector>

#include "core/words/reader.h"

namespace lacewright {

// Written rows drawn for comparing them with one another, not for looking at. Every row begins and
// ends its repeat in the same column, whatever it makes of its stitches, with its gaps at the far
// end; rows that work plainly whatever they find ("purl to end") are left out, so that a row is
// followed by the next one that has an opinion.
struct StraightChart {
    Chart chart;
    std::vector<std::size_t> written;  // by row index: the index in WrittenPattern::rows
};

// Nothing when the rows cannot be drawn. A fixed cast-on is taken as one of the multiples that the
// starred repeats suggest when more rows fit then, or as many.
// `room`: places of each part for stitches that rows may lack, in the widest row as well; where it
// is not given, one if some row does not fit.
std::optional<StraightChart> straightChart(const WrittenPattern& pattern, std::size_t size,
                                           std::optional<int> room = {});

// The cells of a row that hold a stitch, in working order: columns.
std::vector<int> workedColumns(const Chart& chart, int rowIndex, Side side);

}  // namespace lacewright
