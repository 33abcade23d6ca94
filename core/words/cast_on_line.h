#pragma once

#include "core/words/pattern_heading.h"

// "Cast on 40 sts", "CO a multiple of 6 plus 2", "Cast on: 8 for each A plus 12 for each B plus 5".
namespace lacewright {

// True when the line is one of these and was taken over, with or without errors; nothing is passed
// otherwise.
bool parseCastOn(TokenCursor& at, HeadingTarget& target);

// A name for how often a repeat is worked: one or two capital letters.
bool isCountName(const Token& token, const HeadingTarget& target);
// The index of the count with this name, a new one if need be. Requires: isCountName.
std::size_t countNamed(const Token& name, HeadingTarget& target);

}  // namespace lacewright
