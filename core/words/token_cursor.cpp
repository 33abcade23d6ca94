#include "core/words/token_cursor.h"

#include <algorithm>
#include <array>

namespace lacewright {

bool TokenCursor::isWord(std::initializer_list<std::string_view> words, std::size_t ahead) const {
    const Token& token = peek(ahead);
    return token.kind == TokenKind::Word &&
           std::find(words.begin(), words.end(), token.text) != words.end();
}

bool TokenCursor::accept(TokenKind kind) {
    if (!is(kind)) return false;
    advance();
    return true;
}

bool TokenCursor::acceptWord(std::initializer_list<std::string_view> words) {
    if (!isWord(words)) return false;
    advance();
    return true;
}

void TokenCursor::skipWords(std::initializer_list<std::string_view> words) {
    while (acceptWord(words)) {
    }
}

bool TokenCursor::isStitchNoun(std::size_t ahead) const {
    return isWord({"st", "sts", "stitch", "stitches", "loop", "loops", "lps", "lp"}, ahead);
}

bool TokenCursor::acceptStitchNoun() {
    if (!isStitchNoun()) return false;
    advance();
    const bool maybeSeveral = is(TokenKind::Open) && peek().glued && isWord({"s", "es"}, 1) &&
                              is(TokenKind::Close, 2);  // "st(s)"
    if (maybeSeveral) advance(3);
    return true;
}

bool TokenCursor::isNumber(std::size_t ahead) const {
    const Token& token = peek(ahead);
    return token.kind == TokenKind::Number || (token.kind == TokenKind::Word && token.value > 0);
}

int TokenCursor::ordinal(bool pass) {
    static constexpr std::array<std::string_view, 20> kNames = {
        "first",     "second",      "third",      "fourth",     "fifth",
        "sixth",     "seventh",     "eighth",     "ninth",      "tenth",
        "eleventh",  "twelfth",     "thirteenth", "fourteenth", "fifteenth",
        "sixteenth", "seventeenth", "eighteenth", "nineteenth", "twentieth"};
    if (is(TokenKind::Number) && peek(1).glued && isWord({"st", "nd", "rd", "th", "d"}, 1)) {
        const int value = peek().value;
        if (pass) advance(2);
        return value;
    }
    if (!is(TokenKind::Word)) return 0;
    const auto found = std::find(kNames.begin(), kNames.end(), peek().text);
    if (found == kNames.end()) return 0;
    if (pass) advance();
    return static_cast<int>(found - kNames.begin()) + 1;
}

}  // namespace lacewright
