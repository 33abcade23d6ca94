#pragma once

#include <optional>

#include "core/words/box_rows.h"
#include "core/words/worked_row.h"

namespace lacewright {

// All rows of a pattern cut at one repeat box.
struct CutRows {
    std::vector<BoxRow> rows;  // in working order of the rows
    bool box = false;          // some row has one
    // The proof's n is the chart's n and so many more: rows whose repeat is worked n - 1 times need
    // it.
    std::int64_t shift = 0;
};

// Cuts the rows of a proven pattern. Every row may hold one part whose times depend on n; further
// counts, such as those of a row that does not fit, are given the value that comes nearest to the
// loops there are, so that the fault stays visible. Nothing when a row has several parts that
// depend on n, or one that shrinks as n grows.
// Requires: `proof` is that of the pattern for the size.
Result<std::optional<CutRows>> cutRows(const WrittenPattern& pattern, const WrittenProof& proof,
                                       std::size_t size);

}  // namespace lacewright
