#pragma once

#include <functional>
#include <optional>

#include "core/words/grouping.h"

namespace lacewright {

// Which numbers words take.
struct WordNumbers {
    std::function<bool(WordIndex)> countable;  // "k3"
    std::function<bool(WordIndex)> mayBeNone;  // "k0 (1, 2)" is read by every knitter
};

// The run in the words of `shape`: the same words and brackets in the same order, each as often as
// the run has it. Numbers within brackets stay; a word that stands once stays single; what may be
// left out stands 0 times. Of several ways the one that uses the first phrase most often. Nothing
// when the run is none of these.
std::optional<Phrases> fittedTo(const Phrases& shape, std::span<const WordIndex> run,
                                const WordNumbers& numbers);

}  // namespace lacewright
