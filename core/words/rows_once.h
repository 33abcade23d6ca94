#pragma once

#include <string>

#include "core/words/prove.h"

// Rows that the sizes repeat another number of times, "Rep rows 5-10 3 (4, 5) more times". Where
// they leave as many stitches as they found they are a row repeat of the chart, drawn once.
namespace lacewright {

struct RowsOnce {
    WrittenPattern pattern;  // without the sentence that repeats the rows
    RowRepeat repeat;        // the rows, as they are worked: index from 0
    std::string remark;      // one sentence for the person
};

// Nothing when no sentence repeats rows so, when several do, or when their count changes.
std::optional<RowsOnce> withRowsOnce(const WrittenPattern& pattern);

// The pattern as the chart shows it for that size: without the sentence that repeats what is the
// row repeat of the chart. Given back as it is when no sentence does.
WrittenPattern asChartRepeats(const WrittenPattern& pattern, const Chart& chart, std::size_t size);

}  // namespace lacewright
