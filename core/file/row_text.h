#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/file/json_value.h"
#include "core/file/row_scanner.h"
#include "core/file/stitch_table.h"

// The text of one row: stitch ids as drawn, left to right, separated by blanks; `id*N` stands for a
// run of N. A wide stitch's id stands once and fills all its cells. Two forms write down rows that
// an edit left broken: `*id` is a wide stitch's own cell without the cells it should cover, and a
// lone
// `*` (a run: `**N`) a covered cell that no stitch owns.
namespace lacewright {

// What every row of a chart must fill, and why: "the width of the chart".
struct RowWidth {
    int columns = 1;
    std::string_view expected;
};

// Reads the rows of one chart. Unknown ids join the table. Throws Refusal on behalf of `row`.
class RowReader {
 public:
    // Keeps the table.
    explicit RowReader(StitchTable& table) : table_(table) {}

    // The columns of a row text, at most kMaxWidth + 1.
    int columns(std::string_view text, const JsonValue& row);
    // The cells, column 1 first. `number` is the row's number as the knitter reads it.
    std::vector<StitchIndex> cells(std::string_view text, const RowWidth& width, int number,
                                   const JsonValue& row);

 private:
    std::string aboutUnknown(std::string_view text, const JsonValue& row);
    [[noreturn]] void refuseWidth(std::string_view text, const RowWidth& width, int number,
                                  const JsonValue& row);

    StitchTable& table_;
    RunMemo memo_;
    std::vector<StitchIndex> cells_;  // of the row being read
};

// Requires: every index belongs to `stitches`.
std::string writeRow(const std::vector<StitchIndex>& cells, const StitchCatalogue& stitches);

}  // namespace lacewright
