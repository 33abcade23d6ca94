#pragma once

#include <vector>

#include "core/stitch/catalogue.h"
#include "core/words/written.h"

namespace lacewright {

// The stitches a text may be meant to work: those of its rows, and the usual ones of lace.
std::vector<Working> lettersOf(const WrittenPattern& pattern);

// However often, the same stitch.
bool sameWork(const Working& a, const Working& b);

// The usual one of the stitches that decrease as many loops to one with the same lean: ssk for skp.
// A row mirrors all the same with either. `centred`: double decreases of either lean are all one.
StitchIndex usualStitch(const StitchCatalogue& stitches, StitchIndex index, bool centred);

}  // namespace lacewright
