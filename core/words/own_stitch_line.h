#pragma once

#include <vector>

#include "core/words/read_message.h"
#include "core/words/token_cursor.h"
#include "core/words/written.h"

namespace lacewright {

// Stitches that a pattern tells the counts of: "Stitch knot3: takes 3 makes 1", "inc1: takes 0,
// makes 1; knot3 (takes 3 sts, makes 1)". Adds them to `own`. False when the line tells of none; a
// line that begins with "Stitch" and tells no counts is an error.
bool parseOwnStitches(TokenCursor& at, std::vector<OwnStitch>& own,
                      std::vector<ReadMessage>& messages);

}  // namespace lacewright
