#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/words/worked_row.h"

namespace lacewright {

// The stitches of a written row in working order, what repeats once. Their places, from 1, are the
// columns of suspects and mends in reports about written rows.
struct PlacedRow {
    struct Part {
        std::size_t first = 0;  // index of its first stitch
        std::size_t length = 0;
        bool repeats = false;  // a starred repeat, or one that the pattern counts by name
        std::string name;      // of such a count; else empty
    };
    std::vector<RowStitch> stitches;
    std::vector<Part> parts;  // neighbours that are worked once are one part

    // The places of the stitches of the row where its one repeat is worked so often that it has
    // `length` stitches, as indices into `stitches`. Nothing when no number of times gives that.
    std::optional<std::vector<std::size_t>> unfolded(std::size_t length) const;
    // "stitch 3 of the repeat", "stitch 1 before the repeat", "stitch 4 of repeat B".
    std::string placeInWords(std::size_t index) const;
    std::vector<std::string> ids() const;
};

// Nothing for a row that workedRow refuses. `proof` is that of the whole pattern for the size.
std::optional<PlacedRow> placedRow(const WrittenPattern& pattern, std::size_t row,
                                   const WrittenProof& proof, std::size_t size);

}  // namespace lacewright
