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

// The same of the counts that a row is said to leave.
double statedOdds(const Figure& meant, const Figure& written);

// The same of two cast-ons, other stitches for each of a pattern's named counts left aside.
std::vector<WrittenCastOn> castOnsNear(const WrittenCastOn& castOn, std::size_t size);
double castOnOdds(const WrittenCastOn& meant, const WrittenCastOn& written);

// "Cast on 48 (56, 64) sts instead of 48 (54, 64)"
std::string castOnMend(const WrittenCastOn& meant, const WrittenCastOn& written);

}  // namespace lacewright
