#pragma once

#include "core/check/finding.h"
#include "core/verdict/placed_row.h"
#include "core/verdict/row_slips.h"

namespace lacewright {

// A slip that explains why written rows fail.
struct Explanation {
    // In the stitches of a row, in the cast-on, in the count that a row or rows worked again are
    // said to leave, or in how often rows are worked again.
    enum class In : std::uint8_t { Stitches, CastOn, Stated, StatedAgain, Again };
    In in = In::Stitches;
    // Index into rows, the first one for the cast-on; or into WrittenPattern::again.
    std::size_t row = 0;
    SlipUndone::Kind kind = SlipUndone::Kind::Reworked;
    // Indices of stitches of the row as written or, of those put in, as meant; several where the
    // slip is in brackets that are worked several times. None for a slip that is in no stitch.
    std::vector<std::size_t> places;
    Elements elements;                    // of the row as meant
    std::optional<WrittenCastOn> castOn;  // of In::CastOn: as meant
    std::optional<std::size_t> piece;     // and of which piece behind the first one
    PlacedRow meant;
    // Of Rest, Count, Brackets and Stated: the number meant, and that written.
    Figure figure;
    Figure written;
    Landmark to = Landmark::None;
    std::string term;                // of Count: what is counted
    std::optional<double> evidence;  // how well the row agrees with the others, where it is drawn
    bool whole = false;              // nothing else is wrong then, in this size
    double logOdds = 0;
};

// The first stitch behind the repeat or, without one, the last stitch.
std::size_t placeOfRest(const PlacedRow& meant);

// The row as it was written, where one can tell it only from what it lacks: without the stitches
// that were not there before.
PlacedRow withoutNew(const PlacedRow& meant);
// Where the stitches stand that were not there before, and those of `written` that have gone.
std::vector<std::size_t> placesOfNew(const PlacedRow& meant);
std::vector<std::size_t> placesLeftOut(const PlacedRow& written, const PlacedRow& meant);

// The mend in words of the row, "Row 3: put in yo as stitch 4 of the repeat". `written`: the row as
// written, if it can be counted. Requires: the slip is in the stitches of the row.
Mend mendOf(const WrittenRow& row, const std::optional<PlacedRow>& written,
            const Explanation& explanation);

}  // namespace lacewright
