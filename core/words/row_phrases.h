#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/words/stitch_words.h"

namespace lacewright {

// How much a row is shortened. A row that would not be read back as it is drawn is written in the
// next plainer way.
enum class Shortening : std::uint8_t {
    Open,      // "rep from * to last 3 sts", "k to end", brackets
    Counted,   // "rep from * 5 more times", brackets
    RunsOnly,  // the repeat counted, besides only counts such as "k3"
};
inline constexpr int kShortenings = 3;

// One row in the order it is worked:  before, *repeat; rep from * .., after.
struct RowPhrases {
    Side side = Side::Right;
    Phrases before;
    Phrases repeat;  // empty: the row has no starred repeat
    Phrases after;
    // How far the repeat goes: until so many stitches are left, one number for each size ..
    std::vector<int> leaves;
    std::vector<int> times;  // .. or so often in all; one of the two is empty
    // Loops the row takes and leaves, one number for each size; empty where a free repeat count
    // decides.
    std::vector<std::int64_t> takes;
    std::vector<std::int64_t> makes;
    // Column of every stitch a phrase stands for: of `before`, `repeat` and `after` one after the
    // other, as the first size works them.
    std::vector<int> columns;

    bool operator==(const RowPhrases&) const = default;
};

// A stretch of cells worked one after the other, `times` over.
struct WorkedStretch {
    std::vector<StitchIndex> stitches;  // in working order, "no stitch" left out
    std::vector<int> columns;           // of each of them
    int times = 1;
    int repeat = -1;    // index in Chart::repeats of a whole box, or -1
    bool open = false;  // a box whose times nothing says: no size is given
};

// How often repeats are worked where no size says it.
struct OpenTimes {
    std::vector<int> byRepeat = {};  // index as in Chart::repeats; may be shorter
    int others = 1;

    int of(int repeat) const {
        const auto index = static_cast<std::size_t>(repeat);
        return index < byRepeat.size() ? byRepeat[index] : others;
    }
};

// What a size, or without one the whole width, works on a row, in working order. Substitutions are
// made; stretches of 0 times are left out unless asked for.
std::vector<WorkedStretch> workedStretches(const Chart& chart, int rowIndex, const Size* size,
                                           bool withUnworked = false);

// The row for all these sizes together; an empty list stands for the whole width of the chart.
RowPhrases rowPhrases(const Chart& chart, int rowIndex, const std::vector<const Size*>& sizes,
                      StitchWords& words, Shortening shortening);

}  // namespace lacewright
