#include "core/words/row_parser.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr int kDeepest = 40;              // brackets and stars within one another
constexpr std::size_t kMostItems = 4000;  // in one sequence

bool opensSizes(const TokenCursor& at) {
    return at.is(TokenKind::Open) && at.is(TokenKind::Number, 1);
}

}  // namespace

RowParser::RowParser(std::vector<Token> tokens, ReadContext context)
    : at_(std::move(tokens)), context_(context) {}

void RowParser::complain(const Place& place, std::string what, std::string expected,
                         std::string nearest) {
    context_.messages.push_back(
        {true, place, std::move(what), std::move(expected), std::move(nearest)});
}

ParsedRow RowParser::parse() {
    ParsedRow row;
    if (parseSame(row)) return row;
    while (!at_.atEnd()) {
        const std::size_t before = at_.position();
        sequence(row.elements);
        if (parseStated(row)) continue;
        if (at_.is(TokenKind::Close)) {
            complain(at_.peek().place, "this bracket was never opened");
            at_.advance();
        }
        if (at_.position() == before) at_.advance();
    }
    settleBareStitch(row.elements);
    return row;
}

bool RowParser::parseSame(ParsedRow& row) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    at_.skipWords({"work", "worked", "knit", "the", "same", "exactly", "all"});
    const bool like = at_.acceptWord({"as", "like", "rep", "repeat"});
    at_.skipWords({"for", "the", "in"});
    const bool named = at_.acceptWord({"row", "rnd", "round"});
    int number = 0;
    if (named && at_.is(TokenKind::Number)) {
        number = at_.peek().value;
        at_.advance();
    } else if (!named) {
        number = at_.ordinal(true);
        if (number > 0 && !at_.acceptWord({"row", "rnd", "round", "needle"})) number = 0;
    }
    if (!like || number == 0) {
        at_.moveTo(start);
        return false;
    }
    row.sameAs = number;
    row.sameAsPlace = spanning(place, at_.previous().place);
    skipSeparators();
    if (!parseStated(row) && !at_.atEnd()) {
        complain(at_.peek().place, "a row that is the same as another says nothing else",
                 "the end of the row");
        at_.moveTo(at_.tokens().size() - 1);
    }
    return true;
}

// "(41 sts)", "- 41 sts", "41 sts." as the last thing of a row; "(2 sts dec)" is passed over.
bool RowParser::parseStated(ParsedRow& row) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    while (at_.accept(TokenKind::Dash) || at_.accept(TokenKind::Equals)) {
    }
    const bool open = at_.accept(TokenKind::Open);
    at_.skipWords({"total", "now", "for", "a", "of", "there", "are", "you", "have", "should", "be",
                   "leaving"});
    if (at_.is(TokenKind::Number)) {
        const std::size_t messages = context_.messages.size();
        const Figure count = figure();
        const bool noun = at_.acceptStitchNoun();
        const bool change = at_.isWord({"inc", "dec", "increased", "decreased", "incd", "decd"});
        at_.skipWords({"inc", "dec", "increased", "decreased", "incd", "decd", "d", "rem", "remain",
                       "remaining", "left", "in", "total", "on", "needle", "needles", "now",
                       "the"});
        const bool closed = !open || at_.accept(TokenKind::Close);
        const std::size_t after = at_.position();
        at_.accept(TokenKind::Stop);
        if (noun && closed && (open || at_.atEnd())) {
            if (!change) {
                row.statedCount = count;
                row.statedPlace = spanning(place, at_.tokens()[after - 1].place);
            }
            return true;
        }
        context_.messages.resize(std::min(messages, context_.messages.size()));
    }
    at_.moveTo(start);
    return false;
}

bool RowParser::skipSeparators() {
    const std::size_t start = at_.position();
    while (at_.accept(TokenKind::Comma) || at_.accept(TokenKind::Semicolon) ||
           at_.accept(TokenKind::Stop) || at_.accept(TokenKind::Dash) ||
           at_.accept(TokenKind::Colon) || at_.accept(TokenKind::Plus) ||
           at_.acceptWord({"and", "then"})) {
    }
    return at_.position() != start;
}

void RowParser::sequence(Elements& out) {
    if (++depth_ > kDeepest) {
        complain(at_.peek().place, "brackets and repeats are nested too deeply");
        at_.moveTo(at_.tokens().size() - 1);
    }
    while (!at_.atEnd()) {
        const std::size_t before = at_.position();
        ParsedRow stated;
        if (brackets_ == 0 && openStars_.empty() && parseStated(stated)) {
            at_.moveTo(before);
            if (!stated.statedCount) {
                parseStated(stated);
                continue;
            }
            break;
        }
        if (skipSeparators()) continue;
        if (at_.is(TokenKind::Close)) break;
        if (atRepeat()) {
            if (!openStars_.empty() && !repeatsMarked()) break;
            again(out);
        } else if (at_.is(TokenKind::Star)) {
            if (isOpen(at_.peek().value)) break;
            starred(out);
        } else {
            item(out);
        }
        if (out.size() > kMostItems) {
            complain(at_.peek().place, "this row has too many stitches to read");
            at_.moveTo(at_.tokens().size() - 1);
        }
        if (at_.position() == before) at_.advance();
    }
    --depth_;
}

bool RowParser::isOpen(int stars) const {
    return std::find(openStars_.begin(), openStars_.end(), stars) != openStars_.end();
}

void RowParser::item(Elements& out) {
    at_.skipWords({"rep", "repeat", "work", "working", "next", "end", "ending", "ends", "with",
                   "finish", "in", "now", "also", "again", "by"});
    if (at_.is(TokenKind::Open)) return bracket(out);
    const Place place = at_.peek().place;
    if (const auto match = context_.vocabulary.match(at_.tokens(), at_.position())) {
        at_.advance(match->tokens);
        return stitch(out, *match, place);
    }
    Tail extent;
    if (at_.previous().text == "work" && parseExtent(extent)) {  // "work to last 2 sts"
        Working asItPresents;
        asItPresents.term = "asis";
        const Place whole = spanning(place, at_.previous().place);
        return out.push_back(stretchOf({{whole, std::move(asItPresents)}}, extent, whole, false));
    }
    if (at_.isNumber() && at_.isStitchNoun(1)) {  // "5 sts in moss st"
        const std::size_t in = at_.isWord({"in"}, 2) ? 3 : 2;
        const auto match = context_.vocabulary.match(at_.tokens(), at_.position() + in);
        if (match && match->term->role == TermRole::Ground) {
            Working work;
            work.term = match->term->spellings.front();
            work.count = figure();
            at_.advance(in - 1 + match->tokens);
            return out.push_back({spanning(place, at_.previous().place), std::move(work)});
        }
    }
    if (at_.isNumber() && !opensSizes(at_)) {
        // "2 plain", "3 k": the number stands first.
        const auto match = context_.vocabulary.match(at_.tokens(), at_.position() + 1);
        if (match && match->term->role == TermRole::Stitch && match->number == 0) {
            const Figure count(at_.peek().value);
            at_.advance(1 + match->tokens);
            Working work = working(*match->term, *match);
            work.count = count;
            at_.acceptStitchNoun();
            modifiers(work);
            out.push_back({spanning(place, at_.previous().place), std::move(work)});
            return;
        }
    }
    if (at_.atEnd() || at_.is(TokenKind::Close) || at_.is(TokenKind::Star) || atRepeat()) return;
    // A word is told whole, with what stands before it without a blank: "k2tgo".
    std::size_t first = at_.position();
    const auto joined = [this](std::size_t i) {
        const Token& before = at_.tokens()[i - 1];
        return at_.tokens()[i].glued &&
               (before.kind == TokenKind::Word || before.kind == TokenKind::Number);
    };
    while (first > 0 && joined(first)) --first;
    recover();
    std::string written;
    for (std::size_t i = first; i < at_.position(); ++i) {
        const Token& token = at_.tokens()[i];
        if (!written.empty() && !token.glued) written += ' ';
        written += token.text;
    }
    const Place whole = spanning(at_.tokens()[first].place, at_.previous().place);
    const auto nearest = context_.vocabulary.nearest(written);
    complain(whole, "\"" + written + "\" is not a stitch that is known here",
             "a stitch, a bracket or *", nearest.value_or(""));
}

// To the next place where a stitch may begin, at least one token on.
void RowParser::recover() {
    do {
        at_.advance();
    } while (!at_.atEnd() && !at_.is(TokenKind::Comma) && !at_.is(TokenKind::Semicolon) &&
             !at_.is(TokenKind::Stop) && !at_.is(TokenKind::Open) && !at_.is(TokenKind::Close) &&
             !at_.is(TokenKind::Star) && !atRepeat());
}

void RowParser::bracket(Elements& out) {
    const Place open = at_.peek().place;
    at_.advance();
    Elements body;
    // Stars opened outside a bracket are not closed inside it.
    std::vector<int> outside;
    outside.swap(openStars_);
    ++brackets_;
    sequence(body);
    --brackets_;
    openStars_.swap(outside);
    if (!at_.accept(TokenKind::Close)) complain(open, "this bracket is never closed");
    const Place place = spanning(open, at_.previous().place);

    const std::size_t after = at_.position();
    if (at_.acceptWord({"in", "into"})) {  // "(p1, k1) into double yo": one into each loop
        at_.skipWords({"the", "each", "next", "both", "loops", "of"});
        if (at_.acceptWord({"double", "dyo"})) {
            at_.skipWords({"yo", "yarn", "over", "yos"});
            return out.push_back(
                {spanning(open, at_.previous().place), Group{std::move(body), Figure(1)}});
        }
        at_.moveTo(after);
    }
    int stitches = 0;
    bool each = false;
    if (parseInto(stitches, each)) {
        int takes = each ? 1 : stitches;
        if (!each && stitches > 1) {
            // "(k3tog, yo, k3tog) in next 3 sts" is one working; "(k1, yo, k1) in next 3 sts" is
            // three.
            const bool wide = std::any_of(body.begin(), body.end(), [&](const Element& e) {
                const auto* work = std::get_if<Working>(&e.what);
                return work && work->takes == stitches;
            });
            if (!wide) {
                each = true;
                takes = 1;
            }
        }
        Element one{place, IntoOne{std::move(body), takes}};
        if (!each) return out.push_back(std::move(one));
        return out.push_back({place, Group{{std::move(one)}, Figure(stitches)}});
    }
    at_.moveTo(after);
    Tail tail;
    if (parseExtent(tail)) return out.push_back(stretchOf(std::move(body), tail, place, false));
    if (auto count = times(tail))
        return out.push_back({place, Group{std::move(body), std::move(*count)}});
    if (at_.isNumber() && !context_.vocabulary.match(at_.tokens(), at_.position())) {
        return out.push_back({place, Group{std::move(body), figure()}});
    }
    out.push_back({place, Group{std::move(body), Figure(1)}});
}

// "Purl." is the whole row; "sl 1, knit" goes on to its end.
void RowParser::settleBareStitch(Elements& elements) const {
    if (elements.empty() || !bare_ || elements.back().place.offset != *bare_) return;
    const auto* work = std::get_if<Working>(&elements.back().what);
    const bool ground = work && (work->term == "k" || work->term == "p");
    const bool alone = elements.size() == 1;
    if (!ground && !(work && alone && (work->term == "bo" || work->term == "k tbl"))) return;
    if (!alone && !bareInFull_) return;
    Stretch stretch;
    stretch.leaves = Figure(0);
    stretch.body.push_back(elements.back());
    elements.back().what = std::move(stretch);
}

}  // namespace lacewright
