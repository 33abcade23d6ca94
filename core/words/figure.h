#pragma once

#include <cstddef>
#include <vector>

#include "core/words/read_message.h"
#include "core/words/token_cursor.h"
#include "core/words/written.h"

namespace lacewright {

// Reads "3", "three" or one number per size: "3 (4, 5)", "82 (90: 94: 102)", "1 (2, 3) (4, 5)"; a
// dash stands for none. `sizes` is how many sizes there are, 0 while unknown; the first list sets
// it, a list of another length is an error.
// Requires: at.isNumber().
Figure readFigure(TokenCursor& at, std::vector<ReadMessage>& messages, std::size_t& sizes);

}  // namespace lacewright
