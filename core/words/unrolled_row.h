#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/words/row_forms.h"
#include "core/words/written.h"

namespace lacewright {

// One stitch of a row, under a name that is the same for all words of the same work.
struct UnrolledStitch {
    std::string key;  // see workKey; a name of its own for what is no stitch of the catalogue
    int takes = 1;
    int makes = 1;
    Place place;            // of its word
    bool presents = false;  // worked as it presents itself; the key says knit
};

// What working the stitch `id` on that side is called when names that mean the same work there are
// taken as one: the id of the first stitch of the built-in catalogue whose wording on that side is
// the same ("skp" and "ssk" are both ssp on a wrong-side row). An unknown id is its own name.
std::string workKey(const std::string& id, Side side);

inline constexpr std::size_t kMostUnrolled = 1'000'000;  // stitches of one row

using OpenCounts = std::map<Variable, std::int64_t>;

// The row as counted, written out stitch by stitch for one size, each open stretch worked as often
// as `counts` says. A double yarn over is two yarn overs. Nothing when a count is missing or
// negative, or the row is too long.
std::optional<std::vector<UnrolledStitch>> unrolledRow(const WrittenPattern& pattern,
                                                       const WrittenRow& row, std::size_t size,
                                                       const CountedRow& counted,
                                                       const OpenCounts& counts);

// The same with the row's open counts, but for those that `named` gives, chosen so that the row
// takes `loops`. Nothing when no whole numbers do, or several would.
std::optional<std::vector<UnrolledStitch>> unrolledOver(const WrittenPattern& pattern,
                                                        const WrittenRow& row, std::size_t size,
                                                        const CountedRow& counted,
                                                        std::int64_t loops,
                                                        const OpenCounts& named = {});

}  // namespace lacewright
