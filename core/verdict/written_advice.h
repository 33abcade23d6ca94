#pragma once

#include "core/check/check.h"
#include "core/words/reader.h"

namespace lacewright {

// Advises on the report about written rows as on that of a chart: suspects and mends of faulty
// rows, and findings of rule "symmetry" for rows that fit but look out of place. The column of a
// suspect is then its place among the stitches of the row as worked, repeats counted once, and
// mends are told in such places; of a mend's cells those are named that it puts in or works
// otherwise. A finding about some sizes is judged for the first of them, all else for the first
// size of `sizes`, counted from 0.
void adviseOnRows(const WrittenPattern& pattern, const std::vector<std::size_t>& sizes,
                  Report& report);

}  // namespace lacewright
