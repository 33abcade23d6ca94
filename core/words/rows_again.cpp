#include "core/words/rows_again.h"

#include <algorithm>
#include <string_view>

#include "core/words/row_numbers.h"

namespace lacewright {

namespace {

// Tokens of `words` as if they stood at `place`.
void append(std::vector<Token>& to, std::string_view words, const Place& place) {
    for (Token word : tokenize(words)) {
        if (word.kind == TokenKind::End) break;
        word.place = place;
        to.push_back(std::move(word));
    }
}

}  // namespace

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
            append(one, ", asis to end ,", line[start].place);
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

// Shaping that says where on the row it stands instead of in which stitches.
struct AtEnds {
    std::string stitch;  // empty: none stands here
    bool beginning = false;
    bool end = false;
};

// "Inc 1 st at each end of row", "dec 1 st at end of row", "k2tog at both ends". Nothing is passed
// when none stands here.
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
    } else if (at.acceptWord({"each", "both"}) && at.acceptWord({"end", "ends"})) {
        shaping.beginning = shaping.end = true;
    } else if (at.acceptWord({"beg", "beginning", "start"})) {
        shaping.beginning = true;
    } else if (at.acceptWord({"end"})) {
        shaping.end = true;
    }
    if (shaping.stitch.empty() || !(shaping.beginning || shaping.end))
        return at.moveTo(start), AtEnds();
    if (at.acceptWord({"of"})) at.skipWords({"the", "this", "row", "rnd", "round"});
    return shaping;
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
    const std::string& stitch = ends.stitch;
    const bool made = stitch == "m1";  // one stitch in from the edge
    std::string row;
    if (ends.beginning) row += (made ? between + " 1, m1" : stitch) + ", ";
    row += between +
           (ends.end ? stitch == "k2tog" ? " to last 2 sts, " : " to last st, " : " to end, ");
    if (ends.end) row += (made ? "m1, " + between + " 1" : stitch) + ", ";
    std::vector<Token> spelled;
    append(spelled, row, place);
    spelled.insert(spelled.end(), body.begin() + static_cast<std::ptrdiff_t>(at.position()),
                   body.end());
    body = std::move(spelled);
}

namespace {

void readOften(TokenCursor& at, RowsAgainWords& words, FigureContext context) {
    const auto total = [&at] {  // "a total of 4 times", "4 times in all"
        at.skipWords({"in", "a"});
        return at.acceptWord({"total", "all", "altogether"});
    };
    at.skipWords({"for"});
    bool inAll = total();
    at.skipWords({"of"});
    if (at.is(TokenKind::Cross) || at.isWord({"x"})) at.advance();
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
    if (!words.times) return;
    const auto passMore = [&at] {
        at.skipWords({"more", "times", "time", "x", "again", "additional", "further"});
    };
    passMore();
    if (at.is(TokenKind::Open) && at.isWord({"more"}, 1) && at.is(TokenKind::Close, 2)) {
        at.advance(3);  // "3 (more) times"
        passMore();
    }
    inAll = total() || inAll;
    if (!inAll) return;
    for (int& times : words.times->bySize) times = std::max(0, times - 1);
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
    while (auto words = readRowsAgain(at, context, !all.empty())) {
        all.push_back(std::move(*words));
        while (at.accept(TokenKind::Comma) || at.accept(TokenKind::Semicolon) ||
               at.accept(TokenKind::Stop) || at.acceptWord({"then", "and"})) {
        }
    }
    return all;
}

}  // namespace lacewright
