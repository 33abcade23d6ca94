#pragma once

#include <string>
#include <vector>

#include "core/words/row_phrases.h"
#include "core/words/unrolled_row.h"

// Repeats whose times no size says. Where a row has one, its text works it to the end; where it has
// several, or one that takes no stitches, the text calls each by a name: "[yo, k2tog] A times".
namespace lacewright {

inline constexpr std::size_t kMostNamedRepeats = 6;  // on one row

// Indices of the repeats on the row that are worked so, from the right edge.
std::vector<int> openRepeats(const Chart& chart, int rowIndex);
// Whether the text of the whole width has to name them.
bool namesRepeats(const Chart& chart, int rowIndex);
// Why the whole width cannot be told, when a row has more than kMostNamedRepeats of them.
std::optional<Error> tooManyOpenRepeats(const Chart& chart);
// What texts call each repeat of the chart, by index: by its own name where all names are single
// letters and differ, else "A", "B".
std::vector<std::string> repeatNames(const Chart& chart);
// "Repeats: A, B (each any number of times, the same on every row)"; empty where no row names them.
std::string repeatsLine(const Chart& chart);

// Numbers of times to hold the row and its text against each other for; row_proof.h says why these
// prove it for all. Empty when there are more than kMostNamedRepeats repeats on the row.
std::vector<OpenTimes> triedTimes(const Chart& chart, int rowIndex);

// The same numbers for the counts that the text names, which are the chart's by name or else by
// order.
OpenCounts namedTimes(const Chart& chart, const WrittenPattern& pattern, const OpenTimes& open);

}  // namespace lacewright
