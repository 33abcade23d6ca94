#pragma once

#include <string_view>
#include <vector>

#include "core/words/read_message.h"
#include "core/words/token_cursor.h"
#include "core/words/vocabulary.h"
#include "core/words/written.h"

// The lines before the rows: `line` in "The grammar of written rows" of DEVELOPERS.md. Counts are
// figures: "Cast on: 40 (44, 48)".
namespace lacewright {

struct HeadingTarget {
    WrittenPattern& pattern;
    std::vector<ReadMessage>& messages;
    Wording& wording;
    std::size_t& sizes;     // how many sizes are known; 0: none yet
    std::string_view text;  // the whole text, for names as they were written
};

// True when the line is one of these and was taken over, with or without errors.
bool parsePatternHeading(TokenCursor& at, HeadingTarget& target);

}  // namespace lacewright
