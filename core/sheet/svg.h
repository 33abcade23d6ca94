#pragma once

#include <string>

#include "core/sheet/sheet.h"

namespace lacewright {

// A page of a sheet as SVG 1.1, in the subset that Qt 6.4, librsvg and browsers draw alike: paths,
// texts and class rules; no symbols, clips, patterns or nested pictures. Every (row, stitch) is one
// path, split before the 32,767 elements at which Qt cuts a path off.
//
// Made to be restyled: groups carry classes such as "row row-7 rs", glyph paths "stitch
// stitch-k2tog", everything else the name of its role (role.cpp).
// Requires: page < sheet.pages.size().
std::string svgText(const Sheet& sheet, std::size_t page = 0);

// The class of a stitch: letters, digits, - and _ of its id kept, everything else as its number.
std::string stitchClass(const std::string& id);

}  // namespace lacewright
