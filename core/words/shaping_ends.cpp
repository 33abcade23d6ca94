#include "core/words/shaping_ends.h"

namespace lacewright {

namespace {

// "the marker", "each m" some words on.
bool saysMarker(const TokenCursor& at, std::size_t ahead) {
    for (std::size_t i = ahead; i < ahead + 4; ++i) {
        if (at.isWord({"marker", "markers", "m", "center", "centre", "st", "sts", "stitch"}, i))
            return true;
    }
    return false;
}

// "P to end", "work even in patt": what is worked from end to end.
std::string acceptBetween(TokenCursor& at) {
    std::string between = "asis";
    if (at.acceptWord({"k", "knit"})) {
        between = "k";
    } else if (at.acceptWord({"p", "purl"})) {
        between = "p";
    } else {
        at.skipWords({"work", "working", "even", "in", "patt", "pattern"});
    }
    at.skipWords({"across", "to", "end", "all", "sts", "rest", "the", "row", "of"});
    return between;
}

}  // namespace

void appendWords(std::vector<Token>& to, std::string_view words, const Place& place) {
    for (Token word : tokenize(words)) {
        if (word.kind == TokenKind::End) break;
        word.place = place;
        to.push_back(std::move(word));
    }
}

AtEnds acceptAtEnds(TokenCursor& at) {
    const std::size_t start = at.position();
    AtEnds shaping;
    if (at.isWord({"k"}) && at.is(TokenKind::Number, 1) && at.peek(1).value == 2 &&
        at.isWord({"tog"}, 2)) {
        shaping.stitch = "k2tog";
        at.advance(3);
    } else {
        const bool inc = at.acceptWord({"inc", "increase", "increasing"});
        const bool dec = !inc && at.acceptWord({"dec", "decrease", "decreasing"});
        const bool make = !inc && !dec && at.acceptWord({"m", "make"});
        const bool one = !at.isNumber() || at.peek().value == 1;
        if (at.isNumber()) at.advance();
        if (one && (inc || dec || make)) shaping.stitch = inc ? "inc 1" : dec ? "k2tog" : "m1";
    }
    at.acceptStitchNoun();
    at.acceptWord({"at", "in"});
    at.skipWords({"the"});
    if (at.isWord({"first"}) && at.isWord({"and"}, 1) && at.isWord({"last"}, 2) &&
        at.isStitchNoun(3)) {
        at.advance(4);
        shaping.beginning = shaping.end = true;
    } else if (at.acceptWord({"each", "both"}) &&
               at.acceptWord({"end", "ends", "edge", "edges", "side", "sides"}) &&
               !(at.isWord({"of"}) && saysMarker(at, 1))) {
        shaping.beginning = shaping.end = true;
    } else if (at.is(TokenKind::Word) && at.isWord({"edge"}, 1)) {  // "at neck edge"
        shaping.beginning = true;
        at.advance(2);
    } else if (at.acceptWord({"beg", "beginning", "start"})) {
        shaping.beginning = true;
    } else if (at.acceptWord({"end"})) {
        shaping.end = true;
    }
    if (shaping.stitch.empty() || !(shaping.beginning || shaping.end))
        return at.moveTo(start), AtEnds();
    if (at.acceptWord({"of"}))
        at.skipWords({"the", "this", "last", "ws", "rs", "row", "rnd", "round"});
    return shaping;
}

std::string shapedRow(const AtEnds& ends, const std::string& between) {
    const std::string& stitch = ends.stitch;
    const bool made = stitch == "m1";  // one stitch in from the edge
    std::string row;
    if (ends.beginning) row += (made ? between + " 1, m1" : stitch) + ", ";
    row += between +
           (ends.end ? stitch == "k2tog" ? " to last 2 sts, " : " to last st, " : " to end, ");
    if (ends.end) row += (made ? "m1, " + between + " 1" : stitch) + ", ";
    return row;
}

void spellOutEachEnd(std::vector<Token>& body) {
    TokenCursor at(body);
    const Place place = at.peek().place;
    if (at.isWord({"keeping", "keep"})) {  // "keeping patt correct, dec 1 st at each end"
        while (at.is(TokenKind::Word)) at.advance();
        at.accept(TokenKind::Comma);
    }
    AtEnds ends = acceptAtEnds(at);
    const bool endsFirst = !ends.stitch.empty();
    if (endsFirst) at.accept(TokenKind::Comma);
    const std::string between = acceptBetween(at);
    if (!endsFirst) {
        at.accept(TokenKind::Comma);
        at.skipWords({"and"});
        ends = acceptAtEnds(at);
        if (ends.stitch.empty()) return;
    }
    if (!at.accept(TokenKind::Stop)) at.accept(TokenKind::Colon);
    // Nothing but a stated count may follow.
    if (!at.atEnd() && !at.is(TokenKind::Open) && !at.is(TokenKind::Dash) && !at.isNumber()) return;
    std::vector<Token> spelled;
    appendWords(spelled, shapedRow(ends, between), place);
    spelled.insert(spelled.end(), body.begin() + static_cast<std::ptrdiff_t>(at.position()),
                   body.end());
    body = std::move(spelled);
}

}  // namespace lacewright
