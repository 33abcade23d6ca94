#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace lacewright {

// How a number of loops is shared out among stretches that are each worked a whole number of times,
// 0 or more. `parts` are the loops of one time, each above 0, in any order; not empty.

// The largest number up to `loops` that can be shared out; nothing when loops < 0.
std::optional<std::int64_t> largestShared(const std::vector<std::int64_t>& parts,
                                          std::int64_t loops);
// The smallest number above `loops` that can be shared out. Requires: loops >= 0.
std::int64_t nextShared(const std::vector<std::int64_t>& parts, std::int64_t loops);
// From this number on, every multiple of what the parts have in common can be. A part of more than
// a million gives 10^12.
std::int64_t sharedFrom(const std::vector<std::int64_t>& parts);
// How often each part is worked where there is one way only; nothing when there is none, or are
// several, or `loops` are many.
std::optional<std::vector<std::int64_t>> onlyWay(const std::vector<std::int64_t>& parts,
                                                 std::int64_t loops);

}  // namespace lacewright
