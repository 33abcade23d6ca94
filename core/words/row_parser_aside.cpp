#include "core/words/row_parser.h"

namespace lacewright {

// "With MC", "change to colour B": which yarn, in words of the row's text.
bool RowParser::passYarn() {
    if (at_.acceptWord({"mc", "cc"})) {
        if (at_.is(TokenKind::Number) && at_.peek().glued) at_.advance();
        return true;
    }
    const std::size_t start = at_.position();
    const bool shade = at_.acceptWord(
        {"main", "contrast", "contrasting", "first", "second", "background", "double", "single"});
    if (at_.acceptWord({"colour", "color", "col", "shade", "yarn", "strand"})) {
        const bool letter = at_.is(TokenKind::Word) && at_.peek().text.size() == 1;
        if (!shade && (letter || at_.is(TokenKind::Number))) at_.advance();
        return true;
    }
    at_.moveTo(start);
    if (!at_.isWord({"a", "b", "c", "d", "e", "f"}) || at_.peek(1).glued) return false;
    at_.advance();
    return true;
}

bool RowParser::passNeedles() {
    if (!at_.acceptWord({"smaller", "larger", "bigger", "finer", "thicker", "thinner"}))
        return false;
    at_.acceptWord({"size"});
    return at_.acceptWord({"needle", "needles"});
}

// What is said of yarn and needles changes no count: "with MC", "using smaller needles".
bool RowParser::passAside() {
    const std::size_t start = at_.position();
    if (at_.acceptWord({"change", "changing", "switch", "switching"})) {
        if (!at_.acceptWord({"to"})) return at_.moveTo(start), false;
    } else if (!at_.acceptWord({"with", "using", "in", "join", "joining"})) {
        return false;
    }
    at_.skipWords({"the", "to"});
    const bool side = at_.acceptWord({"rs", "ws"}) ||
                      (at_.acceptWord({"right", "wrong"}) && at_.acceptWord({"side"}));
    if (side && at_.acceptWord({"facing"})) return true;
    if (passYarn() || passNeedles()) return true;
    at_.moveTo(start);
    return false;
}

// "(sk2p made)": a bracket that only says what the stitches before it are.
bool RowParser::passMade() {
    constexpr std::size_t kLongest = 6;  // tokens
    if (!at_.is(TokenKind::Open)) return false;
    for (std::size_t i = 1; i <= kLongest; ++i) {
        if (at_.is(TokenKind::Close, i)) {
            if (!at_.isWord({"made", "completed", "formed", "worked"}, i - 1)) return false;
            at_.advance(i + 1);
            return true;
        }
        if (!at_.is(TokenKind::Word, i) && !at_.is(TokenKind::Number, i)) return false;
    }
    return false;
}

// After "pass slipped stitch over": "the k st", "the k2tog", which it is passed over.
void RowParser::passWhatIsPassedOver() {
    if (at_.previous().text != "over") return;
    const std::size_t start = at_.position();
    at_.skipWords({"the", "those", "these", "both", "all", "last"});
    if (at_.isNumber() && at_.isStitchNoun(1)) return at_.advance(2);
    if (at_.acceptWord({"k", "knit", "knitted", "p", "purl", "purled", "worked"})) {
        if (at_.acceptStitchNoun()) return;
        at_.moveTo(start);
        at_.acceptWord({"the"});
    }
    const auto match = context_.vocabulary.match(at_.tokens(), at_.position());
    if (match && match->term->makes.with(match->number) == 1 &&
        match->term->takes.with(match->number) > 1) {
        const bool named = at_.position() != start;
        at_.advance(match->tokens);
        const bool noun = at_.acceptStitchNoun();
        if (named || noun || at_.atEnd() || skipSeparators() || at_.is(TokenKind::Close)) return;
    }
    at_.moveTo(start);
}

}  // namespace lacewright
