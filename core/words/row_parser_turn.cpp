#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

// What becomes of the wraps of earlier short rows: "picking up wraps", "working the ds as one st".
bool RowParser::passWraps() {
    constexpr std::size_t kLongest = 16;  // tokens
    const std::size_t start = at_.position();
    at_.skipWords({"and", "while"});
    const bool begins =
        at_.acceptWord({"pick", "picking", "lift", "lifting", "hide", "hiding", "working",
                        "knitting", "purling", "resolve", "resolving", "close", "closing"}) ||
        (at_.isWord({"work"}) && at_.isWord({"wraps"}, 1));
    bool wraps = false;
    for (std::size_t i = 0; begins && i < kLongest && at_.is(TokenKind::Word); ++i, at_.advance())
        wraps = wraps || at_.isWord({"wrap", "wraps", "wrapped", "ds", "dss"});
    if (wraps) return true;
    at_.moveTo(start);
    return false;
}

// After "k": "wrapped st tog with its wrap", a stitch like any other. False when none stands here.
bool RowParser::passWrapped() {
    const std::size_t start = at_.position();
    at_.skipWords({"the", "next"});
    if (!at_.acceptWord({"wrapped"})) return at_.moveTo(start), false;
    at_.acceptStitchNoun();
    at_.skipWords({"tog", "together", "with", "and", "its", "the", "wrap", "as", "one"});
    return true;
}

// "Leave rem sts on a holder", "leaving the last 10 sts unworked", "sl rem sts onto a holder".
bool RowParser::passRestOnHold(Elements& out) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    at_.skipWords({"and"});
    const bool slips = at_.acceptWord({"sl", "slip", "place", "put", "placing", "slipping"});
    if (!slips && !at_.acceptWord({"leave", "leaving"})) return false;
    at_.skipWords({"the", "all"});
    if (at_.acceptWord({"rem", "remaining", "last", "other", "rest", "next"})) {
        at_.skipWords({"of", "the"});
        if (at_.isNumber()) figure();
        if (at_.acceptStitchNoun() || at_.previous().text == "the") {
            const bool unworked = at_.acceptWord({"unworked"});
            at_.skipWords({"on", "onto", "to", "a", "the", "spare", "st", "stitch", "needle",
                           "waste", "yarn", "thread", "for", "other", "side"});
            const bool holder = at_.acceptWord({"holder", "hold"}) ||
                                at_.previous().text == "needle" || at_.previous().text == "yarn" ||
                                at_.previous().text == "thread";
            const bool last = at_.atEnd() || at_.is(TokenKind::Stop) || at_.is(TokenKind::Close);
            if ((holder || unworked) && last) {
                out.push_back({place, Aside{holder ? "hold" : "turn", 0}});
                return true;
            }
            if (unworked && !slips) {
                out.push_back({place, Aside{"turn", 0}});
                return true;
            }
        }
    }
    at_.moveTo(start);
    return false;
}

// "Place next 30 sts on waste yarn": they leave the needle and are not worked.
bool RowParser::putsOnHold(Elements& out) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    const auto none = [&] { return at_.moveTo(start), false; };
    if (!at_.acceptWord({"sl", "slip", "place", "put", "leave", "transfer", "placing", "slipping"}))
        return false;
    at_.skipWords({"the", "next", "first", "following", "foll"});
    if (!at_.isNumber()) return none();
    const std::size_t messages = context_.figures.messages.size();
    const Figure count = figure();
    const bool stitches = at_.acceptStitchNoun();
    at_.skipWords({"just", "worked"});
    const bool onto = at_.acceptWord({"on", "onto", "to", "in"});
    at_.skipWords({"a", "the", "piece", "length", "of", "spare", "separate"});
    const bool yarn = at_.acceptWord({"waste", "scrap"}) && at_.acceptWord({"yarn", "thread"});
    at_.skipWords({"st", "stitch"});
    const bool holder = yarn || at_.acceptWord({"holder", "holders", "hold", "thread"});
    if (!stitches || !onto || !holder) {
        context_.figures.messages.resize(std::min(messages, context_.figures.messages.size()));
        return none();
    }
    if (at_.acceptWord({"for"})) {  // "for sleeve"
        while (at_.is(TokenKind::Word) && !at_.isNumber()) at_.advance();
    }
    Working held;
    held.term = "held";
    held.makes = 0;
    held.count = count;
    out.push_back({spanning(place, at_.previous().place), std::move(held)});
    return true;
}

// "Dropping extra loops", "letting all yos fall": loops of the row below that are not worked.
bool RowParser::dropsOvers(Elements& out) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    at_.skipWords({"and", "while"});
    const bool drops = at_.acceptWord({"dropping"});
    if (!drops && !at_.acceptWord({"letting"})) return at_.moveTo(start), false;
    bool loops = false;
    bool falls = drops;
    for (; at_.is(TokenKind::Word); at_.advance()) {
        loops = loops || at_.isWord({"loop", "loops", "wrap", "wraps", "yo", "yos", "yarnover",
                                     "yarnovers", "overs", "over"});
        falls = falls || at_.isWord({"drop", "fall"});
    }
    if (!loops || !falls) return at_.moveTo(start), false;
    out.push_back({spanning(place, at_.previous().place), Aside{std::string(kDropsOvers), 0}});
    return true;
}

}  // namespace lacewright
