#pragma once

#include <string>
#include <vector>

#include "core/words/row_phrases.h"

namespace lacewright {

// A piece of a row's text. What stands for stitches says for which.
struct TextPiece {
    std::string text;
    WordIndex word = -1;    // of a single word; -1 for punctuation, brackets and how often
    std::size_t first = 0;  // positions in RowPhrases::columns
    std::size_t length = 0;
    int entry = -1;  // of the glossary, once there is one
    bool operator==(const TextPiece&) const = default;
};

// The row without its heading and without a full stop:
//   "k2, *yo, k2tog; rep from * to last 3 sts, k3", "purl".
std::vector<TextPiece> rowPieces(const RowPhrases& row, const StitchWords& words,
                                 const WriterStyle& style);
std::string textOf(const std::vector<TextPiece>& pieces);

}  // namespace lacewright
