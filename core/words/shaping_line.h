#pragma once

#include <optional>
#include <vector>

#include "core/words/rows_again.h"

// Shaping that is told by where it stands instead of in which stitches.
namespace lacewright {

// "BO 3 sts at beg of next 2 rows": rows without a heading of their own. Gives the line as the text
// of one of these rows, "BO 3 sts, asis to end", and how many there are; 0 when the line is none.
// Requires: the last token is End.
int parseAtBeginnings(std::vector<Token>& line);

// "BO 5 sts at beg of next 2 rows, 3 sts at beg of foll 4 rows": each of them as a line of its own.
// Requires: the last token is End.
std::vector<std::vector<Token>> beginningsApart(const std::vector<Token>& line);

// Rows that are shaped alike, at even distances.
struct ShapedRows {
    std::vector<Token> row;  // its text, up to an End
    int every = 1;           // 4: three rows as they come, then the shaped one
    RowsAgainWords often;    // how often this is worked again; `count` is `every`
};

// "Keeping patt correct, inc 1 st at each end of next and every foll 4th row until there are 60
// sts." Empty, and nothing is passed, when no such sentence stands here or it does not say how
// often.
std::vector<ShapedRows> parseShapingSentence(TokenCursor& at, FigureContext context);

// "K 2 rows, inc 6 sts evenly across last row": gives how many rows; the line becomes the text of
// the last of them. 0 when it is none.
int parseShapedAfter(std::vector<Token>& line);

// The text of a row that is worked as it comes.
std::vector<Token> asTheyCome(const Place& place);

// ", inc 6 sts evenly across last row" behind a sentence that repeats rows: the text of that last
// row. Nothing when no shaping is told there.
std::optional<std::vector<Token>> shapingBehind(const TokenCursor& sentence);

// The sentence tells shaping, "dec 1 st at each end of every row", in whatever words.
bool tellsShaping(const TokenCursor& line);

}  // namespace lacewright
