#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/chart/chart.h"
#include "core/words/token_cursor.h"

// What stands before the colon of a row: `heading` in "The grammar of written rows" of
// DEVELOPERS.md.
namespace lacewright {

// Rows that share a text without being named one by one.
enum class RowFamily { None, RightSide, WrongSide, Even, Odd, Every };

struct RowHeading {
    std::vector<int> numbers;  // empty for "next row" and for a family without a first row
    bool next = false;         // "next row", "set-up row"
    int nextRows = 1;          // "next 2 rows"
    RowFamily family = RowFamily::None;
    int end = 0;   // "through row 10": the last one of the family; 0 where it is not said
    int step = 2;  // for Every: distance between its rows
    std::optional<Side> side;
    bool round = false;
    std::string label;  // "Row", "Rnd", "Set-up row"
};

// Passes the heading; nothing is passed when none stands here.
std::optional<RowHeading> parseRowHeading(TokenCursor& at);

// The name of a row that is called by what it does, in one spelling: "inc" for "increase". Empty,
// and nothing is passed, when none stands here.
std::string acceptRowName(TokenCursor& at);

}  // namespace lacewright
