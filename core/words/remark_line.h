#pragma once

#include "core/words/token_cursor.h"

namespace lacewright {

// A line that tells the knitter something but works no row: "Bind off all sts loosely.", "Block to
// measurements.", "Note: ..". `first` is true when the line cannot go on with a row above it.
bool isRemarkLine(const TokenCursor& line, bool first);

}  // namespace lacewright
