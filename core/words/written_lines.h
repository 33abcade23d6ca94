#pragma once

#include <string>
#include <vector>

#include "core/words/writer.h"

// How the rows of a chart are called, and which of them share a line.
namespace lacewright {

std::string rowWord(const Chart& chart, bool several);   // "Row", "Rnds"
std::string sideText(const Chart& chart, Side side);     // " (RS)"; empty in the round
std::string rowLabel(const Chart& chart, int rowIndex);  // "Row 3 (RS)"

// Puts in the line for the rows between charted ones, where the chart has a rule for them.
void addUnchartedLine(const Chart& chart, std::vector<WrittenLine>& lines);

// Joins lines that say the same: "Row 2 and all WS rows", "Rows 5-8". Requires: a line for each row
// of the chart and no others.
void joinLines(const Chart& chart, std::vector<WrittenLine>& lines);

}  // namespace lacewright
