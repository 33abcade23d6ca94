#pragma once

#include <string>
#include <vector>

#include "core/chart/chart.h"

// How a size works the chart, in words.
namespace lacewright {

// Rows of the chart that one instruction holds for.
struct InstructedRows {
    int firstRow = 0;  // row index
    int lastRow = 0;   // inclusive
    bool operator==(const InstructedRows&) const = default;
};

struct SizeInstruction {
    std::vector<InstructedRows> rows;  // ascending
    // "begin at B, work to E, then work C to E 7 more times, end at F: 67 sts"
    std::string text;
    bool operator==(const SizeInstruction&) const = default;
};

// One instruction for all rows, or several where shaping or repeats differ from row to row.
// Columns and directions are those of a right-side row; the count is what the first of the rows
// takes. Places are told by the letter of their point, or as "column 7"; a repeat by the points at
// its edges, or by its name where it has no points or its edges jog. A repeat without times is
// worked once. Requires: a chart with rows.
std::vector<SizeInstruction> sizeInstructions(const Chart& chart, const Size& size);

// The same as sentences: "Size M: begin at ... : 67 sts.", "On rows 5-8 begin at ...".
std::vector<std::string> sizeInstructionSentences(const Chart& chart, const Size& size);

}  // namespace lacewright
