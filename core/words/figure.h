#pragma once

#include <cstddef>
#include <vector>

#include "core/words/read_message.h"
#include "core/words/token_cursor.h"
#include "core/words/written.h"

namespace lacewright {

// What the figures of one text have in common.
struct FigureContext {
    std::vector<ReadMessage>& messages;
    std::size_t& sizes;  // how many there are; 0 while unknown, the first list sets it
    bool inRow = false;  // among stitches: "k8 (12)" may end in a count
    // Sizes that this is for, as they are named; null or empty: all. A list may be for these alone.
    const std::vector<std::size_t>* scope = nullptr;

    bool listsScope(std::size_t numbers) const {
        return scope != nullptr && numbers != sizes && numbers == scope->size();
    }
};

// Reads "3", "three" or one number per size: "3 (4, 5)", "82 (90: 94: 102)", "1 (2, 3) (4, 5)"; a
// dash stands for none. A list of another length than there are sizes is an error.
// Requires: at.isNumber().
Figure readFigure(TokenCursor& at, FigureContext context);

// "- (-, 1) times": a dash that begins such a list becomes the number 0. Requires: the last token
// is End.
void fillNones(std::vector<Token>& line);

// "41 sts", "41 (45, 49) sts remain", "41 sts on needle" in any of the ways a count is stated after
// a row: in brackets, behind a dash or an equals sign, or as the last words of the line.
struct StatedCount {
    Figure stitches;
    bool change = false;  // "(2 sts dec)": by how many the row changes the count
    Place place;
};
// Nothing is passed when none stands here.
std::optional<StatedCount> readStatedCount(TokenCursor& at, FigureContext context);

}  // namespace lacewright
