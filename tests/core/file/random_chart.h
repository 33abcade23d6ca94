#pragma once

#include <random>

#include "core/chart/chart.h"

namespace lacewright {

// A chart within the limits with every member set now and then: sizes, jogs, own and unknown
// stitches, wide stitches whole and broken, unknown members at every level.
Chart randomChart(std::mt19937& random);

}  // namespace lacewright
