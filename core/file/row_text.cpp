#include "core/file/row_text.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/chart/chart.h"
#include "core/file/fields.h"
#include "core/file/json_value.h"
#include "core/file/refusal.h"

namespace lacewright {
namespace {

constexpr bool isBlank(char c) {
    return c == ' ' || c == '\t';
}

// One token of a row.
struct Run {
    StitchIndex stitch = kCovered;
    int count = 1;       // at most kMaxWidth + 1
    bool loose = false;  // `*id` or `*`: one cell each, whatever the stitch spans
};

StitchIndex addUnknown(std::string_view id, StitchTable& table, const JsonValue& place) {
    Stitch stitch;
    stitch.id = id;
    const bool control = std::any_of(id.begin(), id.end(),
                                     [](char c) { return static_cast<unsigned char>(c) < ' '; });
    if (control || stitchProblem(stitch)) {
        refuse(place, "Found " + quoteJson(id.substr(0, 2 * kMaxIdLength)) +
                          "; expected a stitch id of 1 to " + std::to_string(kMaxIdLength) +
                          " bytes without blanks, quotes and *.");
    }
    const StitchIndex added = table.addUnknown(id);
    if (added == kCovered) {
        refuse(place, "The chart names more kinds of stitch than the 65534 that are read at most.",
               ErrorCode::OutOfRange);
    }
    return added;
}

// Takes the tokens of a row text one by one.
class RowScanner {
 public:
    RowScanner(std::string_view text, StitchTable& table, const JsonValue& row)
        : at_(text.data()), end_(text.data() + text.size()), table_(table), row_(row) {}

    // False at the end of the row.
    bool next(Run& run) {
        while (at_ != end_ && isBlank(*at_)) ++at_;
        if (at_ == end_) return false;
        const char* token = at_;
        run.loose = *at_ == '*';
        if (run.loose) ++at_;
        const char* start = at_;
        std::uint32_t hash = kIdHashStart;
        while (at_ != end_ && !isBlank(*at_) && *at_ != '*') hash = addToIdHash(hash, *at_++);
        const std::string_view id(start, static_cast<std::size_t>(at_ - start));
        run.count = at_ != end_ && *at_ == '*' ? count(token) : 1;
        run.stitch = kCovered;
        if (id.empty()) return true;
        run.stitch = table_.find(id, hash);
        if (run.stitch == kCovered) run.stitch = addUnknown(id, table_, row_);
        return true;
    }

    // Columns that a run fills; may exceed any width but not int.
    int columns(const Run& run) const {
        return run.loose ? run.count : run.count * table_[run.stitch].span;
    }

 private:
    int count(const char* token) {
        int count = 0;
        const char* digits = ++at_;
        for (; at_ != end_ && *at_ >= '0' && *at_ <= '9'; ++at_) {
            count = std::min(10 * count + (*at_ - '0'), kMaxWidth + 1);
        }
        const bool ends = at_ == end_ || isBlank(*at_);
        if (at_ == digits || count == 0 || !ends) {
            while (at_ != end_ && !isBlank(*at_)) ++at_;
            const auto length = std::min<std::ptrdiff_t>(at_ - token, 2 * kMaxIdLength);
            refuse(row_, "Found " + quoteJson({token, static_cast<std::size_t>(length)}) +
                             "; expected a whole number from 1 after the *.");
        }
        return count;
    }

    const char* at_;
    const char* end_;
    StitchTable& table_;
    const JsonValue& row_;
};

// A stitch that is defined nowhere may be why a row has too few columns.
std::string aboutUnknown(std::string_view text, StitchTable& table, const JsonValue& row) {
    RowScanner scanner(text, table, row);
    for (Run run; scanner.next(run);) {
        if (run.stitch == kCovered || table[run.stitch].kind != StitchKind::Unknown) continue;
        return " (" + quoteJson(table[run.stitch].id) +
               " is defined nowhere and counts as one column)";
    }
    return {};
}

[[noreturn]] void refuseWidth(std::string_view text, const RowWidth& width, int number,
                              StitchTable& table, const JsonValue& row) {
    const int found = columnsOfRow(text, table, row);
    const std::string columns = found > kMaxWidth
                                    ? "more than " + counted(kMaxWidth, "column", "columns")
                                    : counted(found, "column", "columns");
    refuse(row, "Row " + std::to_string(number) + " has " + columns + "; expected " +
                    std::to_string(width.columns) + ", " + std::string(width.expected) +
                    aboutUnknown(text, table, row) + ".");
}

// Fills the cells of a run that ends (on the left) before column `left` + 1.
void fill(std::vector<StitchIndex>& cells, int left, const Run& run, int columns, int span) {
    const auto first = cells.begin() + (left - columns);
    if (run.loose || span == 1) {
        std::fill(first, first + columns, run.stitch);
        return;
    }
    for (int column = 0; column < columns; column += span) *(first + column) = run.stitch;
}

// A run to be written, and where its stitch begins.
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

int columnsOfRow(std::string_view text, StitchTable& table, const JsonValue& row) {
    RowScanner scanner(text, table, row);
    int columns = 0;
    for (Run run; scanner.next(run);)
        columns = std::min(columns + scanner.columns(run), kMaxWidth + 1);
    return columns;
}

std::vector<StitchIndex> readRow(std::string_view text, const RowWidth& width, int number,
                                 StitchTable& table, const JsonValue& row) {
    std::vector<StitchIndex> cells(static_cast<std::size_t>(width.columns), kCovered);
    RowScanner scanner(text, table, row);
    int left = width.columns;  // columns still to be filled
    for (Run run; scanner.next(run);) {
        const int columns = scanner.columns(run);
        if (columns > left) refuseWidth(text, width, number, table, row);
        fill(cells, left, run, columns, run.loose ? 1 : table[run.stitch].span);
        left -= columns;
    }
    if (left > 0) refuseWidth(text, width, number, table, row);
    return cells;
}

StitchIndex readStitchId(const JsonValue& value, StitchTable& table) {
    const std::string id = textOf(value);
    const StitchIndex found = table.find(id, idHash(id));
    return found != kCovered ? found : addUnknown(id, table, value);
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
