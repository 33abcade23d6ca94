#pragma once

#include "core/words/shape_fit.h"

namespace lacewright {

// One list of phrases for several sizes: where the lists differ only in numbers, or can be told in
// the words of one of them, the numbers are listed, "k3 (0, 5)"; other parts stand in brackets that
// a size works once or not at all,
// "[k2, yo] 1 (0, 0) times". Requires: not empty; each list is for one size.
Phrases mergedPhrases(const std::vector<Phrases>& bySize, const WordNumbers& numbers);

}  // namespace lacewright
