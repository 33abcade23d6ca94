#pragma once

#include <optional>

#include "core/check/finding.h"
#include "core/verdict/straight_chart.h"

namespace lacewright {

// A mend of the straight chart in words of the written rows: "Row 3: put in yo as stitch 4 of the
// repeat". The cells redrawn are places of the rows as worked, from 1. Nothing when the mend no
// longer fits, or moves more stitches than a reader compares at a glance.
// Requires: straight = straightChart of the pattern.
std::optional<Mend> mendInWords(const WrittenPattern& pattern, const StraightChart& straight,
                                const Mend& mend);

}  // namespace lacewright
