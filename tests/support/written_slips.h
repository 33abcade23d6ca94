#pragma once

#include <optional>
#include <random>
#include <string>
#include <vector>

#include "tests/support/mutations.h"

// Written rows with errors put in on purpose.
namespace lacewright::test {

struct SlippedText {
    std::string text;
    int row = 0;  // number of the row that was hit
};

// Rows of a text in which a slip can be made, each a line of its own: "Row 3 (RS): k2, yo".
std::vector<int> rowsToHit(const std::string& text);

// One stitch of the row worked otherwise, left out or written twice. Half of the slips hit
// figures, half hit any stitch. Nothing when the row has no stitch to hit.
std::optional<SlippedText> slipped(const std::string& text, Slip slip, int row,
                                   std::mt19937& random);

}  // namespace lacewright::test
