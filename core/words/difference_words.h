#pragma once

#include <string>

#include "core/words/compare.h"

// Comparisons in words.
namespace lacewright {

// "Row 5 (M): stitch 7: the chart has yo (column 4), the text k (line 6, character 12)"; `row` is
// what rows are called, "Row" or "Rnd".
std::string differenceSentence(const RowDifference& difference, const std::string& row);

// Both sides have stitches to be shown beside one another.
bool areAligned(const RowDifference& difference);

// One of RowDifference::changes: "in the text write yo for k (line 6, character 12), or draw k in
// column 4".
std::string changeSentence(const ContrastedStitch& stitch);

// For what a comparison without differences is a proof: "every size", "size M", "any number of
// repeats", "every row".
std::string provenFor(const Chart& chart, const std::string& size);

}  // namespace lacewright
