#pragma once

#include <string>

#include "core/words/token_cursor.h"
#include "core/words/vocabulary.h"

namespace lacewright {

// A line that tells the knitter something but works no row: "Bind off all sts loosely.", "Block to
// measurements.", "Note: ..". `first` is true when the line cannot go on with a row above it.
bool isRemarkLine(const TokenCursor& line, bool first);

// "Cast on 41 sts ..", "Using larger needles, CO 41 sts".
bool isCastOnLine(const TokenCursor& line);

// "Continue in this way until there are 60 sts": work that is told only by the count it leads to.
bool worksToCount(const TokenCursor& line);

// "Knit 4 rows.", "Work 6 rows in garter st.": rows without a number that change no count.
// Gives how many; 0 when the line is none.
int plainRowsIn(const TokenCursor& line);
inline bool isPlainRowsLine(const TokenCursor& line) {
    return plainRowsIn(line) > 0;
}
// A line of prose: it neither begins as stitches do nor looks like a row or a heading that is
// misspelt.
bool isProseLine(const TokenCursor& line, const Vocabulary& vocabulary);
// "k2tog: knit 2 stitches together", "RS = right side": what an abbreviation means.
bool isGlossaryLine(const TokenCursor& line, const Vocabulary& vocabulary);
// Stitches stand in this line as in a row that lacks its heading: with numbers, a repeat, or
// nothing but terms.
bool holdsStitches(const TokenCursor& line, const Vocabulary& vocabulary);
// How often something is repeated stands in this line, which no note may pass over: "rep inc row 3
// more times".
bool saysHowOften(const TokenCursor& line);
// The line begins as the rest of a row does: "to end", "rep from *", "3 times", "41 sts".
bool continuesRow(const TokenCursor& line);
// The word that its first word was perhaps meant to be, "row" for "rwo"; empty when there is none.
std::string nearestHeading(const TokenCursor& line);

}  // namespace lacewright
