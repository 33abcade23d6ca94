#include "core/words/own_stitch_line.h"

#include "core/words/row_forms.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostTold = 200;

// "Stitch" before a name, rather than "Stitch count".
bool acceptStitchWord(TokenCursor& at) {
    if (!at.isWord({"stitch"}) || at.is(TokenKind::Colon, 1) ||
        at.isWord({"pattern", "count", "multiple", "key", "guide"}, 1))
        return false;
    at.advance();
    return true;
}

// "Words:", "Special stitches:"
void passListHeading(TokenCursor& at) {
    constexpr std::size_t kLongest = 3;  // tokens
    for (std::size_t i = 1; i <= kLongest; ++i) {
        if (!at.is(TokenKind::Colon, i)) continue;
        if (at.isWord({"words", "stitches", "stitch", "special"})) at.advance(i + 1);
        return;
    }
}

std::string passName(TokenCursor& at, bool toColon) {
    std::string name;
    const auto belongs = [&] {
        if (toColon) return !at.atEnd() && !at.is(TokenKind::Colon);
        const bool counts = at.isWord({"takes"}) && at.is(TokenKind::Number, 1);
        return !counts &&
               (at.is(TokenKind::Word) || at.is(TokenKind::Number) || at.is(TokenKind::Slash));
    };
    for (; belongs(); at.advance()) {
        if (!name.empty() && !at.peek().glued) name += ' ';
        name += at.peek().text;
    }
    return name;
}

}  // namespace

bool parseOwnStitches(TokenCursor& at, std::vector<OwnStitch>& own,
                      std::vector<ReadMessage>& messages) {
    const Place line = at.peek().place;
    const bool stitch = acceptStitchWord(at);
    if (!stitch) passListHeading(at);
    bool any = false;
    while (!at.atEnd()) {
        const Place place = at.peek().place;
        std::string name = passName(at, stitch && !any);
        int takes = -1;
        int makes = -1;
        for (; !at.atEnd() && !at.is(TokenKind::Semicolon); at.advance()) {
            if (!at.is(TokenKind::Number, 1)) continue;
            if (at.isWord({"takes", "take"})) takes = at.peek(1).value;
            if (at.isWord({"makes", "make"})) makes = at.peek(1).value;
        }
        at.accept(TokenKind::Semicolon);
        const bool counted = takes >= 0 && makes >= 0 && takes <= kMaxLoops && makes <= kMaxLoops;
        if (name.empty() || !counted) continue;
        if (own.size() < kMostTold) own.push_back({std::move(name), takes, makes, place});
        any = true;
    }
    if (stitch && !any) {
        messages.push_back(
            {true, line, "this does not define a stitch", "\"Stitch NAME: takes 3 makes 2\"", {}});
    }
    return any || stitch;
}

}  // namespace lacewright
