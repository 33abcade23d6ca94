#pragma once

#include "core/verdict/placed_row.h"

namespace lacewright {

// Log odds that a row is what it is because one half of it mirrors the other, against no such
// relation: lace is often drawn about a centred decrease, and its repeat or the whole row then
// reads the same from both sides. Leans change sides or, in books that know one decrease only,
// stay. 0 or less for a row that mirrors nowhere.
double mirrorOdds(const PlacedRow& row);

}  // namespace lacewright
