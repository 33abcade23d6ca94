#pragma once

#include <string_view>
#include <vector>

#include "core/words/read_message.h"
#include "core/words/vocabulary.h"
#include "core/words/written.h"

namespace lacewright {

struct ReadOptions {
    Wording wording = Wording::Modern;  // a line "Wording: older" in the text overrides it
};

// A text as far as it could be understood. With errors the pattern holds the rows that were read.
struct ReadRows {
    WrittenPattern pattern;
    std::vector<ReadMessage> messages;  // in the order of the text

    bool hasErrors() const;
};

// Reads written rows: heading lines ("Cast on: 40", "Worked: round", "Repeat from row: 3",
// "Stitch NAME: takes 3 makes 2", "Sizes: S (M, L)"), then rows. A line without a heading of its
// own goes on with the row above it. All errors of a text are told, not only the first.
ReadRows readWritten(std::string_view text, const ReadOptions& options = {});

}  // namespace lacewright
