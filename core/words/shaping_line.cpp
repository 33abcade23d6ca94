#include "core/words/shaping_line.h"

#include <algorithm>
#include <string_view>

#include "core/words/how_often.h"
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

// Shaping that says where on the row it stands instead of in which stitches.
struct AtEnds {
    std::string stitch;  // empty: none stands here
    bool beginning = false;
    bool end = false;
};

// "the marker", "each m" some words on.
bool saysMarker(const TokenCursor& at, std::size_t ahead) {
    for (std::size_t i = ahead; i < ahead + 4; ++i) {
        if (at.isWord({"marker", "markers", "m", "center", "centre", "st", "sts", "stitch"}, i))
            return true;
    }
    return false;
}

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
    } else if (at.acceptWord({"each", "both"}) &&
               at.acceptWord({"end", "ends", "edge", "edges", "side", "sides"}) &&
               !(at.isWord({"of"}) && saysMarker(at, 1))) {
        shaping.beginning = shaping.end = true;
    } else if (at.is(TokenKind::Word) && at.isWord({"edge"}, 1)) {  // "at neck edge"
        shaping.beginning = true;
        at.advance(2);
    } else if (at.acceptWord({"beg", "beginning", "start"})) {
        shaping.beginning = true;
    } else if (at.acceptWord({"end"})) {
        shaping.end = true;
    }
    if (shaping.stitch.empty() || !(shaping.beginning || shaping.end))
        return at.moveTo(start), AtEnds();
    if (at.acceptWord({"of"})) at.skipWords({"the", "this", "last", "row", "rnd", "round"});
    return shaping;
}

// The row in stitches, with `between` from end to end.
std::string shapedRow(const AtEnds& ends, const std::string& between) {
    const std::string& stitch = ends.stitch;
    const bool made = stitch == "m1";  // one stitch in from the edge
    std::string row;
    if (ends.beginning) row += (made ? between + " 1, m1" : stitch) + ", ";
    row += between +
           (ends.end ? stitch == "k2tog" ? " to last 2 sts, " : " to last st, " : " to end, ");
    if (ends.end) row += (made ? "m1, " + between + " 1" : stitch) + ", ";
    return row;
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
    std::vector<Token> spelled;
    append(spelled, shapedRow(ends, between), place);
    spelled.insert(spelled.end(), body.begin() + static_cast<std::ptrdiff_t>(at.position()),
                   body.end());
    body = std::move(spelled);
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
    append(text, shapedRow(ends, "asis"), place);
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
    append(text, "asis to end", place);
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
