#include <algorithm>
#include <cstdint>
#include <optional>

#include "core/words/number_name.h"
#include "core/words/token.h"

namespace lacewright {

namespace {

struct Character {
    std::uint32_t code = 0;
    std::size_t bytes = 1;
};

// One character of UTF-8; a broken sequence gives its first byte as a strange character.
Character decode(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) {
        return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i]));
    };
    const std::uint32_t first = byte(at);
    if (first < 0x80) return {first, 1};
    const std::size_t size = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : first >= 0xC0 ? 2 : 1;
    if (size == 1 || at + size > text.size()) return {0xFFFD, 1};
    std::uint32_t code = first & (0xFFU >> (size + 1));
    for (std::size_t i = 1; i < size; ++i) {
        if ((byte(at + i) & 0xC0U) != 0x80U) return {0xFFFD, 1};
        code = (code << 6U) | (byte(at + i) & 0x3FU);
    }
    // A character in more bytes than it needs is none (RFC 3629, 3): it must not pass for a digit.
    const std::uint32_t least = size == 2 ? 0x80 : size == 3 ? 0x800 : 0x10000;
    if (code < least) return {0xFFFD, 1};
    return {code, size};
}

// The plain character that stands for a typographic one.
std::uint32_t plain(std::uint32_t code) {
    if (code == 0x00A0 || (code >= 0x2000 && code <= 0x200B) || code == 0x202F || code == 0x205F ||
        code == 0x3000 || code == 0xFEFF || code == 0x00AD) {
        return ' ';
    }
    if ((code >= 0x2010 && code <= 0x2015) || code == 0x2192) return '-';
    switch (code) {
        case 0x2212:
            return '-';
        case 0x2018:
        case 0x2019:
        case 0x201C:
        case 0x201D:
        case 0x00AB:
        case 0x00BB:
            return '"';
        case 0x2217:
        case 0x204E:
        case 0xFF0A:
        case 0x2736:
        case 0x2605:
        case 0x2606:
            return '*';
        case 0x2022:  // bullets between stitches
        case 0x00B7:
            return ',';
        case 0x2026:
            return '.';
        case 0x2044:
        case 0x2215:
            return '/';
        case 0x2028:
        case 0x2029:
            return '\n';
        default:
            return code;
    }
}

bool isLetter(std::uint32_t code) {
    return (code | 0x20U) >= 'a' && (code | 0x20U) <= 'z' && code < 0x80;
}
bool isDigit(std::uint32_t code) {
    return code >= '0' && code <= '9';
}
bool isBlank(std::uint32_t code) {
    return code == ' ' || code == '\t' || code == '\r' || code == '\f' || code == '\v' ||
           code == '"' || code == '\'';
}

TokenKind punctuation(std::uint32_t code) {
    switch (code) {
        case '*':
        case '#':
            return TokenKind::Star;
        case ',':
            return TokenKind::Comma;
        case ';':
            return TokenKind::Semicolon;
        case '.':
            return TokenKind::Stop;
        case ':':
            return TokenKind::Colon;
        case '(':
        case '[':
        case '{':
        case '<':
            return TokenKind::Open;
        case ')':
        case ']':
        case '}':
        case '>':
            return TokenKind::Close;
        case '-':
            return TokenKind::Dash;
        case '/':
        case '|':
            return TokenKind::Slash;
        case '+':
            return TokenKind::Plus;
        case '=':
            return TokenKind::Equals;
        case 0x00D7:
            return TokenKind::Cross;
        case '\n':
            return TokenKind::NewLine;
        default:
            return TokenKind::Strange;
    }
}

class Lexer {
 public:
    explicit Lexer(std::string_view text) : text_(text) {}

    std::vector<Token> run() {
        while (at_ < text_.size()) {
            const Character next = decode(text_, at_);
            const std::uint32_t code = plain(next.code);
            if (code == '\t' && opensTableRow()) {
                mark(next, ':');
            } else if (isBlank(code)) {
                step(next);
                glued_ = false;
            } else if (isLetter(code)) {
                letters();
            } else if (isDigit(code)) {
                digits();
            } else if (code == '&') {
                Token token = begin(TokenKind::Word);
                token.text = "and";
                step(next);
                finish(std::move(token));
            } else {
                mark(next, code);
            }
        }
        Token end = begin(TokenKind::End);
        tokens_.push_back(std::move(end));
        return std::move(tokens_);
    }

 private:
    // Nothing but a number stands before this tab on its line: the first column of a table.
    bool opensTableRow() const {
        const std::size_t count = tokens_.size();
        return count > 0 && tokens_.back().kind == TokenKind::Number &&
               (count == 1 || tokens_[count - 2].kind == TokenKind::NewLine);
    }

    Token begin(TokenKind kind) const {
        Token token;
        token.kind = kind;
        token.glued = glued_;
        token.place = {at_, 0, line_, column_};
        return token;
    }
    void finish(Token token) {
        token.place.length = at_ - token.place.offset;
        glued_ = token.kind != TokenKind::NewLine;
        tokens_.push_back(std::move(token));
    }
    void step(const Character& character) {
        at_ += character.bytes;
        ++column_;
    }
    void letters() {
        Token token = begin(TokenKind::Word);
        while (at_ < text_.size() && isLetter(static_cast<unsigned char>(text_[at_]))) {
            token.text += static_cast<char>(text_[at_] | 0x20);
            step({0, 1});
        }
        if (passGenitive()) token.text += 's';
        token.value = numberNamed(token.text);
        joinTens(token);
        finish(std::move(token));
    }
    // "yo's" is several.
    bool passGenitive() {
        if (at_ >= text_.size()) return false;
        const Character mark = decode(text_, at_);
        if (mark.code != '\'' && mark.code != 0x2019) return false;
        const std::size_t s = at_ + mark.bytes;
        const auto letter = [this](std::size_t i) {
            return i < text_.size() && isLetter(static_cast<unsigned char>(text_[i]));
        };
        if (!letter(s) || (text_[s] | 0x20) != 's' || letter(s + 1)) return false;
        step(mark);
        step({0, 1});
        return true;
    }
    // "thirty-one", "thirty one" is one number.
    void joinTens(Token& one) {
        if (one.value < 1 || one.value > 9 || tokens_.empty()) return;
        const bool dash = tokens_.back().kind == TokenKind::Dash && tokens_.size() > 1;
        const Token& tens = tokens_[tokens_.size() - (dash ? 2 : 1)];
        if (tens.kind != TokenKind::Word || tens.value < 20 || tens.value % 10 != 0) return;
        if (dash && !(one.glued && tokens_.back().glued)) return;
        one.text = tens.text + "-" + one.text;
        one.value += tens.value;
        one.glued = tens.glued;
        one.place = tens.place;
        tokens_.resize(tokens_.size() - (dash ? 2 : 1));
    }
    void digits() {
        Token token = begin(TokenKind::Number);
        while (at_ < text_.size() && isDigit(static_cast<unsigned char>(text_[at_]))) {
            token.text += text_[at_];
            token.value = std::min(kMaxFigure, token.value * 10 + (text_[at_] - '0'));
            step({0, 1});
        }
        finish(std::move(token));
    }
    void mark(const Character& first, std::uint32_t code) {
        Token token = begin(punctuation(code));
        token.text = text_.substr(at_, first.bytes);
        token.value = 1;
        step(first);
        // A run of the same repeat mark is one token.
        while (token.kind == TokenKind::Star && at_ < text_.size()) {
            const Character next = decode(text_, at_);
            if (plain(next.code) != code) break;
            token.text += text_.substr(at_, next.bytes);
            ++token.value;
            step(next);
        }
        // "#" is a mark of its own beside "*": keep their counts apart.
        if (token.kind == TokenKind::Star && code == '#') token.value += 100;
        const bool newLine = token.kind == TokenKind::NewLine;
        finish(std::move(token));
        if (newLine) {
            ++line_;
            column_ = 1;
        }
    }

    std::string_view text_;
    std::vector<Token> tokens_;
    std::size_t at_ = 0;
    int line_ = 1;
    int column_ = 1;
    bool glued_ = false;
};

}  // namespace

std::vector<Token> tokenize(std::string_view text) {
    return Lexer(text).run();
}

Place spanning(const Place& first, const Place& last) {
    Place place = first;
    if (last.offset + last.length > first.offset) {
        place.length = last.offset + last.length - first.offset;
    }
    return place;
}

}  // namespace lacewright
