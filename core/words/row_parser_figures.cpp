#include <algorithm>

#include "core/base/text.h"
#include "core/words/figure.h"
#include "core/words/row_parser.h"

namespace lacewright {

Figure RowParser::figure() {
    return readFigure(at_, context_.figures);
}

// "3 times", "3 more times", "twice", "x 3". Nothing is passed when none stands here. `tail` is
// told of "more" and "in all".
std::optional<Figure> RowParser::times(Tail& tail) {
    const std::size_t start = at_.position();
    if (!at_.accept(TokenKind::Open)) return plainTimes(tail);
    // "(3 times)"
    const std::size_t messages = context_.figures.messages.size();
    Tail inner;
    auto count = plainTimes(inner);
    if (count && at_.accept(TokenKind::Close)) {
        tail = inner;
        return count;
    }
    context_.figures.messages.resize(std::min(messages, context_.figures.messages.size()));
    at_.moveTo(start);
    return {};
}

// The same after a bracket or a closed star, from which a mark may part it: "(yo, ssk) - 3 times".
std::optional<Figure> RowParser::timesApart(Tail& tail) {
    if (auto count = times(tail)) return count;
    const std::size_t start = at_.position();
    const bool product = at_.is(TokenKind::Star) && at_.peek().value == 1 &&
                         at_.is(TokenKind::Number, 1) &&
                         (at_.is(TokenKind::Comma, 2) || at_.is(TokenKind::Semicolon, 2) ||
                          at_.is(TokenKind::Stop, 2) || at_.is(TokenKind::End, 2));
    if (product) {  // "(yo, ssk) * 3"
        at_.advance();
        return figure();
    }
    if (at_.accept(TokenKind::Dash) || at_.accept(TokenKind::Comma) ||
        at_.accept(TokenKind::Semicolon) || at_.accept(TokenKind::Colon)) {
        if (auto count = times(tail)) return count;
    }
    at_.moveTo(start);
    return {};
}

std::optional<Figure> RowParser::plainTimes(Tail& tail) {
    const std::size_t start = at_.position();
    const auto qualify = [this, &tail] {
        at_.accept(TokenKind::Comma);
        const std::size_t before = at_.position();
        if (at_.acceptWord({"more", "again", "additional", "further"})) {
            tail.more = true;
        } else if (at_.acceptWord({"altogether", "total"})) {
            tail.inAll = true;
        } else if (at_.isWord({"in"}) && at_.isWord({"all", "total"}, 1)) {
            at_.advance(2);
            tail.inAll = true;
        } else if (at_.previous().kind == TokenKind::Comma) {
            at_.moveTo(before - 1);
        }
    };
    if (at_.acceptWord({"once"})) {
        qualify();
        return Figure(1);
    }
    if (at_.acceptWord({"twice"})) {
        qualify();
        return Figure(2);
    }
    if (at_.acceptWord({"thrice"})) {
        qualify();
        return Figure(3);
    }
    const bool sign = at_.accept(TokenKind::Cross) || at_.acceptWord({"x"});
    if (at_.isNumber()) {
        const std::size_t messages = context_.figures.messages.size();
        Figure count = figure();
        if (sign) return count;
        tail.more = at_.acceptWord({"more", "additional", "further", "extra"});
        if (at_.acceptWord({"times", "time", "x", "repeats", "reps"}) ||
            at_.accept(TokenKind::Cross)) {
            qualify();
            return count;
        }
        tail.more = false;
        context_.figures.messages.resize(messages);
    }
    at_.moveTo(start);
    return {};
}

// "A times", "A times in all", where the pattern names A.
bool RowParser::namedTimes(Tail& tail) {
    const auto& counts = context_.counts;
    const auto named = std::find_if(counts.begin(), counts.end(), [this](const std::string& name) {
        return at_.is(TokenKind::Word) && lowerAscii(name) == at_.peek().text;
    });
    if (named == counts.end() || !at_.isWord({"times"}, 1)) return false;
    at_.advance(2);
    if (at_.isWord({"in"}) && at_.isWord({"all"}, 1)) at_.advance(2);
    tail.named = static_cast<std::size_t>(named - counts.begin());
    return true;
}

RowParser::Tail RowParser::parseTail() {
    Tail tail;
    at_.accept(TokenKind::Comma);
    at_.accept(TokenKind::Colon);
    if (at_.is(TokenKind::Semicolon) && at_.isWord({"to", "until", "across"}, 1)) at_.advance();
    at_.skipWords({"all", "for", "the"});
    if (parseExtent(tail) || namedTimes(tail)) return tail;
    if (at_.acceptWord({"a"}) && at_.acceptWord({"total"}) && at_.acceptWord({"of"}))
        tail.inAll = true;
    if (auto count = times(tail)) {
        tail.times = std::move(*count);
        return tail;
    }
    if (at_.previous().kind == TokenKind::Comma) at_.moveTo(at_.position() - 1);
    return tail;
}

}  // namespace lacewright
