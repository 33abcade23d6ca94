#include "core/words/figure.h"

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

Figure readFigure(TokenCursor& at, std::vector<ReadMessage>& messages, std::size_t& sizes) {
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
        if (sizes == 0) sizes = count;
        if (sizes != count) {
            messages.push_back({true,
                                spanning(place, at.previous().place),
                                "this lists " + std::to_string(count) + " numbers, but there are " +
                                    std::to_string(sizes) + " sizes",
                                "one number, or one for each size",
                                {}});
            figure.bySize.resize(1);
        }
    }
    return figure;
}

}  // namespace lacewright
