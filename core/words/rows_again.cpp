#include "core/words/rows_again.h"

#include <algorithm>

#include "core/words/row_numbers.h"

namespace lacewright {

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

namespace {

void readOften(TokenCursor& at, RowsAgainWords& words, FigureContext context) {
    if (at.acceptWord({"once"})) {
        words.times = Figure(1);
    } else if (at.acceptWord({"twice"})) {
        words.times = Figure(2);
    } else if (at.isNumber()) {
        const std::size_t start = at.position();
        const std::size_t messages = context.messages.size();
        Figure times = readFigure(at, context);
        if (at.isStitchNoun() || at.isWord({"cm", "in", "inches", "mm"})) {  // a count or a length
            at.moveTo(start);
            context.messages.resize(messages);
        } else {
            words.times = std::move(times);
        }
    }
    if (words.times) at.skipWords({"more", "times", "time", "x", "again"});
}

// "until 10 sts remain"; other ends, such as a length, say nothing about the count.
void readUntil(TokenCursor& at, RowsAgainWords& words, FigureContext context) {
    const std::size_t start = at.position();
    at.accept(TokenKind::Comma);
    if (at.acceptWord({"until", "till"})) {
        at.skipWords({"there", "are", "only", "you", "have"});
        if (at.isNumber()) {
            Figure stitches = readFigure(at, context);
            if (at.acceptStitchNoun()) {
                words.until = std::move(stitches);
                at.skipWords({"rem", "remain", "remaining", "left", "are", "on", "the", "needle",
                              "needles", "in", "total"});
                return;
            }
        }
    }
    at.moveTo(start);
}

// `again`: a sentence of this kind goes before, so that "then row 1 once" needs no verb.
std::optional<RowsAgainWords> readRowsAgain(TokenCursor& at, FigureContext context, bool again) {
    const std::size_t start = at.position();
    RowsAgainWords words;
    words.place = at.peek().place;
    const bool repeat = at.acceptWord({"rep", "repeat", "work"});
    at.accept(TokenKind::Stop);
    const bool from = at.acceptWord({"from"});
    at.skipWords({"the", "these", "this", "those"});
    if (repeat && at.acceptWord({"last", "previous"})) {
        words.count = at.isNumber() ? at.peek().value : 1;
        if (at.isNumber()) at.advance();
    } else if (at.isNumber() && isRowWord(at, 1) && at.position() != start) {  // "these 4 rows"
        words.count = at.peek().value;
        at.advance();
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
    words.named = !repeat && at.acceptWord({"form", "forms", "are", "make"});
    if (words.named) return words;
    at.skipWords({"for", "a", "total", "of"});
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
    while (auto words = readRowsAgain(at, context, !all.empty())) {
        all.push_back(std::move(*words));
        while (at.accept(TokenKind::Comma) || at.accept(TokenKind::Semicolon) ||
               at.accept(TokenKind::Stop) || at.acceptWord({"then", "and"})) {
        }
    }
    return all;
}

}  // namespace lacewright
