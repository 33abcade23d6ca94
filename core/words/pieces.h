#pragma once

#include <vector>

#include "core/words/written.h"

namespace lacewright {

// The pieces of the work, each as a pattern of its own with the same row numbers; where there is
// one cast-on, the pattern itself.
std::vector<WrittenPattern> piecesOf(const WrittenPattern& pattern);

}  // namespace lacewright
