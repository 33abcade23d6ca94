#pragma once

#include "core/words/written.h"

namespace lacewright {

// "K to marker" does not say how far; where the markers were placed does. Follows the markers from
// row to row in every size and puts a number of times in place of each stretch that goes to a
// marker, as far as the counts are fixed: from a cast-on of a fixed number to the first row that
// does not fit or is worked again by a sentence. A marker that is not mentioned is slipped where it
// comes. What cannot be followed is left as it was.
void settleMarkers(WrittenPattern& pattern);

}  // namespace lacewright
