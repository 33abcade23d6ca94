#pragma once

#include "core/words/prove.h"

namespace lacewright {

inline constexpr std::size_t kMostWorkedRows = kMaxRows;

// The pattern with its rows written out as they are worked one after the other: rows that a
// sentence repeats stand as often as they are worked, numbered from 1 in working order, and flat
// work is turned after every row. A pattern whose rows are not repeated so is given back as it is.
// No more than kMostWorkedRows rows are written out. `proof` is that of the pattern for a size.
WrittenPattern inWorkingOrder(const WrittenPattern& pattern, const WrittenProof& proof);

}  // namespace lacewright
