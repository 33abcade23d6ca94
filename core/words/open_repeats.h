#pragma once

#include <optional>
#include <vector>

#include "core/words/prove.h"

namespace lacewright {

// The pattern with the repeats that each size works another number of times, "rep from * 5 (7, 9)
// more times", or that the rows of a fixed count star, left to the loops there are, as "rep from *
// to end" is: so that the sizes can be told apart by one repeat box. What else a row leaves open is
// worked as often as the size does. A row that does not fit is left as it is. Requires: size <
// pattern.sizeCount().
WrittenPattern withOpenRepeats(const WrittenPattern& pattern, std::size_t size);

// The repeats of one row of several sizes.
struct CountedRepeats {
    // Those that sizes work another number of times, from the right edge, and how often each does.
    std::vector<std::size_t> elements;    // indices into WrittenRow::elements
    std::vector<std::vector<int>> times;  // by repeat and size
    std::vector<Elements> closed;         // the row as each size works it, without open stretches
};
// What counts as a repeat: what brackets and stars mark, or plain stitches too, "k8 (12, 10)".
enum class RepeatMarks { Marked, PlainToo };
// `bySize`: the proofs of the row. Nothing when it does not fit a size, or works an open stretch a
// number of times that is not fixed.
std::optional<CountedRepeats> countedRepeats(const WrittenRow& row,
                                             const std::vector<const WrittenRowProof*>& bySize,
                                             RepeatMarks marks = RepeatMarks::Marked);
// The row as the size works it, but with its repeats counted by name, from the right.
void nameAllRepeats(WrittenRow& row, const CountedRepeats& repeats, std::size_t size);

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
