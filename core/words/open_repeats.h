#pragma once

#include "core/words/written.h"

namespace lacewright {

// The pattern with the repeats that each size works another number of times, "rep from * 5 (7, 9)
// more times", left to the loops there are, as "rep from * to end" is: so that the sizes can be
// told apart by one repeat box. What else a row leaves open is worked as often as the size does.
// A row that does not fit is left as it is. Requires: size < pattern.sizeCount().
WrittenPattern withOpenRepeats(const WrittenPattern& pattern, std::size_t size);

}  // namespace lacewright
