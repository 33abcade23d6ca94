#pragma once

#include <cstddef>
#include <string_view>

namespace lacewright {

// How many letters must be changed, put in, left out or swapped with their neighbour to turn one
// word into the other; `limit` when it is that many or more.
std::size_t editDistance(std::string_view a, std::string_view b, std::size_t limit);

}  // namespace lacewright
