#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/words/figure.h"
#include "core/words/token_cursor.h"

// Sentences that say which rows are worked without writing them out.
namespace lacewright {

struct RowsAgainWords {
    int first = 0;  // 0: the last `count` rows
    int last = 0;   // 0: up to the last row
    int count = 0;
    std::string label;  // instead: the row so named, "dec", with others between
    int every = 1;      // "every 4th row": of so many rows it is one
    std::optional<Figure> times;
    std::optional<Figure> until;   // "until 10 sts remain"
    std::optional<Figure> stated;  // "(12 sts)": stitches when they have been worked
    bool named = false;            // "form the pattern": says no more than which rows these are
    Place place;
    Place statedPlace;
};

// `again` in "The grammar of written rows" of DEVELOPERS.md:
// "Rep rows 1-16", "Rep last 2 rows 5 (6, 7) more times, then rep row 1 once more", "Repeat from
// row 3", "Rows 1-8 form the pattern". Empty, and nothing is passed, when no such sentence stands
// here.
std::vector<RowsAgainWords> parseRowsAgain(TokenCursor& at, FigureContext context);

}  // namespace lacewright
