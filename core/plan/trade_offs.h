#pragma once

#include <string>
#include <vector>

#include "core/plan/planner.h"

// What a plan gave up, in words.
namespace lacewright {

// How a choice lies: "off centre by 1 column", "its edges part 2 pairs; mirrored".
std::string choiceWords(const EdgeChoice& choice);

// What was left for the choice that was taken, a clause each: "better centred: columns 2 to 19, 98
// stitches, difference +0.3 cm (0.1 in)". Empty when nothing was given up.
std::vector<std::string> tradeOffs(const PlannedSize& planned);

// "+0.3 cm (0.1 in)"
std::string differenceText(double cm);

}  // namespace lacewright
