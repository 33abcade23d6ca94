#include <algorithm>

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

}  // namespace lacewright
