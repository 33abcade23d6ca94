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

// "(12)" as the last thing of a row is a count, unless the numbers of several sizes are expected.
bool isBareCount(const TokenCursor& at, const FigureContext& context) {
    return context.inRow && context.sizes <= 1 && at.is(TokenKind::Open) &&
           at.is(TokenKind::Number, 1) && at.is(TokenKind::Close, 2) &&
           at.is(TokenKind::End, at.is(TokenKind::Stop, 3) ? 4 : 3);
}

// "/22/26" after the first of as many numbers as there are sizes.
void readSlashed(TokenCursor& at, Figure& figure, std::size_t sizes) {
    std::size_t more = 0;
    while (at.is(TokenKind::Slash, 2 * more) && at.is(TokenKind::Number, 2 * more + 1)) ++more;
    if (more == 0 || (sizes != 0 && sizes != more + 1)) return;
    if (at.isWord({"rc", "lc", "rpc", "lpc"}, 2 * more)) return;  // "2/2 RC" is a crossing
    for (std::size_t i = 0; i < more; ++i) figure.bySize.push_back(at.peek(2 * i + 1).value);
    at.advance(2 * more);
}

// ", 46, 50 sts" after the first of as many numbers as there are sizes.
void readListed(TokenCursor& at, Figure& figure, std::size_t sizes) {
    if (figure.bySize.size() != 1 || sizes < 2) return;
    for (std::size_t i = 0; i + 1 < sizes; ++i) {
        if (!at.is(TokenKind::Comma, 2 * i) || !at.is(TokenKind::Number, 2 * i + 1)) return;
    }
    if (!at.isStitchNoun(2 * (sizes - 1))) return;
    for (std::size_t i = 0; i + 1 < sizes; ++i) figure.bySize.push_back(at.peek(2 * i + 1).value);
    at.advance(2 * (sizes - 1));
}

// "inc", "increased", "inc'd" after the stitches by which a row changes the count.
bool acceptChange(TokenCursor& at, bool inBracket) {
    const bool change = at.acceptWord({"inc", "dec", "increased", "decreased", "incd", "decd",
                                       "increase", "decrease"}) ||
                        (inBracket && at.acceptWord({"made", "bound", "cast", "added"}));
    if (!change) return false;
    at.skipWords({"d", "off", "on"});
    return true;
}

}  // namespace

void fillNones(std::vector<Token>& line) {
    TokenCursor at(line);
    for (; !at.atEnd(); at.advance()) {
        if (!at.is(TokenKind::Dash)) continue;
        const std::size_t dash = at.position();
        at.advance();
        if (listsSizes(at)) {
            bool none = false;
            for (; !at.is(TokenKind::Close); at.advance()) none = none || at.is(TokenKind::Dash);
            at.advance();
            if (none || at.isStitchNoun() || at.isWord({"times", "time", "more", "x"})) {
                line[dash].kind = TokenKind::Number;
                line[dash].text = "0";
                line[dash].value = 0;
            }
        }
        at.moveTo(dash);
    }
}

Figure readFigure(TokenCursor& at, FigureContext context) {
    const Place place = at.peek().place;
    Figure figure(at.peek().value);
    at.advance();
    while (listsSizes(at) && !isBareCount(at, context)) {
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
        // "40 (44) 48": every other size in brackets
        if (at.is(TokenKind::Number) && figure.bySize.size() < context.sizes) {
            figure.bySize.push_back(at.peek().value);
            at.advance();
        }
    }
    if (figure.bySize.size() == 1) readSlashed(at, figure, context.sizes);
    const std::size_t count = figure.bySize.size();
    if (count > 1) {
        if (context.sizes == 0) context.sizes = count;
        if (context.listsScope(count)) {
            Figure all;
            all.bySize.assign(context.sizes, figure.bySize.front());
            for (std::size_t i = 0; i < count; ++i) {
                const std::size_t size = (*context.scope)[i];
                if (size < context.sizes) all.bySize[size] = figure.bySize[i];
            }
            return all;
        }
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
    const std::size_t messages = context.messages.size();
    const Place place = at.peek().place;
    const bool plus = at.previous().kind == TokenKind::Plus;
    while (at.accept(TokenKind::Dash) || at.accept(TokenKind::Equals)) {
    }
    bool bare = isBareCount(at, context);
    const bool open = at.accept(TokenKind::Open);
    StatedCount stated;
    stated.change = true;
    bool known = true;
    bool changes = false;
    // "(2 sts inc'd - 41 sts)" says both.
    do {
        const bool more = plus || at.accept(TokenKind::Plus) ||
                          (open && at.is(TokenKind::Dash) && at.is(TokenKind::Number, 1) &&
                           at.peek(1).glued && at.accept(TokenKind::Dash));
        at.skipWords({"total", "now", "for", "a", "of", "there", "are", "you", "have", "should",
                      "be", "leaving"});
        if (at.isStitchNoun() && at.isWord({"count"}, 1)) at.advance(2);  // "stitch count: 38"
        const bool named = at.previous().text == "count" || at.previous().text == "total";
        if (named) at.accept(TokenKind::Colon);
        bare = bare || named;
        known = at.isNumber();
        if (!known) break;
        Figure stitches = readFigure(at, context);
        readListed(at, stitches, context.sizes);
        known = at.acceptStitchNoun() || bare || (open && changes);
        const bool part = at.isWord({"between", "each", "per", "before", "either"});
        while (part && at.is(TokenKind::Word)) at.advance();  // "11 sts between markers"
        const bool change = acceptChange(at, open) || more || part;
        changes = change;
        at.skipWords({"rem", "remain", "remaining", "left", "in", "total", "on", "needle",
                      "needles", "now", "the", "after", "this", "row", "rnd"});
        if (!change || stated.change) stated.stitches = std::move(stitches);
        stated.change = stated.change && change;
    } while (known && (at.accept(TokenKind::Dash) || at.accept(TokenKind::Equals) ||
                       ((open || changes) &&
                        (at.accept(TokenKind::Comma) || at.accept(TokenKind::Semicolon)))));
    if (open) at.accept(TokenKind::Stop);
    const bool closed = !open || at.accept(TokenKind::Close);
    stated.place = spanning(place, at.previous().place);
    at.accept(TokenKind::Stop);
    if (known && closed && (open || at.atEnd())) return stated;
    context.messages.resize(std::min(messages, context.messages.size()));
    at.moveTo(start);
    return {};
}

}  // namespace lacewright
