#pragma once

#include <random>
#include <string>
#include <vector>

#include "core/chart/chart.h"

// Correct charts to test on: published patterns and patterns made up at random.
namespace lacewright::test {

// Rows from the bottom, each a text of stitch ids from the RIGHT edge as seen from the right side;
// "3*k" is three knit stitches. `edge` columns on either side of one repeat "A".
Chart motif(const std::string& name, int edge, const std::vector<std::string>& rows);

// Patterns from handbooks, each named with its source. All close: the last row fits below the
// first.
std::vector<Chart> handbookMotifs();

enum class Symmetry : std::uint8_t { None, Mirror, Diagonals, MirrorAndDiagonals, Translation };
const char* nameOf(Symmetry symmetry);
// Pattern rows with plain rows between, two edge stitches on either side of one repeat.
Chart randomMotif(Symmetry symmetry, std::mt19937& random);

}  // namespace lacewright::test
