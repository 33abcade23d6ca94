#pragma once

#include <string>
#include <vector>

#include "core/chart/chart.h"
#include "core/words/written.h"

namespace lacewright {

// One stitch as a row works it, named by what it shows on the right side of the fabric.
struct RowStitch {
    // Of the built-in catalogue with these takes and makes, or else a name of its own.
    std::string id;
    int takes = 1;
    int makes = 1;
    bool own = false;       // the catalogue has no such stitch
    bool presents = false;  // worked as it presents itself: knit on knit, purl on purl
    bool moss = false;      // moss stitch, knit or purl as its place in the run says
    Place place;            // in the text

    bool operator==(const RowStitch&) const = default;
};

// What a term of the vocabulary does, before it is a stitch: "psso" makes -1.
struct TermWorked {
    std::string term;
    int takes = 1;
    int makes = 1;
    std::string rightId;  // as in Working
    std::string wrongId;
    Place place;
};

// Turns terms, in working order, into stitches seen from the right side. What passes over or puts
// back is joined with the stitches it concerns: "sl 1, k1, psso" becomes one stitch, the one of the
// catalogue whose wording it is when there is one. `ownNames` are the pattern's own stitches in
// lower case; they keep their name on both sides.
// Refuses what passes over a stitch that is not there, and numbers beyond a stitch's limits.
Result<std::vector<RowStitch>> rightSideStitches(std::vector<TermWorked> terms, Side side,
                                                 const std::vector<std::string>& ownNames);

// Several stitches worked into the same `takes` stitches: "(k1, yo, k1) in next st".
TermWorked intoOneStitch(const std::vector<TermWorked>& body, int takes, Side side,
                         const Place& place);

}  // namespace lacewright
