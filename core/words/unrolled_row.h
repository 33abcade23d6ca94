#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/words/row_forms.h"
#include "core/words/written.h"

namespace lacewright {

// One working of a row, as the words name it.
struct UnrolledStitch {
    std::string key;  // see workKey; for words that are no stitch of the catalogue, their spelling
    int takes = 1;
    int makes = 1;
    Place place;  // of its word
};

// What working the stitch `id` on that side is called when names that mean the same work there are
// taken as one: the id of the first stitch of the built-in catalogue whose wording on that side is
// the same ("skp" and "ssk" are both ssp on a wrong-side row). An unknown id is its own name.
std::string workKey(const std::string& id, Side side);

inline constexpr std::size_t kMostUnrolled = 1'000'000;  // stitches of one row

// The row as counted, written out stitch by stitch for one size. `values` gives the row's own
// counts. A double yarn over is two yarn overs. Nothing when the row is longer than kMostUnrolled
// or a count is negative.
std::optional<std::vector<UnrolledStitch>> unrolledRow(const WrittenRow& row, std::size_t size,
                                                       const CountedRow& counted,
                                                       const AffineForm::Assignment& values);

// The same with the row's one open count chosen so that the row takes `loops`. Nothing when no
// whole number does, or several counts are open.
std::optional<std::vector<UnrolledStitch>> unrolledOver(const WrittenRow& row, std::size_t size,
                                                        const CountedRow& counted,
                                                        std::int64_t loops);

}  // namespace lacewright
