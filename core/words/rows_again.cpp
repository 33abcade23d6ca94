#include "core/words/rows_again.h"

#include <algorithm>

#include "core/words/how_often.h"
#include "core/words/row_heading.h"
#include "core/words/row_numbers.h"

namespace lacewright {

namespace {

// "every RS row", "every foll 4th row", "every 6 rows": one row in how many; 0, and nothing is
// passed, when none stands here.
int acceptEvery(TokenCursor& at) {
    const std::size_t start = at.position();
    at.acceptWord({"on", "in"});
    if (!at.acceptWord({"every", "each"})) return at.moveTo(start), 0;
    at.skipWords({"foll", "following"});
    int every = 1;
    if (at.acceptWord({"rs", "ws", "other", "alt", "alternate", "right", "wrong"})) {
        at.acceptWord({"side"});
        every = 2;
    } else if (const int step = at.ordinal(true)) {
        every = step;
    } else if (at.isNumber() && isRowWord(at, 1)) {
        every = at.peek().value;
        at.advance();
    }
    if (!isRowWord(at)) return at.moveTo(start), 0;
    at.advance();
    return std::max(every, 1);
}

// "Rep Dec row every RS row 5 more times. 28 sts"; `label`: of the row spoken of before, "then
// every 4th row 3 times". Nothing is passed when no such sentence stands here.
std::optional<RowsAgainWords> readNamedAgain(TokenCursor& at, FigureContext context,
                                             const std::string& label) {
    const std::size_t start = at.position();
    RowsAgainWords words;
    words.place = at.peek().place;
    words.label = label;
    at.skipWords({"then", "now", "next", "continue", "cont", "to", "and"});
    const bool verb = at.acceptWord({"rep", "repeat", "work", "repeating"});
    at.skipWords({"the", "this"});
    if (verb) {
        words.label = acceptRowName(at);
        if (words.label.empty() || !isRowWord(at)) return at.moveTo(start), std::nullopt;
        at.advance();
    }
    const int every = acceptEvery(at);
    if (words.label.empty() || (!verb && every == 0)) return at.moveTo(start), std::nullopt;
    words.every = std::max(every, 1);
    readOften(at, words, context);
    if (const int later = every == 0 ? acceptEvery(at) : 0) words.every = later;
    readUntil(at, words, context);
    const std::size_t end = at.position();
    if (!at.accept(TokenKind::Comma)) at.accept(TokenKind::Stop);
    if (const auto stated = readStatedCount(at, context)) {
        const bool open = !words.times && !words.until && every > 0;
        (open ? words.until : words.stated) = stated->stitches;
        words.statedPlace = stated->place;
    } else {
        at.moveTo(end);
    }
    if (!words.times && !words.until) {
        if (every > 0) return at.moveTo(start), std::nullopt;
        words.times = Figure(1);
    }
    return words;
}

// `again`: a sentence of this kind goes before, so that "then row 1 once" needs no verb.
std::optional<RowsAgainWords> readRowsAgain(TokenCursor& at, FigureContext context, bool again) {
    const std::size_t start = at.position();
    RowsAgainWords words;
    words.place = at.peek().place;
    std::size_t verb = 0;  // "continue to rep", "then rep"
    while (at.isWord({"then", "now", "next", "continue", "cont", "to", "and"}, verb)) ++verb;
    if (at.isWord({"rep", "repeat", "work", "repeating"}, verb)) at.advance(verb);
    const bool repeat = at.acceptWord({"rep", "repeat", "work", "repeating"});
    at.accept(TokenKind::Stop);
    const bool from = at.acceptWord({"from"});
    const bool thisRow = at.isWord({"this"}) && isRowWord(at, 1);
    at.skipWords({"the", "these", "this", "those"});
    if (repeat && at.acceptWord({"last", "previous"})) {
        words.count = at.isNumber() ? at.peek().value : 1;
        if (at.isNumber()) at.advance();
    } else if (at.isNumber() && isRowWord(at, 1) && at.position() != start) {  // "these 4 rows"
        words.count = at.peek().value;
        at.advance();
    } else if (repeat && thisRow) {
        words.count = 1;
    }
    const bool ordinals = at.ordinal(false) > 0;
    if (!ordinals && !isRowWord(at)) return at.moveTo(start), std::nullopt;
    if (!ordinals) at.advance();
    if (from) at.accept(TokenKind::Colon);
    if (words.count == 0) {
        const std::vector<int> numbers = parseRowNumbers(at, ordinals);
        if (numbers.empty()) return at.moveTo(start), std::nullopt;
        words.first = numbers.front();
        words.last = from ? 0 : numbers.back();
        if (ordinals && isRowWord(at)) at.advance();
    }
    words.named = !repeat && at.acceptWord({"form", "forms", "are", "make", "set", "establish"});
    if (words.named) {
        if (at.acceptWord({"repeated", "worked"})) readOften(at, words, context);
        return words;
    }
    if (at.is(TokenKind::Comma) && (at.isNumber(1) || at.isWord({"once", "twice"}, 1)))
        at.advance();  // "rep rows 1 and 2, 3 more times"
    readOften(at, words, context);
    if (!repeat && !(again && words.times)) return at.moveTo(start), std::nullopt;
    readUntil(at, words, context);
    const std::size_t end = at.position();
    if (!at.accept(TokenKind::Comma)) at.accept(TokenKind::Stop);
    if (const auto stated = readStatedCount(at, context)) {
        words.stated = stated->stitches;
        words.statedPlace = stated->place;
    } else {
        at.moveTo(end);
    }
    return words;
}

}  // namespace

std::vector<RowsAgainWords> parseRowsAgain(TokenCursor& at, FigureContext context) {
    std::vector<RowsAgainWords> all;
    for (;;) {
        auto words = readNamedAgain(at, context, all.empty() ? std::string() : all.back().label);
        if (!words) words = readRowsAgain(at, context, !all.empty());
        if (!words) break;
        all.push_back(std::move(*words));
        while (at.accept(TokenKind::Comma) || at.accept(TokenKind::Semicolon) ||
               at.accept(TokenKind::Stop) || at.acceptWord({"then", "and"})) {
        }
    }
    return all;
}

}  // namespace lacewright
