#pragma once

#include <cstdint>
#include <vector>

#include "core/words/prove.h"
#include "core/words/right_side_stitch.h"

// A written row as the stitches that it works, in the reading that the proof took. Stretches such
// as "k to end" or "p to last 2 sts" are worked as often as the proof found: a number, or a form in
// the proof's free counts.
namespace lacewright {

// A run of stitches worked some number of times.
struct RowPart {
    std::vector<RowStitch> stitches;  // in working order; never empty
    AffineForm times{1};
    bool starred = false;  // a repeat of the pattern: "*..; rep from *"
    Place place;

    std::int64_t takes() const;  // each time
    std::int64_t makes() const;
    bool operator==(const RowPart&) const = default;
};

struct WorkedRow {
    int number = 1;
    Side side = Side::Right;
    std::vector<RowPart> parts;  // in working order; neighbours that are worked once are one part
};

inline constexpr std::size_t kMostRowStitches = 16'000;  // written out, of one row

// `proof` is that of `row` for the size, taken from proveWritten of the pattern. A row that does
// not fit is worked as written: the counts of its own that the proof could not solve stay free.
// Refuses a row that cannot be counted, one that is too long to write out, and one whose rib has no
// whole number of passes.
Result<WorkedRow> workedRow(const WrittenPattern& pattern, const WrittenRow& row,
                            const WrittenRowProof& proof, std::size_t size = 0);

// The stitches of the whole row in working order, for these values of the free counts. A part is
// left out where its times would be negative.
std::vector<RowStitch> unrolled(const WorkedRow& row, const AffineForm::Assignment& values);

}  // namespace lacewright
