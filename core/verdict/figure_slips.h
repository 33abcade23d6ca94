#pragma once

#include <string>
#include <vector>

#include "core/words/written.h"

namespace lacewright {

// Numbers that may have been meant by this one: a few more or fewer or, in a list of sizes, another
// number for this size alone. No number is below 0. `leastOff`: by how much one number for all
// sizes differs at least.
std::vector<Figure> figuresNear(const Figure& figure, std::size_t size, int leastOff = 1);

// Log odds that the one was meant where the other was written, before the rows are counted.
double figureOdds(const Figure& meant, const Figure& written);

// "28 (32, 36)"
std::string figureInWords(const Figure& figure);

}  // namespace lacewright
