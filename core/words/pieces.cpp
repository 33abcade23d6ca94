#include "core/words/pieces.h"

#include <algorithm>

#include "core/words/row_numbers.h"

namespace lacewright {

std::vector<WrittenPattern> piecesOf(const WrittenPattern& pattern) {
    if (pattern.pieces.empty()) return {pattern};
    std::vector<WrittenPattern> pieces;
    for (std::size_t i = 0; i <= pattern.pieces.size(); ++i) {
        const int first = i == 0 ? -kMaxRowNumber : pattern.pieces[i - 1].first;
        const int end = i < pattern.pieces.size() ? pattern.pieces[i].first : kMaxRowNumber + 1;
        const auto outside = [&](int number) { return number < first || number >= end; };
        WrittenPattern& piece = pieces.emplace_back(pattern);
        piece.pieces.clear();
        if (i > 0) piece.castOn = pattern.pieces[i - 1].castOn;
        std::erase_if(piece.rows, [&](const WrittenRow& row) { return outside(row.number); });
        std::erase_if(piece.again, [&](const RowsAgain& again) { return outside(again.after); });
        if (piece.repeatFrom && outside(*piece.repeatFrom)) piece.repeatFrom.reset();
    }
    return pieces;
}

}  // namespace lacewright
