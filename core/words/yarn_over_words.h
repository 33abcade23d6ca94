#pragma once

#include <string>
#include <vector>

#include "core/words/row_text.h"

namespace lacewright {

// The row with each "yrn" called as British patterns call a yarn over by what stands beside it:
// "yfwd" between two knit stitches, "yfrn" after a knit and before a purl, "yon" after a purl and
// before a knit, "yrn" between two purls. At the edge of a row the one neighbour decides.
// Source: Craft Yarn Council, Knitting Abbreviations, and British patterns from memory.
std::vector<TextPiece> yarnOversByNeighbours(std::vector<TextPiece> pieces,
                                             const StitchWords& words);

// The word that stands for this piece in a glossary: the word of the stitch, or the yarn over's
// own.
std::string glossaryWord(const TextPiece& piece, const StitchWords& words);

}  // namespace lacewright
