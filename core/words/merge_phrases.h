#pragma once

#include <functional>

#include "core/words/grouping.h"

namespace lacewright {

// One list of phrases for several sizes: where the lists differ only in numbers the numbers are
// listed, "k3 (0, 5)"; other parts stand in brackets that a size works once or not at all,
// "[k2, yo] 1 (0, 0) times". Requires: not empty; each list is for one size.
//
// `countsNone`: words that may be worked 0 times, as "k0 (1, 2)" is read by every knitter.
Phrases mergedPhrases(const std::vector<Phrases>& bySize,
                      const std::function<bool(WordIndex)>& countsNone);

}  // namespace lacewright
