#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/file/stitch_table.h"

// The text of one row: stitch ids as drawn, left to right, separated by blanks; `id*N` stands for a
// run of N. A wide stitch's id stands once and fills all its cells. Two forms write down rows that
// an edit left broken: `*id` is a wide stitch's own cell without the cells it should cover, and a
// lone
// `*` (a run: `**N`) a covered cell that no stitch owns.
namespace lacewright {

struct JsonValue;

// The columns of a row text, saturating at kMaxWidth + 1. Unknown ids join the table.
// Throws Refusal on behalf of `row` when a token cannot be read; so does readRow.
int columnsOfRow(std::string_view text, StitchTable& table, const JsonValue& row);

// The cells, column 1 first. `expected` names the chart's width in a refusal: "the width of the
// chart". `number` is the row's number as the knitter reads it.
struct RowWidth {
    int columns = 1;
    std::string_view expected;
};
std::vector<StitchIndex> readRow(std::string_view text, const RowWidth& width, int number,
                                 StitchTable& table, const JsonValue& row);

// The index of an id that stands alone, joining the table when it is unknown.
StitchIndex readStitchId(const JsonValue& value, StitchTable& table);

// Requires: every index belongs to `stitches`.
std::string writeRow(const std::vector<StitchIndex>& cells, const StitchCatalogue& stitches);

}  // namespace lacewright
