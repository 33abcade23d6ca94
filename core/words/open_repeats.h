#pragma once

#include "core/words/written.h"

namespace lacewright {

// The pattern with the repeats that each size works another number of times, "rep from * 5 (7, 9)
// more times", left to the loops there are, as "rep from * to end" is: so that the sizes can be
// told apart by one repeat box. What else a row leaves open is worked as often as the size does.
// A row that does not fit is left as it is. Requires: size < pattern.sizeCount().
WrittenPattern withOpenRepeats(const WrittenPattern& pattern, std::size_t size);

// A pattern of several sizes whose rows hold several repeats that sizes work another number of
// times: each has become a count that the pattern names, so that each can be a repeat box.
struct NamedRepeats {
    std::vector<WrittenPattern> patterns;  // by size: what else a row leaves open is worked as
                                           // often as that size does
    std::vector<std::vector<int>> times;   // of every count, by size
};
// Nothing when no row has several such repeats, when rows do not agree about them, or when a row
// does not fit.
std::optional<NamedRepeats> withNamedRepeats(const WrittenPattern& pattern);

}  // namespace lacewright
