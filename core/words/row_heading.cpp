#include "core/words/row_heading.h"

#include <algorithm>

namespace lacewright {

namespace {

bool isRowWord(const TokenCursor& at, std::size_t ahead = 0) {
    return at.isWord({"row", "rows", "rnd", "rnds", "round", "rounds", "needle"}, ahead);
}

bool isRoundWord(const std::string& word) {
    return word.starts_with("r") && !word.starts_with("ro") ? true : word.starts_with("round");
}

void addRange(std::vector<int>& numbers, int to, int step) {
    if (numbers.empty()) return;
    for (int n = numbers.back() + step; n <= std::min(to, kMaxRowNumber); n += step)
        numbers.push_back(n);
}

int numberOrOrdinal(TokenCursor& at, bool ordinals) {
    if (ordinals) return at.ordinal(true);
    if (!at.is(TokenKind::Number)) return 0;
    const int value = at.peek().value;
    at.advance();
    return value;
}

// "1", "1-4", "1 to 4", "1, 3 and 5".
std::vector<int> parseNumbers(TokenCursor& at, bool ordinals) {
    std::vector<int> numbers;
    const auto push = [&numbers](int n) { numbers.push_back(std::min(n, kMaxRowNumber)); };
    const int first = numberOrOrdinal(at, ordinals);
    if (first == 0) return numbers;
    push(first);
    for (;;) {
        const std::size_t start = at.position();
        const bool range = at.accept(TokenKind::Dash) || at.acceptWord({"to", "through", "thru"});
        if (!range) {
            at.accept(TokenKind::Comma);
            at.acceptWord({"and"});
        }
        if (range && ordinals) at.skipWords({"the"});
        const bool moved = at.position() != start;
        const int n = moved ? numberOrOrdinal(at, ordinals) : 0;
        if (n == 0) {
            at.moveTo(start);
            return numbers;
        }
        if (range) {
            addRange(numbers, n, 1);
        } else {
            push(n);
        }
    }
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
    return true;
}

// "and all WS rows" after the numbers.
void parseFamily(TokenCursor& at, RowHeading& heading) {
    const std::size_t start = at.position();
    at.accept(TokenKind::Comma);
    if (at.acceptWord({"and"}) && at.acceptWord({"all", "every", "each", "following", "foll"}) &&
        parseKind(at, heading)) {
        if (isRowWord(at)) at.advance();
        return;
    }
    heading.family = RowFamily::None;
    at.moveTo(start);
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
    if (!side || (open && !at.accept(TokenKind::Close))) return at.moveTo(start);
    heading.side = side;
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
    if (!isRowWord(at) && !(at.isWord({"r"}) && at.is(TokenKind::Number, 1) && at.peek(1).glued))
        return false;
    setLabel(heading, at.isWord({"r"}) ? "row" : at.peek().text);
    at.advance();
    at.accept(TokenKind::Stop);
    heading.numbers = parseNumbers(at, false);
    if (!heading.numbers.empty()) at.accept(TokenKind::Close);  // "Row 1)"
    return !heading.numbers.empty();
}

bool parseOrdinal(TokenCursor& at, RowHeading& heading) {
    heading.numbers = parseNumbers(at, true);
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

bool parseNamed(TokenCursor& at, RowHeading& heading) {
    std::string label;
    if (at.acceptWord({"next", "foll", "following"})) {
        label = "Next";
    } else if (at.acceptWord({"setup", "foundation", "preparation", "prep", "inc", "increase",
                              "dec", "decrease"})) {
        label = at.previous().text;
    } else if (at.isWord({"set"}) && at.is(TokenKind::Dash, 1) && at.isWord({"up"}, 2)) {
        at.advance(3);
        label = "set-up";
    } else {
        return false;
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
    if (at.is(TokenKind::Number) && (at.is(TokenKind::Colon, 1) || at.is(TokenKind::Open, 1)))
        at.advance();
    return true;
}

bool parseAll(TokenCursor& at, RowHeading& heading) {
    const bool all = at.acceptWord({"all", "every", "each"});
    if (!all && !at.isWord({"rs", "ws", "even", "odd", "alt", "alternate", "right", "wrong"}))
        return false;
    if (!parseKind(at, heading) || !isRowWord(at)) return false;
    setLabel(heading, at.peek().text);
    at.advance();
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
        parseSide(at, heading);
        passMarks(at);
        return heading;
    }
    at.moveTo(start);
    if (at.is(TokenKind::Number) &&
        (at.is(TokenKind::Colon, 1) || at.is(TokenKind::Close, 1) || at.is(TokenKind::Stop, 1))) {
        RowHeading heading;
        heading.numbers = {at.peek().value};
        heading.label = "Row";
        at.advance(2);
        parseSide(at, heading);
        passMarks(at);
        return heading;
    }
    return {};
}

int parseAtBeginnings(std::vector<Token>& line) {
    TokenCursor at(line);
    for (; !at.atEnd(); at.advance()) {
        const std::size_t start = at.position();
        if (!at.acceptWord({"at"})) continue;
        at.skipWords({"the"});
        const bool beginning = at.acceptWord({"beg", "beginning", "start"});
        at.accept(TokenKind::Stop);
        at.skipWords({"of", "the"});
        if (beginning && at.acceptWord({"next", "foll", "following"}) && at.isNumber() &&
            isRowWord(at, 1)) {
            const int rows = std::clamp(at.peek().value, 1, kMaxRowNumber);
            std::vector<Token> one(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(start));
            for (Token word : tokenize(", asis to end ,")) {
                if (word.kind == TokenKind::End) break;
                word.place = line[start].place;
                word.glued = false;
                one.push_back(std::move(word));
            }
            one.insert(one.end(), line.begin() + static_cast<std::ptrdiff_t>(at.position()) + 2,
                       line.end());
            line = std::move(one);
            return rows;
        }
        at.moveTo(start);
    }
    return 0;
}

std::optional<RowsAgainWords> parseRowsAgain(TokenCursor& at) {
    const std::size_t start = at.position();
    RowsAgainWords words;
    const bool repeat = at.acceptWord({"rep", "repeat", "work"});
    at.accept(TokenKind::Stop);
    const bool from = at.acceptWord({"from"});
    at.skipWords({"the", "these", "this", "those"});
    if (repeat && at.acceptWord({"last", "previous"})) {
        words.count = at.isNumber() ? at.peek().value : 1;
        if (at.isNumber()) at.advance();
    } else if (repeat && at.isNumber() && isRowWord(at, 1)) {  // "these 4 rows"
        words.count = at.peek().value;
        at.advance();
    }
    const bool ordinals = at.ordinal(false) > 0;
    if (words.count == 0 && !ordinals && !isRowWord(at)) return at.moveTo(start), std::nullopt;
    if (!ordinals && !isRowWord(at)) return at.moveTo(start), std::nullopt;
    if (!ordinals) at.advance();
    if (from) at.accept(TokenKind::Colon);
    if (words.count == 0) {
        const std::vector<int> numbers = parseNumbers(at, ordinals);
        if (numbers.empty()) return at.moveTo(start), std::nullopt;
        words.first = numbers.front();
        words.last = from ? 0 : numbers.back();
        if (ordinals && isRowWord(at)) at.advance();
    }
    if (!repeat && !at.acceptWord({"form", "forms", "are", "make"}))
        return at.moveTo(start), std::nullopt;
    if (!repeat) return words;
    if (at.acceptWord({"once"}))
        words.times = 1;
    else if (at.acceptWord({"twice"}))
        words.times = 2;
    else if (at.isNumber()) {
        words.times = at.peek().value;
        at.advance();
    }
    if (words.times) {
        words.more = at.acceptWord({"more"});
        at.skipWords({"times", "time", "x"});
        words.more = at.acceptWord({"more"}) || words.more;
    }
    return words;
}

}  // namespace lacewright
