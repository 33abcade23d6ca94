#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/words/token_cursor.h"

// Shaping at the ends of a row, told by where it stands instead of in which stitches.
namespace lacewright {

// Shaping that says where on the row it stands instead of in which stitches.
struct AtEnds {
    std::string stitch;  // empty: none stands here
    bool beginning = false;
    bool end = false;
};

// "Inc 1 st at each end of row", "dec 1 st at end of row", "k2tog at both ends". Nothing is passed
// when none stands here.
AtEnds acceptAtEnds(TokenCursor& at);

// The row in stitches, with `between` from end to end.
std::string shapedRow(const AtEnds& ends, const std::string& between);

// "Dec 1 st at each end, p to end" as the body of a row: put into stitches, "k2tog, p to last 2
// sts, k2tog"; another body is left as it is. Requires: the last token is End.
void spellOutEachEnd(std::vector<Token>& body);

// Tokens of `words` as if they stood at `place`.
void appendWords(std::vector<Token>& to, std::string_view words, const Place& place);

}  // namespace lacewright
