#include "core/words/row_parser.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr int kDeepest = 40;               // brackets and stars within one another
constexpr std::size_t kMostItems = 4000;   // in one sequence
constexpr std::size_t kMostNearest = 200;  // words for which a known one is looked for

bool isWordOf(const Token& token, std::initializer_list<std::string_view> words) {
    return std::find(words.begin(), words.end(), token.text) != words.end();
}

bool opensSizes(const TokenCursor& at) {
    return at.is(TokenKind::Open) && at.is(TokenKind::Number, 1);
}

// "Repeat from star" names the mark.
std::vector<Token> withStarsInWords(std::vector<Token> tokens) {
    for (std::size_t i = 1; i < tokens.size(); ++i) {
        const bool named = isWordOf(tokens[i], {"star", "asterisk"});
        if (!named || !isWordOf(tokens[i - 1], {"from", "first", "the", "to", "at"})) continue;
        tokens[i].kind = TokenKind::Star;
        tokens[i].text = "*";
        tokens[i].value = 1;
    }
    return tokens;
}

}  // namespace

RowParser::RowParser(std::vector<Token> tokens, ReadContext context)
    : at_(withStarsInWords(std::move(tokens))), context_(context) {}

void RowParser::complain(const Place& place, std::string what, std::string expected,
                         std::string nearest) {
    context_.figures.messages.push_back(
        {true, place, std::move(what), std::move(expected), std::move(nearest)});
}

ParsedRow RowParser::parse() {
    ParsedRow row;
    for (const Token& token : at_.tokens()) {
        if (token.kind == TokenKind::Word || token.kind == TokenKind::Number)
            row.words += token.text + " ";
    }
    if (namesChart()) return row;
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
    passBeyondRound(row.elements);
    return row;
}

// "(41 sts)", "- 41 sts", "41 sts." as the last thing of a row; "(2 sts dec)" is passed over.
bool RowParser::parseStated(ParsedRow& row) {
    const auto stated = readStatedCount(at_, context_.figures);
    if (!stated) return bareCount(row);
    if (!stated->change) {
        row.statedCount = stated->stitches;
        row.statedPlace = stated->place;
    }
    return true;
}

// "(k1, yo) around. 24"
bool RowParser::bareCount(ParsedRow& row) {
    const bool last =
        at_.is(TokenKind::End, 1) || (at_.is(TokenKind::Stop, 1) && at_.is(TokenKind::End, 2));
    if (!at_.is(TokenKind::Number) || !last || at_.position() == 0 ||
        at_.previous().kind != TokenKind::Stop)
        return false;
    row.statedPlace = at_.peek().place;
    row.statedCount = figure();
    return true;
}

bool RowParser::skipSeparators() {
    const std::size_t start = at_.position();
    while (at_.accept(TokenKind::Comma) || at_.accept(TokenKind::Semicolon) ||
           at_.accept(TokenKind::Stop) || at_.accept(TokenKind::Dash) ||
           at_.accept(TokenKind::Colon) || at_.accept(TokenKind::Plus) ||
           at_.accept(TokenKind::Slash) || at_.acceptWord({"and", "then"})) {
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
        if (leftOnNeedle(out)) continue;
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
    foldBobbles(out);
    --depth_;
}

bool RowParser::isOpen(int stars) const {
    return std::find(openStars_.begin(), openStars_.end(), stars) != openStars_.end();
}

void RowParser::item(Elements& out) {
    if (evenly(out) || threadOver(out) || passOverWhich() || passAside() || dropsOvers(out) ||
        passWraps() || passIntoOvers() || passRestOnHold(out) || putsOnHold(out) || passMade() ||
        timesBracket(out) || knitsAndPurls(out) || cable(out))
        return;
    at_.skipWords({"rep",        "repeat", "work",    "working", "next", "end",
                   "ending",     "ends",   "with",    "finish",  "in",   "now",
                   "also",       "again",  "by",      "across",  "cont", "continue",
                   "continuing", "keep",   "keeping", "taking"});
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
    const bool which = at_.isWord({"first", "last"});  // "first 5 sts in moss st"
    if (which && at_.isNumber(1) && at_.isStitchNoun(2) && at_.isWord({"in"}, 3)) at_.advance();
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
    // "work 5 sts", "patt across first 10 sts"
    const bool asItPresents = at_.position() > 0 && at_.isNumber() && at_.isStitchNoun(1) &&
                              isWordOf(at_.previous(), {"work", "across", "first", "next", "patt"});
    if (asItPresents) {
        Working work;
        work.term = "asis";
        work.count = figure();
        at_.acceptStitchNoun();
        return out.push_back({spanning(place, at_.previous().place), std::move(work)});
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
    // Looked for in the whole vocabulary, so not for errors beyond those that are told.
    std::string nearest;
    if (context_.figures.messages.size() < kMostNearest)
        nearest = context_.vocabulary.nearest(written).value_or("");
    complain(whole, "\"" + written + "\" is not a stitch that is known here",
             "a stitch, a bracket or *", std::move(nearest));
}

// To the next place where a stitch may begin, at least one token on.
void RowParser::recover() {
    do {
        at_.advance();
    } while (!at_.atEnd() && !at_.is(TokenKind::Comma) && !at_.is(TokenKind::Semicolon) &&
             !at_.is(TokenKind::Stop) && !at_.is(TokenKind::Open) && !at_.is(TokenKind::Close) &&
             !at_.is(TokenKind::Star) && !atRepeat());
}

// "Rep from * to end, remove marker, k1, replace marker": the last stitch belongs to the next
// round, which begins one stitch later; it is worked once more there.
void RowParser::passBeyondRound(Elements& elements) {
    const std::size_t count = elements.size();
    if (count < 4) return;
    const auto isMark = [&](std::size_t at, std::string_view term) {
        const auto* aside = std::get_if<Aside>(&elements[at].what);
        return aside != nullptr && aside->term == term;
    };
    // "Remove marker, k1, replace marker, *..": the stitch comes once more at the round's end.
    const auto* moved = std::get_if<Working>(&elements[1].what);
    if (isMark(0, "rm") && isMark(2, "pm") && moved != nullptr && moved->takes == moved->makes) {
        const Element beyond = elements[1];
        elements[1].what =
            Choice{{{"before the round, whose beginning moves", {}}, {"in the round", {beyond}}}};
    }
    const auto mark = [&](std::size_t back, std::string_view term) {
        const auto* aside = std::get_if<Aside>(&elements[count - back].what);
        return aside != nullptr && aside->term == term;
    };
    const auto* whole = std::get_if<Stretch>(&elements[count - 4].what);
    const auto* work = std::get_if<Working>(&elements[count - 2].what);
    const bool toEnd = whole != nullptr && whole->to == Landmark::None && !whole->leaves;
    if (toEnd && mark(3, "rm") && mark(1, "pm") && work != nullptr && work->takes == work->makes)
        elements.erase(elements.end() - 2);
}

// "Purl." is the whole row; "sl 1, knit" goes on to its end.
// Asides may follow it: "purl, slipping markers".
void RowParser::settleBareStitch(Elements& elements) const {
    const auto works = [](const Element& e) { return !std::holds_alternative<Aside>(e.what); };
    const auto last = std::find_if(elements.rbegin(), elements.rend(), works);
    if (last == elements.rend() || !bare_ || last->place.offset != *bare_) return;
    const auto* work = std::get_if<Working>(&last->what);
    const bool ground = work && (work->term == "k" || work->term == "p");
    const bool alone = std::none_of(last + 1, elements.rend(), works);
    if (!ground && !(work && alone && (work->term == "bo" || work->term == "k tbl"))) return;
    if (!alone && !bareInFull_) return;
    Stretch stretch;
    stretch.leaves = Figure(0);
    stretch.body.push_back(*last);
    last->what = std::move(stretch);
}

}  // namespace lacewright
