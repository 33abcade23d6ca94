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
    const bool partOfName =
        at_.peek(1).glued && (at_.is(TokenKind::Word, 1) || at_.is(TokenKind::Number, 1));
    if (!at_.isWord({"a", "b", "c", "d", "e", "f"}) || partOfName) return false;
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
    if (at_.accept(TokenKind::Open)) {  // "(col A)", "(with MC)"
        at_.skipWords({"with", "using", "in"});
        if (passYarn() && at_.accept(TokenKind::Close)) return true;
        return at_.moveTo(start), false;
    }
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

// "Working (k1, p1) into each double yo": how the loops of a stretch are worked, one into one.
bool RowParser::passIntoOvers() {
    constexpr std::size_t kLongest = 12;  // tokens
    const std::size_t start = at_.position();
    at_.skipWords({"and", "but"});
    if (!at_.acceptWord({"working", "work", "making"})) return at_.moveTo(start), false;
    for (std::size_t i = 0; i < kLongest && !at_.atEnd(); ++i, at_.advance()) {
        const bool each = at_.isWord({"in", "into"}) && at_.isWord({"each", "every", "all"}, 1);
        if (!each) continue;
        bool over = false;
        for (; at_.is(TokenKind::Word) || at_.is(TokenKind::Number); at_.advance())
            over = over || at_.isWord({"yo", "yos", "dyo", "yarn", "yarnover", "yarnovers"});
        if (over) return true;
    }
    at_.moveTo(start);
    return false;
}

// "K5 in garter st": the fabric that stitches already counted make.
void RowParser::passFabric() {
    if (!at_.isWord({"in"})) return;
    for (const std::size_t ahead : {0, 1}) {
        const auto match = context_.vocabulary.match(at_.tokens(), at_.position() + ahead);
        if (match && match->term->role == TermRole::Ground)
            return at_.advance(ahead + match->tokens);
    }
}

// "Over next 2 sts": where, which the stitch itself says.
bool RowParser::passOverWhich() {
    const std::size_t start = at_.position();
    if (at_.acceptWord({"over"})) {
        at_.skipWords(
            {"the", "next", "last", "first", "these", "those", "foll", "following", "all"});
        if (at_.isNumber()) figure();
        if (at_.acceptStitchNoun()) return true;
    }
    at_.moveTo(start);
    return false;
}

// "(1 st on needle)" behind stitches bound off is one more stitch; "(including st on needle)" says
// that it has been counted.
bool RowParser::leftOnNeedle(Elements& out) {
    constexpr std::size_t kLongest = 12;  // tokens
    const auto* work = out.empty() ? nullptr : std::get_if<Working>(&out.back().what);
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    if (!at_.accept(TokenKind::Open)) return false;
    const bool including = at_.acceptWord({"including", "incl", "includes", "counting"});
    const bool one = at_.isNumber() && at_.peek().value == 1 && at_.isStitchNoun(1);
    bool needle = false;
    for (std::size_t i = 0; i < kLongest && !at_.atEnd(); ++i, at_.advance()) {
        needle = needle || at_.isWord({"needle", "bo", "off"});
        if (at_.is(TokenKind::Close)) break;
    }
    const bool boundOff = one && work != nullptr && work->term == "bo";
    if (!needle || !(including || boundOff) || !at_.accept(TokenKind::Close))
        return at_.moveTo(start), false;
    if (including) return true;
    const Term* knit = context_.vocabulary.find("k");
    out.push_back({spanning(place, at_.previous().place), working(*knit, {})});
    return true;
}

// "(purling the 5 loops of each nupp together)": what was counted as one stitch already.
bool RowParser::passHowNupps() {
    constexpr std::size_t kLongest = 14;  // tokens
    if (!at_.isWord({"purling", "knitting", "working", "p", "purl"}, 1)) return false;
    bool nupp = false;
    for (std::size_t i = 2; i < kLongest; ++i) {
        nupp = nupp || at_.isWord({"nupp", "nupps"}, i);
        if (!at_.is(TokenKind::Close, i)) continue;
        if (nupp) at_.advance(i + 1);
        return nupp;
    }
    return false;
}

// "(sk2p made)", "(eyelet row)", "(WS)": a bracket that only says what was worked before it.
bool RowParser::passMade() {
    constexpr std::size_t kLongest = 6;  // tokens
    if (!at_.is(TokenKind::Open)) return false;
    if (passHowNupps()) return true;
    bool remark = false;
    bool stitches = false;
    for (std::size_t i = 1; i <= kLongest; ++i) {
        if (at_.is(TokenKind::Close, i)) {
            const bool made = at_.isWord({"made", "completed", "formed", "worked"}, i - 1);
            if (!made && (!remark || stitches)) return false;
            at_.advance(i + 1);
            return true;
        }
        if (!at_.is(TokenKind::Word, i) && !at_.is(TokenKind::Number, i)) return false;
        remark =
            remark || at_.isWord({"row",  "rnd",      "round",  "rs",       "ws",      "side",
                                  "edge", "edging",   "border", "selvedge", "selvage", "see",
                                  "note", "optional", "front",  "back",     "sleeve",  "shoulder",
                                  "neck", "center",   "centre", "left",     "right"},
                                 i);
        const auto match = context_.vocabulary.match(at_.tokens(), at_.position() + i);
        stitches = stitches || (match && match->term->role == TermRole::Stitch);
    }
    return false;
}

// After "pass slipped stitch over": "the k st", "the k2tog", which it is passed over.
void RowParser::passWhatIsPassedOver() {
    if (at_.previous().text != "over" && !at_.acceptWord({"over"})) return;
    const std::size_t start = at_.position();
    const std::size_t bare = at_.position();
    at_.skipWords({"the", "those", "these", "both", "all", "last", "them", "it"});
    if (at_.isNumber() && at_.isStitchNoun(1)) return at_.advance(2);
    if (at_.acceptStitchNoun()) return;
    const bool ends = at_.atEnd() || at_.is(TokenKind::Comma) || at_.is(TokenKind::Semicolon) ||
                      at_.is(TokenKind::Stop) || at_.is(TokenKind::Close);
    if (at_.position() != bare && ends) return;
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
