#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/words/row_phrases.h"

namespace lacewright {

// The lines before the rows: "Cast on: 41", "Worked: flat", the sizes, stitches of the chart's own,
// and which rows are repeated. `sizes` are those written; empty for the whole width.
std::vector<std::string> headingLines(const Chart& chart, const std::vector<const Size*>& sizes,
                                      const StitchWords& words);

// The text with every run of blanks and line breaks as one blank.
std::string oneLine(std::string_view text);

}  // namespace lacewright
