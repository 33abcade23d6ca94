#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/chart/chart.h"
#include "core/words/token_cursor.h"

// What stands before the colon of a row, and the sentences that repeat whole rows.
//
//   heading  = ( "row" | "rows" | "rnd" | "round" .. ) numbers [ family ] [ side ] [ ":" | "." |
//   "-" ]
//            | ordinals "row" [ family ] [ side ] [ ":" ]
//            | ( "next" [ n ] | "set-up" | "foundation" ) "row" [ side ] [ ":" ]
//            | ( "all" | "every" ) kind "rows" [ ":" ]  |  number ( ":" | ")" )
//   numbers  = number { ( "," | "and" | "&" ) number | ( "-" | "to" ) number }
//   family   = "and" ( "all" | "every" ) [ "following" ] kind [ "row" ]
//   kind     = "RS" | "WS" | "even" | "odd" | "alternate" | "other" | "second" | ordinal
//   side     = "(RS)" | "(WS)" | "(right side)" | ..
namespace lacewright {

// Rows that share a text without being named one by one.
enum class RowFamily { None, RightSide, WrongSide, Even, Odd, Every };

struct RowHeading {
    std::vector<int> numbers;  // empty for "next row" and for a family without a first row
    bool next = false;         // "next row", "set-up row"
    int nextRows = 1;          // "next 2 rows"
    RowFamily family = RowFamily::None;
    int step = 2;  // for Every: distance between its rows
    std::optional<Side> side;
    bool round = false;
    std::string label;  // "Row", "Rnd", "Set-up row"
};

inline constexpr int kMaxRowNumber = 4000;

// Passes the heading; nothing is passed when none stands here.
std::optional<RowHeading> parseRowHeading(TokenCursor& at);

// "BO 3 sts at beg of next 2 rows": rows without a heading of their own. Gives the line as the text
// of one of these rows, "BO 3 sts, asis to end", and how many there are; 0 when the line is none.
// Requires: the last token is End.
int parseAtBeginnings(std::vector<Token>& line);

struct RowsAgainWords {
    int first = 0;  // 0: the last `count` rows
    int last = 0;   // 0: up to the last row
    int count = 0;
    std::optional<int> times;
    bool more = false;  // "5 more times" rather than "5 times"
};

// "Rep rows 1-16", "Rep last 2 rows 5 more times", "Repeat from row 3", "Rows 1-8 form the
// pattern".
std::optional<RowsAgainWords> parseRowsAgain(TokenCursor& at);

}  // namespace lacewright
