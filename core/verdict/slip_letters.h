#pragma once

#include <vector>

#include "core/words/written.h"

namespace lacewright {

// The stitches a text may be meant to work: those of its rows, and the usual ones of lace.
std::vector<Working> lettersOf(const WrittenPattern& pattern);

// However often, the same stitch.
bool sameWork(const Working& a, const Working& b);

}  // namespace lacewright
