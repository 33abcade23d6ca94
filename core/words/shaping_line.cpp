#include "core/words/shaping_line.h"

#include <algorithm>
#include <string_view>

#include "core/words/how_often.h"
#include "core/words/row_numbers.h"
#include "core/words/shaping_ends.h"

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
            appendWords(one, ", asis to end ,", line[start].place);
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

constexpr std::size_t kMostClauses = 50;  // of one sentence
constexpr std::size_t kLongestVerb = 12;  // tokens before its first number

// "3 (4, 5) sts at beg" stands here; nothing is passed.
bool beginsClause(TokenCursor& at) {
    const std::size_t start = at.position();
    bool clause = at.isNumber();
    while (at.isNumber() || at.is(TokenKind::Comma) || at.is(TokenKind::Open) ||
           at.is(TokenKind::Close) || at.is(TokenKind::Slash) || at.isStitchNoun())
        at.advance();
    clause = clause && at.acceptWord({"at"});
    at.skipWords({"the"});
    clause = clause && at.isWord({"beg", "beginning", "start"});
    at.moveTo(start);
    return clause;
}

}  // namespace

std::vector<std::vector<Token>> beginningsApart(const std::vector<Token>& line) {
    const auto first =
        std::find_if(line.begin(), line.end(), [](const Token& token) { return token.value > 0; });
    const bool verb = static_cast<std::size_t>(first - line.begin()) <= kLongestVerb;
    std::vector<std::vector<Token>> lines(1);
    bool begun = false;  // the clause has said "at beg"
    for (TokenCursor at(line); at.position() + 1 < line.size();) {
        begun = begun || at.isWord({"beg", "beginning", "start"});
        const std::size_t start = at.position();
        bool parts = false;
        while (at.accept(TokenKind::Comma) || at.accept(TokenKind::Semicolon) ||
               at.acceptWord({"then", "and"}))
            parts = true;
        if (parts && begun && verb && lines.size() < kMostClauses && beginsClause(at)) {
            lines.back().push_back(line.back());
            lines.emplace_back(line.begin(), first);
            begun = false;
            continue;
        }
        if (!parts) at.advance();
        for (std::size_t i = start; i < at.position(); ++i) lines.back().push_back(line[i]);
    }
    lines.back().push_back(line.back());
    return lines;
}

namespace {

bool isShapingVerb(const TokenCursor& at, std::size_t ahead = 0) {
    return at.isWord({"inc", "dec", "increase", "decrease", "increasing", "decreasing"}, ahead);
}

constexpr int kMostBetween = 200;              // "every 200th row"
constexpr std::size_t kMostIntroduction = 16;  // tokens before the shaping

// "Keeping patt correct," and the like. False where something else than words comes first.
bool passIntroduction(TokenCursor& at) {
    for (std::size_t i = 0; i < kMostIntroduction && !at.atEnd(); ++i, at.advance()) {
        if (isShapingVerb(at)) return true;
        const bool word = at.is(TokenKind::Word) && !at.isNumber() && !isRowWord(at);
        if (!word && !at.is(TokenKind::Comma) && !at.is(TokenKind::Dash)) return false;
    }
    return false;
}

// "next row", "next 4 rows", "every foll 4th row", "foll 3 alt rows", "5th row": which rows are
// shaped, and where their number is said, how many.
struct Which {
    int every = 1;
    std::optional<Figure> rows;
};

std::optional<Which> acceptWhich(TokenCursor& at, FigureContext context) {
    Which which;
    const bool next = at.acceptWord({"next", "this"});
    const bool every = !next && at.acceptWord({"every", "each"});
    const bool following = at.acceptWord({"foll", "following"});
    if (at.isNumber() && at.ordinal(false) == 0) {
        which.rows = readFigure(at, context);
    } else if (!every) {
        which.rows = Figure(1);
    }
    bool kind = true;
    if (at.acceptWord({"alt", "alternate", "other", "rs", "ws", "right", "wrong"})) {
        at.acceptWord({"side"});
        which.every = 2;
    } else if (const int step = at.ordinal(true)) {
        which.every = step;
    } else {
        kind = false;
    }
    at.skipWords({"foll", "following"});
    const bool row = isRowWord(at);
    if (row) at.advance();
    // "5th and every foll 6th row" names its rows at the end.
    const bool later = (next || kind) && at.isWord({"and"});
    if (!(next || every || following || kind) || !(row || next || later)) return {};
    return which;
}

}  // namespace

std::vector<ShapedRows> parseShapingSentence(TokenCursor& at, FigureContext context) {
    const std::size_t start = at.position();
    const std::size_t messages = context.messages.size();
    const auto none = [&] {
        at.moveTo(start);
        context.messages.resize(messages);
        return std::vector<ShapedRows>();
    };
    if (!passIntroduction(at)) return none();
    const Place place = at.peek().place;
    const AtEnds ends = acceptAtEnds(at);
    if (ends.stitch.empty()) return none();
    std::vector<Token> text;
    appendWords(text, shapedRow(ends, "asis"), place);
    Token last = at.tokens().back();
    last.kind = TokenKind::End;
    text.push_back(std::move(last));

    std::vector<ShapedRows> all;
    for (;;) {
        const std::size_t before = at.position();
        at.accept(TokenKind::Comma);
        at.skipWords({"of", "on", "the", "in", "at", "and", "then"});
        const auto which = acceptWhich(at, context);
        if (!which) {
            at.moveTo(before);
            break;
        }
        ShapedRows rows;
        rows.row = text;
        rows.every = which->every;
        rows.often.place = place;
        rows.often.count = which->every;
        rows.often.times = which->rows;
        if (!rows.often.times) readOften(at, rows.often, context);
        if (!rows.often.times) readUntil(at, rows.often, context);
        if (!rows.often.times && !rows.often.until && at.isWord({"to"}) && at.isNumber(1)) {
            at.advance();
            rows.often.until = readFigure(at, context);
            if (!at.acceptStitchNoun()) return none();
        }
        all.push_back(std::move(rows));
    }
    if (all.empty()) return none();
    RowsAgainWords& often = all.back().often;
    const std::size_t end = at.position();
    if (!at.accept(TokenKind::Comma)) at.accept(TokenKind::Stop);
    if (const auto stated = readStatedCount(at, context)) {
        const bool open = !often.times && !often.until;
        (open ? often.until : often.stated) = stated->stitches;
        often.statedPlace = stated->place;
    } else {
        at.moveTo(end);
    }
    for (const ShapedRows& rows : all) {
        if (rows.every > kMostBetween || (!rows.often.times && !rows.often.until)) return none();
    }
    // Only words may follow: "working inc sts into patt".
    while (at.is(TokenKind::Comma) || at.is(TokenKind::Stop) || at.is(TokenKind::Dash) ||
           (at.is(TokenKind::Word) && !at.isNumber()))
        at.advance();
    if (!at.atEnd()) return none();
    for (ShapedRows& rows : all) {
        if (!rows.often.times) continue;
        const auto& times = rows.often.times->bySize;
        if (std::any_of(times.begin(), times.end(), [](int n) { return n < 1; })) return none();
        for (int& n : rows.often.times->bySize) --n;
    }
    return all;
}

int parseShapedAfter(std::vector<Token>& line) {
    TokenCursor at(line);
    if (!at.acceptWord({"k", "knit", "p", "purl", "work"}) || !at.isNumber() || !isRowWord(at, 1))
        return 0;
    const int rows = std::clamp(at.peek().value, 1, kMaxRowNumber);
    at.advance(2);
    at.skipWords({"more", "in", "rib", "garter", "st", "patt", "pattern", "plain", "even"});
    if (!at.accept(TokenKind::Comma)) at.accept(TokenKind::Dash);
    at.skipWords({"and", "then"});
    if (!isShapingVerb(at)) return 0;
    line.erase(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(at.position()));
    return rows;
}

std::vector<Token> asTheyCome(const Place& place) {
    std::vector<Token> text;
    appendWords(text, "asis to end", place);
    text.push_back({});
    text.back().kind = TokenKind::End;
    text.back().place = place;
    return text;
}

std::optional<std::vector<Token>> shapingBehind(const TokenCursor& sentence) {
    for (TokenCursor at = sentence; !at.atEnd(); at.advance()) {
        if (!isShapingVerb(at)) continue;
        std::vector<Token> text(at.tokens().begin() + static_cast<std::ptrdiff_t>(at.position()),
                                at.tokens().end());
        spellOutEachEnd(text);
        return text;
    }
    return {};
}

bool tellsShaping(const TokenCursor& line) {
    bool verb = false;
    bool where = false;
    bool many = false;
    for (std::size_t i = 0; !line.is(TokenKind::End, i); ++i) {
        verb = verb || isShapingVerb(line, i);
        where = where || line.isWord({"row", "rows", "rnd", "rnds", "round", "rounds"}, i);
        many = many || line.isNumber(i);
    }
    return verb && where && many;
}

}  // namespace lacewright
