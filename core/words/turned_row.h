#pragma once

#include "core/words/row_forms.h"

// Rows that turn before they have come to the end of the needle: short rows. What a row leaves
// unworked waits on the right needle while the next row, worked the other way, goes over what was
// just made; the row after that comes to it again.
namespace lacewright {

// The row turns before its end, or leaves stitches on a holder.
bool turnsSomewhere(const WrittenRow& row);

// The readings of a row as it is worked over `needle`, of whose loops `waiting` are out of its
// reach. Stitches that it does not come to stand on both sides of its forms.
std::vector<CountedRow> readingsOver(const WrittenRow& row, std::size_t size,
                                     Variable firstVariable, const Needle& needle,
                                     const AffineForm& waiting, Worked worked);

}  // namespace lacewright
