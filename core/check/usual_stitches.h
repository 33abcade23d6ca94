#pragma once

#include <string_view>

namespace lacewright {

// How usual a stitch is in lace, to judge a small chart by: in how many of 28 handbook patterns it
// occurs. Counted over every second pattern of tests/data/handbook (1843 to 1918) and the samples;
// slip, knit, pass over and slip, slip, knit, which are one stitch in two fashions, count as one.
double usualness(std::string_view id);

}  // namespace lacewright
