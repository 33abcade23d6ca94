#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

namespace {

bool acceptCableNeedle(TokenCursor& at) {
    const std::size_t start = at.position();
    at.skipWords({"the", "a", "your", "spare"});
    if (at.acceptWord({"cn", "cable"})) {
        at.accept(TokenKind::Dash);
        at.acceptWord({"needle"});
        return true;
    }
    at.moveTo(start);
    return false;
}

// "1/2 rpc": how many of the stitches lie in front and how many behind, and where they go.
std::string crossingName(int front, int behind, bool right, bool purl) {
    return std::to_string(front) + "/" + std::to_string(behind) + (right ? " r" : " l") +
           (purl ? "pc" : "c");
}

// What is worked off either needle, in working order.
struct OffNeedle {
    int takes = 0;
    int makes = 0;
    bool plain = true;  // only knit stitches and purl stitches, all alike
    std::string term;

    void add(const Working& work) {
        const int count = work.count.of(0);
        takes += work.takes * count;
        makes += work.makes * count;
        plain =
            plain && (work.term == "k" || work.term == "p") && (term.empty() || term == work.term);
        term = work.term;
    }
    bool is(const char* name) const { return plain && term == name; }
};

}  // namespace

// "sl 2 sts to cn": passed, and how many they are; 0 when it does not stand here.
int RowParser::slippedToCableNeedle() {
    const std::size_t start = at_.position();
    if (at_.acceptWord({"sl", "slip", "place", "put"})) {
        at_.skipWords({"the", "next", "first", "following"});
        int held = 1;
        if (at_.isNumber()) {
            held = std::clamp(at_.peek().value, 1, kMaxLoops);
            at_.advance();
        }
        at_.acceptStitchNoun();
        at_.skipWords({"purlwise"});
        if (at_.acceptWord({"to", "onto", "on"})) {
            at_.acceptWord({"to"});
            if (acceptCableNeedle(at_)) return held;
        }
    }
    at_.moveTo(start);
    return 0;
}

// "sl 2 sts to cn and hold in back, k2, k2 from cn": one crossing. False, and nothing is passed,
// when none stands here.
bool RowParser::cable(Elements& out) {
    const Place start = at_.peek().place;
    const int held = slippedToCableNeedle();
    if (held == 0) return false;
    const Place slipped = spanning(start, at_.previous().place);
    skipSeparators();
    at_.skipWords({"hold", "held", "holding", "leave", "leaving", "keep", "keeping", "place", "and",
                   "it", "in", "at", "to", "the"});
    const bool back = at_.acceptWord({"back"});
    if (!back && !at_.acceptWord({"front"})) {
        complain(slipped, "where the cable needle is held is not said",
                 "\"hold in back\" or \"hold in front\"");
    }
    at_.skipWords({"of", "work", "the"});

    OffNeedle first;
    OffNeedle from;
    for (bool open = true; open;) {
        skipSeparators();
        const auto match = context_.vocabulary.match(at_.tokens(), at_.position());
        if (!match || match->term->role != TermRole::Stitch) break;
        at_.advance(match->tokens);
        Working work = working(*match->term, *match);
        at_.skipWords({"the", "these", "those", "them", "next", "rem", "remaining"});
        const bool counted = match->number > 0 || at_.isNumber();
        if (match->number == 0 && at_.isNumber()) work.count = figure();
        at_.acceptStitchNoun();
        modifiers(work);
        const std::size_t before = at_.position();
        open = !(at_.acceptWord({"from", "off"}) && acceptCableNeedle(at_));
        if (open) at_.moveTo(before);
        if (!open && !counted) work.count = Figure(held);
        (open ? first : from).add(work);
    }
    const Place whole = spanning(start, at_.previous().place);
    if (from.takes != held) {
        complain(slipped, "the stitches on the cable needle are not worked off it",
                 "\"k" + std::to_string(held) + " from cn\"");
    }
    Working crossing;
    crossing.takes = first.takes + from.takes;
    crossing.makes = first.makes + from.makes;
    const OffNeedle& above = back ? first : from;
    const OffNeedle& below = back ? from : first;
    const bool purl = below.is("p");
    crossing.term = crossingName(above.takes, below.takes, back, purl);
    if (above.is("k") && (purl || below.is("k"))) {
        if (const Term* known = context_.vocabulary.find(crossing.term)) {
            crossing.rightId = known->rightId;
        }
    } else {
        crossing.term += " of " + first.term + " " + from.term;
    }
    out.push_back({whole, std::move(crossing)});
    return true;
}

}  // namespace lacewright
