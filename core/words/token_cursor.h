#pragma once

#include <initializer_list>
#include <string_view>
#include <vector>

#include "core/words/token.h"

namespace lacewright {

// A place in a run of tokens that moves forward as they are understood.
class TokenCursor {
 public:
    // Requires: the last token is End.
    explicit TokenCursor(std::vector<Token> tokens) : tokens_(std::move(tokens)) {}

    const std::vector<Token>& tokens() const { return tokens_; }
    std::size_t position() const { return position_; }
    void moveTo(std::size_t position) { position_ = std::min(position, tokens_.size() - 1); }
    void advance(std::size_t count = 1) { moveTo(position_ + count); }

    const Token& peek(std::size_t ahead = 0) const {
        return tokens_[std::min(position_ + ahead, tokens_.size() - 1)];
    }
    // The token passed last; the first one at the start.
    const Token& previous() const { return tokens_[position_ == 0 ? 0 : position_ - 1]; }
    bool is(TokenKind kind, std::size_t ahead = 0) const { return peek(ahead).kind == kind; }
    bool isWord(std::initializer_list<std::string_view> words, std::size_t ahead = 0) const;
    bool atEnd() const { return is(TokenKind::End); }

    bool accept(TokenKind kind);
    bool acceptWord(std::initializer_list<std::string_view> words);
    // Passes as many of these words as stand here, in any order.
    void skipWords(std::initializer_list<std::string_view> words);
    // Passes "sts", "stitches", "loops"; true when one stood here.
    bool acceptStitchNoun();
    bool isStitchNoun(std::size_t ahead = 0) const;
    // A number in digits or as a word.
    bool isNumber(std::size_t ahead = 0) const;
    // "1st", "first", "3rd": its number, 0 when none stands here. Passes it when asked to.
    int ordinal(bool pass);

 private:
    std::vector<Token> tokens_;
    std::size_t position_ = 0;
};

}  // namespace lacewright
