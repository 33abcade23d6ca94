#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace lacewright {

// Where something stands in a text. Offset and length are bytes, line and column count from 1;
// columns count characters, not bytes, so that a caret stands below the right one.
struct Place {
    std::size_t offset = 0;
    std::size_t length = 0;
    int line = 1;
    int column = 1;

    bool operator==(const Place&) const = default;
};

// The stretch from the start of `first` to the end of `last`.
Place spanning(const Place& first, const Place& last);

enum class TokenKind {
    Word,    // letters only, in lower case: "k2tog" is three tokens, glued to one another
    Number,  // digits
    Star,    // one or more of * or another mark used alike; `value` is how many
    Comma,
    Semicolon,
    Stop,  // .
    Colon,
    Open,   // ( [ { <
    Close,  // ) ] } >
    Dash,
    Slash,  // / |
    Plus,
    Equals,
    Cross,  // the multiplication sign
    NewLine,
    Strange,  // a character that has no business in a row
    End
};

struct Token {
    TokenKind kind = TokenKind::End;
    std::string text;    // lower case; for brackets the character itself
    int value = 0;       // Number, and Word that names a number ("three"); else 0
    bool glued = false;  // no blank between this token and the one before
    Place place;
};

// Splits a text into tokens; never fails. Curly quotes, dashes of all lengths, blanks of all widths
// and other typographic characters become their plain counterparts; quotes vanish.
// The last token is End. Numbers beyond kMaxFigure are held at kMaxFigure.
std::vector<Token> tokenize(std::string_view text);

inline constexpr int kMaxFigure = 100'000;

}  // namespace lacewright
