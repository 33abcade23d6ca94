#pragma once

#include <string>
#include <vector>

#include "core/sheet/drawing.h"

namespace lacewright {

inline constexpr double kTitleShare = 1.9;  // size of the title in sizes of running text

// The chart on sheets of paper, the first one at the lower right where knitting begins, then to the
// left and upward; the text follows under the last piece of the chart and on sheets of its own.
// Chooses the orientation and may shrink the cells a little (`drawing.unitMm`) when that saves
// paper.
std::vector<Page> printedPages(Drawing& drawing, const std::string& title);

ItemGroup paperGroup(const Page& page);
// Requires: `at` is the upper left corner.
ItemGroup titleGroup(const Drawing& drawing, Spot at, const std::string& title);

}  // namespace lacewright
