#pragma once

#include <string>

#include "core/chart/chart.h"

namespace lacewright {

// "29 stitches", "a multiple of 6 plus 5", "a multiple of 6 minus 1": what is cast on, for people.
std::string castOnText(const CastOn& castOn);

}  // namespace lacewright
