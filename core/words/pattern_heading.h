#pragma once

#include <string_view>
#include <vector>

#include "core/words/read_message.h"
#include "core/words/token_cursor.h"
#include "core/words/vocabulary.h"
#include "core/words/written.h"

// The lines before the rows. Counts are figures: "Cast on: 40 (44, 48)".
//
//   line    = "Cast on" [ ":" ] ( n | [ "multiple of" ] n "plus" n | "an even number" | "an odd
//   number" )
//           | "Worked:" ( "flat" | "round" ) | "Repeat from row" [ ":" ] number
//           | "Stitch" name ":" "takes" number "makes" number | "Sizes:" name { ( "," | "(" ) name
//           } | "Title:" text | "Wording:" ( "modern" | "older" ) | remark ":" text
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
