#pragma once

#include <string>
#include <string_view>
#include <vector>

// Room that text needs, known without any font: the layout must come out the same on every machine.
namespace lacewright {

// Width as a share of the font size. Taken from DejaVu Sans, one of the widest sans-serif fonts, so
// that others fit as well; letters outside ASCII are taken as wide ones.
double textWidth(std::string_view text, bool bold = false);

// Lines no wider than `width` (in font sizes), broken at blanks; a longer word is broken anywhere.
// Blank text gives no line.
std::vector<std::string> wrapped(std::string_view text, double width, bool bold = false);

}  // namespace lacewright
