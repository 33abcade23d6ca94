#pragma once

#include "core/words/rows_again.h"

// How often rows are worked, in the words that follow their names.
namespace lacewright {

// "3 (more) times", "twice", "a total of 4 times": sets words.times to how often more.
void readOften(TokenCursor& at, RowsAgainWords& words, FigureContext context);

// "until 10 sts remain": sets words.until. Other ends, such as a length, say nothing about the
// count. Nothing is passed when none stands here.
void readUntil(TokenCursor& at, RowsAgainWords& words, FigureContext context);

}  // namespace lacewright
