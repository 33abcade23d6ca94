#include "core/file/row_text.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/chart/chart.h"
#include "core/file/refusal.h"
#include "core/file/stitch_id.h"

namespace lacewright {
namespace {

// Cells that a short run may overwrite before its own: they belong to the runs that follow, or to
// the margin below column 1.
constexpr int kMargin = 16;

// Fills the cells of a run; `end` is one beyond its leftmost cell.
void fill(StitchIndex* end, const Run& run) {
    const int columns = run.columns;
    if (run.span == 1) {
        // Runs are mostly short; a fixed number of cells is one store.
        if (columns <= kMargin) {
            std::fill_n(end - kMargin, kMargin, run.stitch);
        } else {
            std::fill_n(end - columns, columns, run.stitch);
        }
        return;
    }
    std::fill_n(end - columns, columns, kCovered);
    for (StitchIndex* cell = end - columns; cell != end; cell += run.span) *cell = run.stitch;
}

// A run to be written.
struct Written {
    StitchIndex stitch;
    bool loose;
    int count;
};

bool ownsItsCells(const std::vector<StitchIndex>& cells, std::size_t at, std::size_t span) {
    if (at + span > cells.size()) return false;
    const auto first = cells.begin() + static_cast<std::ptrdiff_t>(at);
    return std::all_of(first + 1, first + static_cast<std::ptrdiff_t>(span),
                       [](StitchIndex index) { return index == kCovered; });
}

}  // namespace

// A stitch that is defined nowhere may be why a row has too few columns.
std::string RowReader::aboutUnknown(std::string_view text, const JsonValue& row) {
    RowScanner scanner(text, table_, memo_, row);
    while (const Run* run = scanner.next()) {
        if (run->stitch == kCovered || table_[run->stitch].kind != StitchKind::Unknown) continue;
        return " (" + shownId(table_[run->stitch].id) +
               " is defined nowhere and counts as one column)";
    }
    return {};
}

void RowReader::refuseWidth(std::string_view text, const RowWidth& width, int number,
                            const JsonValue& row) {
    const int found = columns(text, row);
    const std::string has = found > kMaxWidth
                                ? "more than " + counted(kMaxWidth, "column", "columns")
                                : counted(found, "column", "columns");
    refuse(row, "Row " + std::to_string(number) + " has " + has + "; expected " +
                    std::to_string(width.columns) + ", " + std::string(width.expected) +
                    aboutUnknown(text, row) + ".");
}

int RowReader::columns(std::string_view text, const JsonValue& row) {
    RowScanner scanner(text, table_, memo_, row);
    int columns = 0;
    while (const Run* run = scanner.next()) {
        columns = std::min(columns + run->columns, kMaxWidth + 1);
    }
    return columns;
}

std::vector<StitchIndex> RowReader::cells(std::string_view text, const RowWidth& width, int number,
                                          const JsonValue& row) {
    cells_.resize(static_cast<std::size_t>(width.columns + kMargin));
    StitchIndex* const first = cells_.data() + kMargin;
    RowScanner scanner(text, table_, memo_, row);
    int left = width.columns;  // columns still to be filled
    while (const Run* run = scanner.next()) {
        if (run->columns > left) refuseWidth(text, width, number, row);
        fill(first + left, *run);
        left -= run->columns;
    }
    if (left > 0) refuseWidth(text, width, number, row);
    return {cells_.begin() + kMargin, cells_.end()};
}

std::string writeRow(const std::vector<StitchIndex>& cells, const StitchCatalogue& stitches) {
    std::vector<Written> runs;  // right to left
    for (std::size_t at = 0; at < cells.size();) {
        const StitchIndex stitch = cells[at];
        const std::size_t span = stitches.spans()[stitch];
        const bool loose = stitch == kCovered || !ownsItsCells(cells, at, span);
        if (!runs.empty() && runs.back().stitch == stitch && runs.back().loose == loose) {
            ++runs.back().count;
        } else {
            runs.push_back({stitch, loose, 1});
        }
        at += loose ? 1 : span;
    }
    std::string text;
    for (auto run = runs.rbegin(); run != runs.rend(); ++run) {
        if (!text.empty()) text += ' ';
        if (run->loose) text += '*';
        if (run->stitch != kCovered) text += stitches[run->stitch].id;
        if (run->count > 1) text += "*" + std::to_string(run->count);
    }
    return text;
}

}  // namespace lacewright
