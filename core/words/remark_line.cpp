#include "core/words/remark_line.h"

#include <algorithm>

#include <string_view>

#include "core/words/edit_distance.h"
#include "core/words/row_numbers.h"

namespace lacewright {

namespace {

constexpr std::size_t kLongestTitle = 5;  // words

bool hasNumber(const TokenCursor& line) {
    for (std::size_t i = 0; !line.is(TokenKind::End, i); ++i) {
        if (line.isNumber(i)) return true;
    }
    return false;
}

// "BO 40 sts loosely", "bind off all 40 sts": nothing else is worked.
bool bindsAllOff(const TokenCursor& line) {
    TokenCursor at = line;
    at.skipWords({"bind", "cast", "off", "bo", "castoff", "all", "rem", "remaining", "these"});
    if (at.isNumber()) at.advance();
    if (!at.acceptStitchNoun()) return false;
    while (at.is(TokenKind::Word) && !at.isNumber()) at.advance();
    at.accept(TokenKind::Stop);
    return at.atEnd();
}

// "C4F - sl 2 sts to cn": something else than plain stitches, and no dash after this one.
bool definesByDash(const TokenCursor& line, const TermMatch& name) {
    const bool plain = name.term->takes.with(name.number) == 1 && name.term->makes.with(0) == 1;
    if (plain) return false;
    for (std::size_t i = name.tokens + 1; !line.is(TokenKind::End, i); ++i) {
        if (line.is(TokenKind::Dash, i)) return false;
    }
    return true;
}

}  // namespace

bool isRemarkLine(const TokenCursor& line, bool first) {
    if (line.isWord({"note", "notes", "tip"}) &&
        (line.is(TokenKind::Colon, 1) || line.is(TokenKind::Stop, 1) ||
         line.is(TokenKind::Dash, 1)))
        return true;
    if (!first) return false;
    if (line.isWord({"block", "fasten", "break", "cut", "weave", "sew", "wash", "finishing", "darn",
                     "press"}))
        return true;
    const bool bindOff = (line.isWord({"bind", "cast"}) && line.isWord({"off"}, 1)) ||
                         line.isWord({"bo", "castoff"});
    return bindOff && (!hasNumber(line) || bindsAllOff(line));
}

bool isCastOnLine(const TokenCursor& line) {
    for (std::size_t i = 0; !line.is(TokenKind::End, i); ++i) {
        if (line.isWord({"co"}, i) && line.isNumber(i + 1)) return true;
        if (line.isWord({"cast"}, i) && line.isWord({"on"}, i + 1)) return line.isNumber(i + 2);
        if (!line.is(TokenKind::Word, i) && !line.is(TokenKind::Comma, i)) return false;
    }
    return false;
}

bool worksToCount(const TokenCursor& line) {
    constexpr std::size_t kFar = 6;  // tokens of "there are only 12 (14)"
    for (std::size_t i = 0; !line.is(TokenKind::End, i); ++i) {
        if (!line.isWord({"until", "till"}, i)) continue;
        bool number = false;
        for (std::size_t k = i + 1; k <= i + kFar; ++k) {
            if (number && line.isStitchNoun(k)) return true;
            number = number || line.isNumber(k);
        }
    }
    return false;
}

int plainRowsIn(const TokenCursor& line) {
    TokenCursor at = line;
    int rows = 0;
    for (;;) {
        const bool work = at.acceptWord({"work"});
        if (!work && !at.acceptWord({"k", "knit", "p", "purl"})) return 0;
        if (!at.isNumber() || !isRowWord(at, 1)) return 0;
        rows = std::min(rows + at.peek().value, kMaxRowNumber);
        at.advance(2);
        const bool even = at.acceptWord({"even"});
        if (at.acceptWord({"in"})) {
            while (at.is(TokenKind::Word) || at.is(TokenKind::Dash)) at.advance();
        } else if (work && !even) {
            return 0;
        }
        at.accept(TokenKind::Stop);
        if (at.atEnd()) return rows;
        if (!at.accept(TokenKind::Comma) && !at.acceptWord({"and"})) return 0;
        at.skipWords({"and", "then"});
    }
}

bool isGlossaryLine(const TokenCursor& line, const Vocabulary& vocabulary) {
    const auto match = vocabulary.match(line.tokens(), line.position());
    const std::size_t name = match ? match->tokens : 1;
    if (line.is(TokenKind::Equals, name)) return true;
    if (line.is(TokenKind::Colon, name) && match) return true;
    if (line.is(TokenKind::Dash, name) && match && match->tokens > 0 && definesByDash(line, *match))
        return true;
    const bool heads = line.is(TokenKind::Word) && line.is(TokenKind::Colon, 1);
    if (heads && !match && !line.isWord({"rs", "ws", "row", "rnd", "round"})) return true;
    const bool marks = line.is(TokenKind::Open) && line.is(TokenKind::Close, 1);  // "[ ] = repeat"
    return marks && line.is(TokenKind::Equals, 2);
}

bool holdsStitches(const TokenCursor& line, const Vocabulary& vocabulary) {
    bool terms = false;
    bool strange = false;
    bool starred = false;
    for (TokenCursor at = line; !at.atEnd();) {
        starred = starred || at.is(TokenKind::Star);
        const bool where = at.acceptWord({"over"});  // "over 17 sts" rather than a yarn over
        const auto match = vocabulary.match(at.tokens(), at.position());
        if (where && at.isNumber()) {
            at.advance();
            strange = true;
            continue;
        }
        if (!match) {
            strange = strange ||
                      (at.is(TokenKind::Word) && !at.isNumber() && !at.isStitchNoun() &&
                       !at.isWord({"to", "end", "across", "last", "rep", "from", "then", "and"}));
            at.advance();
            continue;
        }
        at.advance(match->tokens);
        const bool stitch = match->term->role == TermRole::Stitch;
        const bool number = match->number > 0 || (at.isNumber() && !isRowWord(at, 1));
        if (stitch && number) return true;
        terms = terms || stitch;
    }
    return terms && (starred || !strange);
}

bool saysHowOften(const TokenCursor& line) {
    bool repeats = false;
    bool often = false;
    for (std::size_t i = 0; !line.is(TokenKind::End, i); ++i) {
        repeats = repeats || line.isWord({"rep", "repeat", "repeating"}, i);
        often = often || line.isWord({"once", "twice", "thrice"}, i) ||
                (line.isNumber(i) && line.isWord({"more", "times", "time"}, i + 1));
    }
    return repeats && often;
}

bool continuesRow(const TokenCursor& line) {
    if (line.isWord({"to", "rep", "repeat", "from", "twice", "once", "times", "more", "across",
                     "around", "until", "last", "end", "ending", "sts"}))
        return true;
    if (line.isNumber() && line.isStitchNoun(1)) {
        return line.is(TokenKind::End, 2) || line.is(TokenKind::Stop, 2) ||
               line.isWord({"rem", "remain", "remaining", "left", "on", "in", "inc", "dec"}, 2);
    }
    const bool times = line.isNumber() && line.isWord({"times", "more", "time"}, 1);
    const bool mark = line.is(TokenKind::Comma) || line.is(TokenKind::Semicolon) ||
                      line.is(TokenKind::Open) || line.is(TokenKind::Close);
    return times || mark;
}

std::string nearestHeading(const TokenCursor& line) {
    // "Rwo 3", "3rd rwo:", "Row l:"
    TokenCursor at = line;
    const bool counted = at.ordinal(true) > 0;
    const bool heads = at.is(TokenKind::Colon, 1) || at.is(TokenKind::Colon, 2);
    for (const std::string_view known : {"row", "rows", "rnd", "round", "rounds"}) {
        const int apart = static_cast<int>(editDistance(at.peek().text, known, 2));
        if (apart == 1 && (hasNumber(line) || heads || counted)) return std::string(known);
        const bool measure = at.isWord({"gauge", "tension", "height", "count", "repeat"}, 1);
        if (apart == 0 && heads && !measure) return std::string(known);
    }
    if (!hasNumber(line)) return "";
    const std::string two = line.peek().text + line.peek(1).text;
    if (line.peek().text != "cast" &&
        (editDistance(two, "caston", 2) < 2 || editDistance(line.peek().text, "caston", 2) < 2)) {
        return "cast on";
    }
    return line.isWord({"cast"}) && line.isNumber(2) ? "cast on" : "";
}

bool isProseLine(const TokenCursor& line, const Vocabulary& vocabulary) {
    const bool numbered = line.is(TokenKind::Word) && line.is(TokenKind::Number, 1) &&
                          (line.is(TokenKind::Colon, 2) || line.is(TokenKind::Close, 2));
    if (numbered || !nearestHeading(line).empty()) return false;
    if (!line.is(TokenKind::Word) || line.isNumber()) return false;
    std::size_t words = 1;
    while (words < kLongestTitle && line.is(TokenKind::Word, words)) ++words;
    if (words > 1 && line.is(TokenKind::Colon, words)) return true;  // "Pattern notes: .."
    if (line.isWord({"rep", "repeat", "work", "then", "and", "with", "using", "next", "end",
                     "ending", "to", "across", "all", "inc", "dec"}))
        return false;
    return !vocabulary.match(line.tokens(), line.position());
}

}  // namespace lacewright
