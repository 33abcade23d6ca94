#pragma once

#include <optional>
#include <vector>

#include "core/words/written.h"

namespace lacewright {

// A text with one of its rows worded otherwise, on trial. Rows that share a text ("Row 4: as row
// 2") change together, and how far "k to m" goes is found anew.
class SlipTrial {
 public:
    explicit SlipTrial(const WrittenPattern& pattern);

    // The pattern as its words say, before it was settled how far "k to m" goes.
    const WrittenPattern& said() const { return said_; }
    // The first row with the text of this one.
    std::size_t textOf(std::size_t row) const { return textOf_[row]; }
    bool goesToLandmarks() const { return goesToLandmarks_; }

    // The row, and every one with the same text, says this.
    void word(std::size_t row, const Elements& elements);
    // Of the piece, counted from 0 behind the first one; nothing: of that.
    void castOn(const WrittenCastOn& castOn, std::optional<std::size_t> piece);
    // The row says that it leaves so many stitches.
    void state(std::size_t row, const Figure& count);
    // Rows are worked again so often, and are said to leave so many stitches then.
    void workAgain(std::size_t again, const Figure& times);
    void stateAgain(std::size_t again, const Figure& count);
    // All is as it was, with this row.
    void reset(std::size_t row);
    // The text so worded, to be proven.
    const WrittenPattern& worded();

 private:
    WrittenPattern said_;
    bool goesToLandmarks_ = false;
    std::vector<std::size_t> textOf_;  // by row
    WrittenPattern trial_;
    std::optional<WrittenPattern> settled_;  // the trial, once it was asked for
};

}  // namespace lacewright
