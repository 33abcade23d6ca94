#pragma once

#include <cstdint>
#include <optional>

#include "core/words/written.h"

// What the words of a row say before it is held against the needle.
namespace lacewright {

inline constexpr std::int64_t kMostFollowed = 100'000;  // of a row that is followed

struct FixedLoops {
    std::int64_t takes = 0;
    std::int64_t makes = 0;
};

// Of elements without open stretches; nothing when there is one among them. `size` counts from 0.
std::optional<FixedLoops> fixedLoops(const Elements& elements, std::size_t size);

// Some of the words can be read in more than one way.
bool hasReadings(const Elements& elements);

// The words tell where a marker is slipped or taken away.
bool slipsMarkers(const Elements& elements);

}  // namespace lacewright
