#include "core/words/row_numbers.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>

namespace lacewright {

namespace {

void addRange(std::vector<int>& numbers, int to, int step) {
    if (numbers.empty()) return;
    for (int n = numbers.back() + step; n <= std::min(to, kMaxRowNumber); n += step)
        numbers.push_back(n);
}

// "xiv", in the usual way of writing; 0 for another word. An "l" is a 1 mistyped.
int romanNumber(const std::string& word) {
    constexpr int kLargest = 39;
    static const std::map<std::string, int, std::less<>> kNumbers = [] {
        const std::array<const char*, 10> ones = {"",  "i",  "ii",  "iii",  "iv",
                                                  "v", "vi", "vii", "viii", "ix"};
        const std::array<const char*, 4> tens = {"", "x", "xx", "xxx"};
        std::map<std::string, int, std::less<>> numbers;
        for (int n = 1; n <= kLargest; ++n)
            numbers[std::string(tens[static_cast<std::size_t>(n / 10)]) +
                    ones[static_cast<std::size_t>(n % 10)]] = n;
        return numbers;
    }();
    const auto found = kNumbers.find(word);
    return found == kNumbers.end() ? 0 : found->second;
}

int numberOrOrdinal(TokenCursor& at, bool ordinals) {
    if (ordinals) return at.ordinal(true);
    if (!at.isNumber()) {
        const int roman = at.is(TokenKind::Word) ? romanNumber(at.peek().text) : 0;
        if (roman > 0) at.advance();
        return roman;
    }
    const int value = at.peek().value;
    at.advance();
    return value;
}

}  // namespace

bool isRowWord(const TokenCursor& at, std::size_t ahead) {
    return at.isWord({"row", "rows", "rnd", "rnds", "round", "rounds", "rd", "rds", "needle"},
                     ahead);
}

std::vector<int> parseRowNumbers(TokenCursor& at, bool ordinals) {
    std::vector<int> numbers;
    const auto push = [&numbers](int n) { numbers.push_back(std::min(n, kMaxRowNumber)); };
    const int first = numberOrOrdinal(at, ordinals);
    if (first == 0) return numbers;
    push(first);
    for (;;) {
        const std::size_t start = at.position();
        const bool range = at.accept(TokenKind::Dash) || at.acceptWord({"to", "through", "thru"});
        if (!range) {
            if (!at.accept(TokenKind::Comma) && !at.accept(TokenKind::Plus))
                at.accept(TokenKind::Slash);
            at.acceptWord({"and"});
        }
        if (range && ordinals) at.skipWords({"the"});
        const bool moved = at.position() != start;
        const int n = moved ? numberOrOrdinal(at, ordinals) : 0;
        // "rep rows 1 and 2, 3 times": the last number is no row.
        const bool often =
            !range && !ordinals &&
            (at.isWord({"times", "time", "more"}) ||
             (at.is(TokenKind::Open) && (at.is(TokenKind::Number, 1) || at.isWord({"more"}, 1))));
        if (n == 0 || often) {
            at.moveTo(start);
            return numbers;
        }
        if (range) {
            addRange(numbers, n, 1);
        } else {
            push(n);
        }
    }
}

}  // namespace lacewright
