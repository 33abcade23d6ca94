#pragma once

#include <optional>
#include <vector>

namespace lacewright {

// The orphan of a line or circle that has one unit too many or too few, found without its pairs:
// the same unit as in companions.h, in one look at the columns for every cut that may be best.
//
// `heights`: what the columns from the first on make less what they take, for each of them (F of
// companions.h); the last one is 1 or -1, and no column may lack companions (allHaveCompanions).
// Gives an index into `heights`; nothing where a circle is too uneven for that to be quick.
int loneOrphanOnLine(const std::vector<int>& heights);
std::optional<int> loneOrphanOnRing(const std::vector<int>& heights);

}  // namespace lacewright
