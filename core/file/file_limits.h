#pragma once

#include <cstddef>

#include "core/chart/chart.h"
#include "core/stitch/stitch.h"

// Limits of a chart file beyond those of a chart (core/chart/chart.h). They bound what a hostile
// file can make the reader allocate; resources/chart.schema.json states them too.
namespace lacewright {

inline constexpr std::size_t kMaxFileBytes = 256U << 20U;
inline constexpr std::size_t kMaxNesting = 32;      // objects and lists within one another
inline constexpr std::size_t kMaxValues = 500'000;  // JSON values in one file
inline constexpr std::size_t kMaxMembers = 256;     // of one object
inline constexpr std::size_t kMaxRowText =
    300'000;                                     // characters of one row: every id at its longest
inline constexpr std::size_t kMaxStrokes = 200;  // pen movements of one glyph
inline constexpr int kMaxCount = kMaxNeedle;

}  // namespace lacewright
