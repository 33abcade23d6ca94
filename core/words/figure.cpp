#include "core/words/figure.h"

#include <algorithm>
#include <string>

namespace lacewright {

namespace {

// After "(": only numbers, dashes for none, and what stands between them, up to ")".
bool listsSizes(const TokenCursor& at) {
    if (!at.is(TokenKind::Open)) return false;
    bool number = false;
    for (std::size_t i = 1;; ++i) {
        switch (at.peek(i).kind) {
            case TokenKind::Number:
                number = true;
                break;
            case TokenKind::Comma:
            case TokenKind::Colon:
            case TokenKind::Dash:
            case TokenKind::Slash:
            case TokenKind::Semicolon:
                break;
            case TokenKind::Close:
                return number;
            default:
                return false;
        }
    }
}

}  // namespace

Figure readFigure(TokenCursor& at, FigureContext context) {
    const Place place = at.peek().place;
    Figure figure(at.peek().value);
    at.advance();
    while (listsSizes(at)) {
        at.advance();
        bool none = true;  // a dash where a number belongs means none for that size
        while (!at.is(TokenKind::Close)) {
            if (at.is(TokenKind::Number)) {
                figure.bySize.push_back(at.peek().value);
                none = false;
            } else if (at.is(TokenKind::Dash)) {
                const bool between = !none && at.is(TokenKind::Number, 1);
                if (!between) figure.bySize.push_back(0);
                none = between;
            } else {
                none = true;
            }
            at.advance();
        }
        at.advance();
    }
    const std::size_t count = figure.bySize.size();
    if (count > 1) {
        if (context.sizes == 0) context.sizes = count;
        if (context.sizes != count) {
            context.messages.push_back({true,
                                        spanning(place, at.previous().place),
                                        "this lists " + std::to_string(count) +
                                            " numbers, but there are " +
                                            std::to_string(context.sizes) + " sizes",
                                        "one number, or one for each size",
                                        {}});
            figure.bySize.resize(1);
        }
    }
    return figure;
}

std::optional<StatedCount> readStatedCount(TokenCursor& at, FigureContext context) {
    const std::size_t start = at.position();
    const Place place = at.peek().place;
    while (at.accept(TokenKind::Dash) || at.accept(TokenKind::Equals)) {
    }
    const bool open = at.accept(TokenKind::Open);
    at.skipWords({"total", "now", "for", "a", "of", "there", "are", "you", "have", "should", "be",
                  "leaving"});
    if (at.isNumber()) {
        const std::size_t messages = context.messages.size();
        StatedCount stated;
        stated.stitches = readFigure(at, context);
        const bool noun = at.acceptStitchNoun();
        stated.change = at.isWord({"inc", "dec", "increased", "decreased", "incd", "decd"});
        at.skipWords({"inc", "dec", "increased", "decreased", "incd", "decd", "d", "rem", "remain",
                      "remaining", "left", "in", "total", "on", "needle", "needles", "now", "the"});
        const bool closed = !open || at.accept(TokenKind::Close);
        stated.place = spanning(place, at.previous().place);
        at.accept(TokenKind::Stop);
        if (noun && closed && (open || at.atEnd())) return stated;
        context.messages.resize(std::min(messages, context.messages.size()));
    }
    at.moveTo(start);
    return {};
}

}  // namespace lacewright
