#include "core/words/row_heading.h"

#include <algorithm>
#include <map>

#include "core/words/row_numbers.h"

namespace lacewright {

namespace {

bool isRoundWord(const std::string& word) {
    return word.starts_with("r") && !word.starts_with("ro") ? true : word.starts_with("round");
}

bool parseKind(TokenCursor& at, RowHeading& heading) {
    at.skipWords({"foll", "following", "remaining", "other", "the", "subsequent"});
    if (at.acceptWord({"rs"})) {
        heading.family = RowFamily::RightSide;
    } else if (at.acceptWord({"ws"})) {
        heading.family = RowFamily::WrongSide;
    } else if (at.isWord({"right", "wrong"}) && at.isWord({"side"}, 1)) {
        heading.family = at.isWord({"right"}) ? RowFamily::RightSide : RowFamily::WrongSide;
        at.advance(2);
    } else if (at.acceptWord({"even"})) {
        heading.family = RowFamily::Even;
    } else if (at.acceptWord({"odd", "uneven"})) {
        heading.family = RowFamily::Odd;
    } else if (at.acceptWord({"alt", "alternate"})) {
        heading.family = RowFamily::Every;
    } else if (const int step = at.ordinal(true)) {
        heading.family = RowFamily::Every;
        heading.step = std::max(step, 1);
    } else {
        // "every other row", the word itself already passed.
        if (at.previous().text != "other") return false;
        heading.family = RowFamily::Every;
    }
    at.accept(TokenKind::Dash);
    at.skipWords({"numbered", "alt", "alternate"});
    at.accept(TokenKind::Stop);
    if (at.is(TokenKind::Open) && at.isWord({"ws", "rs"}, 1) && at.is(TokenKind::Close, 2))
        at.advance(3);  // "all odd-numbered (WS) rows"
    return true;
}

// "through row 10"
void passFamilyEnd(TokenCursor& at, RowHeading& heading) {
    const bool row = isRowWord(at, 1);
    if (!at.isWord({"through", "thru", "to", "until"}) || !at.is(TokenKind::Number, row ? 2 : 1))
        return;
    at.advance(row ? 2 : 1);
    heading.end = std::min(at.peek().value, kMaxRowNumber);
    at.advance();
}

// "and all WS rows" after the numbers.
void parseFamily(TokenCursor& at, RowHeading& heading) {
    const std::size_t start = at.position();
    at.accept(TokenKind::Comma);
    const bool open = at.accept(TokenKind::Open);  // "Row 2 (and all WS rows)"
    const bool follows = at.acceptWord({"and"});
    const bool alternate = at.isWord({"alt", "alternate"}) && isRowWord(at, 1);
    if (follows && (alternate || at.acceptWord({"all", "every", "each", "following", "foll"})) &&
        parseKind(at, heading)) {
        if (isRowWord(at)) at.advance();
        passFamilyEnd(at, heading);
        if (!open || at.accept(TokenKind::Close)) return;
    }
    heading.family = RowFamily::None;
    at.moveTo(start);
}

// Up to the closing bracket, where only words stand before it: "(RS; inc row)".
bool closesRemark(TokenCursor& at) {
    constexpr std::size_t kLongest = 8;  // tokens
    for (std::size_t i = 0; i < kLongest; ++i) {
        if (at.is(TokenKind::Close, i)) {
            at.advance(i + 1);
            return true;
        }
        if (!at.is(TokenKind::Word, i) && !at.is(TokenKind::Comma, i) &&
            !at.is(TokenKind::Semicolon, i) && !at.is(TokenKind::Dash, i))
            return false;
    }
    return false;
}

void parseSide(TokenCursor& at, RowHeading& heading) {
    const std::size_t start = at.position();
    const bool open = at.accept(TokenKind::Open);
    std::optional<Side> side;
    if (at.acceptWord({"rs"})) {
        side = Side::Right;
    } else if (at.acceptWord({"ws"})) {
        side = Side::Wrong;
    } else if (at.isWord({"right", "wrong"}) && at.isWord({"side"}, 1)) {
        side = at.isWord({"right"}) ? Side::Right : Side::Wrong;
        at.advance(2);
    }
    at.skipWords({"row", "facing"});
    if (!side || (open && !closesRemark(at))) return at.moveTo(start);
    heading.side = side;
}

// "(inc row)", "(eyelet round)" or "- inc row" before the colon: what the row is, not its stitches.
void passRemark(TokenCursor& at) {
    const std::size_t start = at.position();
    if (at.accept(TokenKind::Open)) {
        const bool known = !acceptRowName(at).empty();
        if (closesRemark(at) && (known || at.is(TokenKind::Colon))) return;
    } else if (at.accept(TokenKind::Dash)) {
        while (at.is(TokenKind::Word) && !isRowWord(at) && at.position() < start + 4) at.advance();
        if (isRowWord(at) && at.is(TokenKind::Colon, 1)) return at.advance();
    }
    at.moveTo(start);
}

// A count of rows under one label: passes ":" "." "-" in any order.
void passMarks(TokenCursor& at) {
    while (at.accept(TokenKind::Colon) || at.accept(TokenKind::Stop) ||
           at.accept(TokenKind::Dash)) {
    }
}

void setLabel(RowHeading& heading, const std::string& word) {
    heading.round = isRoundWord(word);
    heading.label = word == "needle" ? "Needle" : heading.round ? "Rnd" : "Row";
}

bool parseNumbered(TokenCursor& at, RowHeading& heading) {
    if (at.is(TokenKind::Open) && isRowWord(at, 1) && at.is(TokenKind::Number, 2) &&
        at.is(TokenKind::Close, 3))
        at.advance();  // "(Row 3) k20"
    if (!isRowWord(at) && !(at.isWord({"r"}) && at.is(TokenKind::Number, 1) && at.peek(1).glued))
        return false;
    setLabel(heading, at.isWord({"r"}) ? "row" : at.peek().text);
    at.advance();
    at.accept(TokenKind::Stop);
    if (at.acceptWord({"no", "nr", "number"})) at.accept(TokenKind::Stop);  // "Row no. 3"
    if (at.peek().text == "#") at.advance();
    heading.numbers = parseRowNumbers(at, false);
    if (!heading.numbers.empty()) at.accept(TokenKind::Close);  // "Row 1)"
    return !heading.numbers.empty();
}

bool parseOrdinal(TokenCursor& at, RowHeading& heading) {
    heading.numbers = parseRowNumbers(at, true);
    if (heading.numbers.empty()) return false;
    // The family may stand before the word: "2nd and every alt row".
    parseFamily(at, heading);
    if (heading.family != RowFamily::None) {
        setLabel(heading, isRowWord(at) ? at.peek().text : at.previous().text);
        return true;
    }
    if (!isRowWord(at)) return false;
    setLabel(heading, at.peek().text);
    at.advance();
    return true;
}

// "Division rnd:", "Underarm row (RS):": a row called by words that only this pattern knows. Gives
// them, with the row word next; nothing is passed when no such heading stands here.
std::string acceptOwnName(TokenCursor& at) {
    constexpr std::size_t kMostWords = 3;
    std::string name;
    std::size_t words = 0;
    for (; words < kMostWords && at.is(TokenKind::Word, words) && !isRowWord(at, words); ++words) {
        if (at.isNumber(words) ||
            at.isWord({"of",    "per",  "each",  "every",   "the",    "at",   "for",  "in",
                       "to",    "on",   "rep",   "repeat",  "work",   "all",  "this", "last",
                       "first", "and",  "as",    "k",       "p",      "rs",   "ws",   "these",
                       "from",  "note", "gauge", "tension", "height", "count"},
                      words))
            return {};
        name += (words > 0 ? " " : "") + at.peek(words).text;
    }
    const bool singular = at.isWord({"row", "rnd", "round"}, words);
    std::size_t end = words + 1;
    if (at.is(TokenKind::Number, end)) ++end;
    if (at.is(TokenKind::Open, end) && at.isWord({"rs", "ws"}, end + 1)) end += 3;
    if (words == 0 || !singular || !at.is(TokenKind::Colon, end)) return {};
    at.advance(words);
    return name;
}

bool parseNamed(TokenCursor& at, RowHeading& heading) {
    std::string label;
    if (at.acceptWord({"next", "foll", "following"})) {
        label = "Next";
    } else if (at.isWord({"knit", "purl", "last", "final"}) && isRowWord(at, 1) &&
               at.is(TokenKind::Colon, 2)) {
        label = at.peek().text;
        at.advance();
    } else {
        label = acceptRowName(at);
        if (!label.empty() && !isRowWord(at)) return false;
        if (label.empty()) label = acceptOwnName(at);
        if (label.empty()) return false;
    }
    if (label == "Next" && at.isNumber() && isRowWord(at, 1)) {
        heading.nextRows = std::clamp(at.peek().value, 1, kMaxRowNumber);
        at.advance();
    }
    if (!isRowWord(at)) return false;
    setLabel(heading, at.peek().text);
    heading.label = label + (heading.round ? " rnd" : " row");
    heading.label[0] =
        static_cast<char>(std::toupper(static_cast<unsigned char>(heading.label[0])));
    heading.next = true;
    at.advance();
    // "Set-up row 1" counts on like any other.
    if (at.is(TokenKind::Number) && (at.is(TokenKind::Colon, 1) || at.is(TokenKind::Open, 1))) {
        heading.label += " " + at.peek().text;
        at.advance();
    }
    return true;
}

bool parseAll(TokenCursor& at, RowHeading& heading) {
    const bool all = at.acceptWord({"all", "every", "each"});
    if (!all && !at.isWord({"rs", "ws", "even", "odd", "alt", "alternate", "right", "wrong"}))
        return false;
    if (!parseKind(at, heading) || !isRowWord(at)) return false;
    setLabel(heading, at.peek().text);
    const bool one = at.isWord({"row", "rnd", "round"});
    const bool sided =
        heading.family == RowFamily::RightSide || heading.family == RowFamily::WrongSide;
    at.advance();
    passFamilyEnd(at, heading);
    if (!all && one && sided) {  // "RS row: k20"
        heading.side = heading.family == RowFamily::RightSide ? Side::Right : Side::Wrong;
        heading.family = RowFamily::None;
        heading.next = true;
        heading.label = "Next row";
        return true;
    }
    // "Every alternate row" without a first row: the second, fourth ...
    if (heading.family == RowFamily::Every) heading.family = RowFamily::Even;
    return true;
}

}  // namespace

std::optional<RowHeading> parseRowHeading(TokenCursor& at) {
    const std::size_t start = at.position();
    for (const auto form : {parseNumbered, parseOrdinal, parseNamed, parseAll}) {
        RowHeading heading;
        at.moveTo(start);
        if (!form(at, heading)) continue;
        if (heading.family == RowFamily::None) parseSide(at, heading);
        if (!heading.numbers.empty() && heading.family == RowFamily::None) parseFamily(at, heading);
        if (isRowWord(at)) at.advance();
        if (!heading.side) parseSide(at, heading);
        passRemark(at);
        passMarks(at);
        if (!heading.side) parseSide(at, heading);  // "Row 1: (RS) k2"
        passMarks(at);
        return heading;
    }
    at.moveTo(start);
    RowHeading bare;  // "3 & 4: k"
    bare.numbers = parseRowNumbers(at, false);
    if (!bare.numbers.empty() && (at.accept(TokenKind::Colon) || at.accept(TokenKind::Close) ||
                                  at.accept(TokenKind::Stop))) {
        bare.label = "Row";
        parseSide(at, bare);
        passMarks(at);
        return bare;
    }
    at.moveTo(start);
    return {};
}

std::string acceptRowName(TokenCursor& at) {
    const std::size_t dash = at.is(TokenKind::Dash, 1) ? 1 : 0;
    if (at.isWord({"set"}) && at.isWord({"up"}, 1 + dash)) {
        at.advance(2 + dash);
        return "set-up";
    }
    static const std::map<std::string, std::string, std::less<>> kLabels = {
        {"inc", "inc"},
        {"increase", "inc"},
        {"increasing", "inc"},
        {"dec", "dec"},
        {"decrease", "dec"},
        {"decreasing", "dec"},
        {"setup", "set-up"},
        {"foundation", "foundation"},
        {"prep", "preparation"},
        {"eyelet", "eyelet"},
        {"preparation", "preparation"},
        {"buttonhole", "buttonhole"},
        {"lace", "lace"},
        {"picot", "picot"},
        {"plain", "plain"},
        {"rib", "rib"},
        {"ribbing", "rib"},
        {"pattern", "pattern"},
        {"patt", "pattern"},
        {"border", "border"},
        {"edging", "edging"},
        {"hem", "hem"},
        {"garter", "garter"},
        {"chart", "chart"},
        {"neckband", "neckband"},
        {"turning", "turning"},
        {"joining", "joining"}};
    const auto found = at.is(TokenKind::Word) ? kLabels.find(at.peek().text) : kLabels.end();
    if (found == kLabels.end()) return {};
    at.advance();
    return found->second;
}

}  // namespace lacewright
