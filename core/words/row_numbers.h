#pragma once

#include <vector>

#include "core/words/token_cursor.h"

namespace lacewright {

inline constexpr int kMaxRowNumber = 4000;

// "row", "rounds", "rnd": a word that names rows.
bool isRowWord(const TokenCursor& at, std::size_t ahead = 0);

// Passes "1", "1-4", "1 to 4", "1, 3 and 5", or with `ordinals` "1st to 4th", and gives each
// number; nothing is passed when none stands here. Numbers beyond kMaxRowNumber are held at it.
std::vector<int> parseRowNumbers(TokenCursor& at, bool ordinals);

}  // namespace lacewright
