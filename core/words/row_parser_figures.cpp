#include <algorithm>

#include "core/base/text.h"
#include "core/words/figure.h"
#include "core/words/row_parser.h"

namespace lacewright {

namespace {

Figure sumOf(const Figure& a, const Figure& b) {
    const std::size_t sizes = std::max(a.bySize.size(), b.bySize.size());
    Figure sum;
    sum.bySize.clear();
    for (std::size_t i = 0; i < sizes; ++i)
        sum.bySize.push_back(std::min(kMaxFigure, a.of(i) + b.of(i)));
    return sum;
}

}  // namespace

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

// "to end", "across", "to last 2 sts", "until 2 sts remain", "to marker".
bool RowParser::parseExtent(Tail& tail) {
    const std::size_t start = at_.position();
    if (at_.acceptWord({"across", "around", "round", "along", "throughout"})) {
        at_.skipWords({"the", "row", "rnd", "round", "all", "sts", "stitches"});
        // "across to last 3 sts" says how far.
        const std::size_t far = at_.position();
        if (at_.isWord({"to", "until", "till"}) && parseExtent(tail)) return true;
        at_.moveTo(far);
        tail.toEnd = true;
        return true;
    }
    if (at_.acceptWord({"until", "till"})) {
        parseUntil(tail);
        return true;
    }
    if (bracketedExtent(tail)) return true;
    if (at_.acceptWord({"all"}) && at_.acceptWord({"but"})) {
        at_.skipWords({"the"});
        if (parseLast(tail)) return true;
    }
    at_.moveTo(start);
    at_.acceptWord({"up"});
    if (!at_.acceptWord({"to"})) return at_.moveTo(start), false;
    at_.skipWords({"the", "within", "next"});
    if (at_.acceptWord({"end", "ends", "bor", "eor"})) {
        if (at_.acceptWord({"of"})) at_.skipWords({"the", "row", "rnd", "round", "needle"});
        tail.toEnd = true;
        return true;
    }
    if (parseLandmark(tail)) return true;
    if (parseLast(tail)) return true;
    if (at_.isNumber()) {  // "to within 3 sts of the end", "to 3 sts before end"
        const Figure leaves = figure();
        if (at_.acceptStitchNoun() && (at_.acceptWord({"of", "from", "before"}))) {
            at_.skipWords({"the", "end", "row", "rnd", "round", "of", "next", "bor", "eor"});
            if (parseLandmark(tail)) {
                tail.before = leaves;
            } else {
                // "to 2 sts before the last 5 sts"
                const bool further = parseLast(tail);
                tail.leaves = further ? sumOf(leaves, *tail.leaves) : leaves;
            }
            return true;
        }
    }
    at_.moveTo(start);
    return false;
}

// "m", "centre st", "middle 3 sts", "bound-off sts".
bool RowParser::parseLandmark(Tail& tail) {
    if (acceptMarker()) {
        tail.to = Landmark::Marker;
        return true;
    }
    const std::size_t start = at_.position();
    if (at_.acceptWord({"centre", "center", "middle", "central"})) {
        if (at_.isNumber()) tail.stitches = figure();
        if (at_.acceptStitchNoun()) {
            tail.to = Landmark::Centre;
            return true;
        }
    } else if (at_.acceptWord({"bound", "cast", "bo"})) {
        at_.accept(TokenKind::Dash);
        at_.acceptWord({"off"});
        if (at_.acceptStitchNoun() || at_.acceptWord({"edge", "gap"})) {
            tail.to = Landmark::BoundOff;
            return true;
        }
    } else if (at_.acceptWord({"buttonhole"})) {
        tail.to = Landmark::BoundOff;
        return true;
    } else {
        at_.skipWords({"last", "previous"});
        const bool wrapped = at_.acceptWord({"wrapped", "wrap", "turn", "turning", "gap"});
        if (wrapped) {
            if (!at_.acceptStitchNoun()) at_.acceptWord({"point"});
            tail.to = Landmark::Turned;
            return true;
        }
    }
    at_.moveTo(start);
    return false;
}

// "next m", "first marker", "marker A"; always the next one that comes.
bool RowParser::acceptMarker() {
    const std::size_t start = at_.position();
    at_.skipWords({"first", "second", "third", "last", "next", "other"});
    if (at_.acceptWord({"marker", "markers", "m", "mkr"})) {
        at_.acceptWord({"a", "b", "c"});
        return true;
    }
    at_.moveTo(start);
    return false;
}

// "(to end)"
bool RowParser::bracketedExtent(Tail& tail) {
    const std::size_t start = at_.position();
    const std::size_t messages = context_.figures.messages.size();
    if (at_.accept(TokenKind::Open) &&
        at_.isWord({"to", "across", "around", "until", "till", "round"})) {
        Tail inner;
        if (parseExtent(inner) && at_.accept(TokenKind::Close)) {
            tail = inner;
            return true;
        }
    }
    context_.figures.messages.resize(std::min(messages, context_.figures.messages.size()));
    at_.moveTo(start);
    return false;
}

// "last 2 sts" after "to"; "last st" is one.
bool RowParser::parseLast(Tail& tail) {
    if (!at_.acceptWord({"last", "final", "remaining"})) return false;
    Figure leaves(1);
    if (at_.isNumber()) leaves = figure();
    at_.acceptStitchNoun();
    tail.leaves = leaves;
    return true;
}

// After "until": "2 sts remain", "there are 2 sts left", "the end", "last 2 sts".
void RowParser::parseUntil(Tail& tail) {
    at_.skipWords({"there", "are", "only", "the", "you", "have", "is", "but", "last"});
    if (at_.acceptWord({"end"})) {
        at_.skipWords({"of", "the", "row", "rnd", "round"});
        tail.toEnd = true;
    } else if (at_.isNumber()) {
        const Figure many = figure();
        at_.acceptStitchNoun();
        const std::size_t start = at_.position();
        at_.skipWords({"are", "remain", "on", "the"});
        if (at_.acceptWord({"right", "rh", "righthand"})) {
            at_.accept(TokenKind::Dash);
            at_.skipWords({"hand", "needle"});
            tail.to = Landmark::Made;
            tail.stitches = many;
            return;
        }
        at_.moveTo(start);
        tail.leaves = many;
        at_.skipWords({"remain", "remains", "remaining", "rem", "left", "are", "is", "before",
                       "from", "at", "on", "the", "end", "needle", "of", "row", "rnd", "bor",
                       "eor"});
    } else {
        complain(at_.peek().place, "how far is not said", "the end, or how many stitches remain");
    }
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
