#pragma once

#include <map>
#include <optional>
#include <string>

#include "core/words/box_rows.h"
#include "core/words/worked_row.h"

namespace lacewright {

// All rows of a pattern cut at its repeat boxes: one, or one for each count that the pattern names.
struct CutRows {
    std::vector<BoxRow> rows;  // in working order of the rows
    // The count of each box, from the right; kBoxCount where the pattern names none.
    std::vector<Variable> counts;
    // A count of the proof is the chart's and so many more: rows whose repeat is worked n - 1 times
    // need it. Absent: none more.
    std::map<Variable, std::int64_t> shift;

    std::int64_t shiftOf(Variable count) const {
        const auto found = shift.find(count);
        return found == shift.end() ? 0 : found->second;
    }
};

inline constexpr Variable kBoxCount = -1;  // n of the chart, in place of all other counts

// Cuts the rows of a proven pattern. Every row may hold one part for each box; a part that spans
// several, "purl", is cut where the boxes of a neighbouring row stand. Further counts, such as
// those of a row that does not fit, are given the value that comes nearest to the loops there are,
// so that the fault stays visible. Nothing when a row has several parts for one box, or in another
// order than other rows, or one that shrinks as a count grows. Requires: `proof` is that of the
// pattern for the size.
Result<std::optional<CutRows>> cutRows(const WrittenPattern& pattern, const WrittenProof& proof,
                                       std::size_t size);

}  // namespace lacewright
