#pragma once

#include <vector>

#include "core/chart/chart.h"
#include "core/count/affine_form.h"

namespace lacewright {

// Cast-ons of the kind of `drawn` that a first row uses up, the nearest first: of a fixed count the
// next above and below, of a multiple the one that every number of repeats has. Empty where none
// can be told. `takes`: what the row takes, by its repeats.
std::vector<CastOn> castOnsFor(const CastOn& drawn, const AffineForm& takes);

}  // namespace lacewright
