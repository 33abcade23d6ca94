#pragma once

#include <vector>

#include "core/check/alphabet.h"

namespace lacewright {

// A stitch of a row as a mirror sees it.
struct MirrorStitch {
    int name = 0;    // the same for the same stitch
    int mirror = 0;  // the name of its mirror image
    bool figure = false;
    bool centred = false;  // a double decrease
    bool operator==(const MirrorStitch&) const = default;
};
MirrorStitch mirrorStitch(const StitchCatalogue& stitches, StitchIndex index);

// Log odds that stitches of a row are what they are because one half mirrors the other, against no
// such relation: lace is often drawn about a centred decrease, and its repeat or the whole row then
// reads the same from both sides. Leans change sides or, in books that know one decrease only,
// stay. 0 or less for stitches that mirror nowhere. `ring`: those of a repeat, whose ends meet.
double mirrorOdds(const std::vector<MirrorStitch>& stitches, bool ring);

// The same of the cells of one chart row: the sum over its repeats or, where it has none, of the
// whole row.
class RowMirror {
 public:
    // Requires: groups = groupsOf the row's path, and as many cells as groups from here on.
    // The alphabet says which stitch of the chart mirrors which.
    RowMirror(const StitchCatalogue& stitches, const Alphabet& alphabet,
              const std::vector<int>& groups);

    double odds(const std::vector<StitchIndex>& cells) const;

 private:
    const std::vector<int>& groups_;
    int groupCount_ = 0;
    std::vector<MirrorStitch> stitches_;  // by index
    std::vector<bool> takesPart_;         // by index
};

}  // namespace lacewright
