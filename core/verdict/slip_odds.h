#pragma once

#include "core/verdict/placed_row.h"
#include "core/verdict/row_slips.h"
#include "core/words/prove.h"

// How likely a slip in written rows is before the rest of the text is heard as a fabric: by what
// slips are usual, and by what the counts of the whole text are like when it is undone. Log odds.
namespace lacewright {

// Of one slip; `letters`: how many stitches might have stood there.
double slipOdds(const WrittenRow& row, const SlipUndone& slip, std::size_t letters);

// Of the whole text with one row changed, up to a term that is the same for all changes: what it
// leaves unexplained, whether its rows balance, close, and work their repeats equally often.
double textOdds(const WrittenPattern& pattern, const WrittenProof& proof, std::size_t row);

// How many of the counts that a text says its rows leave they do not leave.
std::size_t statedWrongly(const WrittenProof& proof);

// Every row fits and leaves what it says.
bool isWhole(const WrittenProof& proof);

// That the first repeat mirrors or, in a row without repeats, the whole row; see mirrorOdds.
double mirrorOddsOf(const PlacedRow& row);

// The row stars a repeat in which it works nothing but one plain stitch: "knit to end" says that.
bool isPlainRepeat(const PlacedRow& row);

// The row increases or decreases somewhere.
bool shapes(const WrittenRowProof& row);

// Rows that are not said to be worked again may shape on purpose. That they do not close is rather
// a slip where there are increases and decreases, and all but a row or two balance.
bool mayBeMeantToClose(const WrittenProof& proof);

}  // namespace lacewright
