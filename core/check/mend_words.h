#pragma once

#include <string>

#include "core/check/culprits.h"

// Repairs as a knitter reads them.
namespace lacewright {

// "a yarn over", "knit 2 together".
std::string stitchInWords(const Stitch& stitch);
// "row 5, column 7" (or round).
std::string placeInWords(const Chart& chart, int rowIndex, int column);
// "Draw a yarn over in row 5, column 7".
std::string labelOf(const Chart& chart, const Repair& repair);
// Why this cell and this stitch (not for another cast-on); empty when nothing but the count speaks
// for it. `beliefs` may be null.
std::string reasonFor(const Chart& chart, const Chart& mended, const Repair& repair,
                      const Beliefs* beliefs);
std::string reasonForCastOn(const Chart& chart);

}  // namespace lacewright
