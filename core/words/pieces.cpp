#include "core/words/pieces.h"

#include <limits>

namespace lacewright {

std::vector<WrittenPattern> piecesOf(const WrittenPattern& pattern) {
    if (pattern.pieces.empty()) return {pattern};
    WrittenPattern none = pattern;
    none.rows.clear();
    none.again.clear();
    none.pieces.clear();
    none.repeatFrom.reset();
    std::vector<WrittenPattern> pieces;
    auto row = pattern.rows.begin();
    auto again = pattern.again.begin();
    for (std::size_t i = 0; i <= pattern.pieces.size(); ++i) {
        const bool last = i == pattern.pieces.size();
        const int end = last ? std::numeric_limits<int>::max() : pattern.pieces[i].first;
        WrittenPattern& piece = pieces.emplace_back(none);
        if (i > 0) piece.castOn = pattern.pieces[i - 1].castOn;
        while (row != pattern.rows.end() && row->number < end) piece.rows.push_back(*row++);
        while (again != pattern.again.end() && again->after < end) piece.again.push_back(*again++);
        if (pattern.repeatFrom && piece.findRow(*pattern.repeatFrom))
            piece.repeatFrom = pattern.repeatFrom;
    }
    return pieces;
}

}  // namespace lacewright
