#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostCopied = 20'000;  // elements

bool isRepeatWord(const TokenCursor& at, std::size_t ahead) {
    return at.isWord({"rep", "repeat", "rpt", "reps", "repeats", "repeating"}, ahead);
}

}  // namespace

// "rep" is a repeat of something said before, unless a bracket or "row" follows.
bool RowParser::atRepeat() const {
    const bool verb = at_.isWord({"work", "continue", "cont", "continuing"});
    if (verb && at_.isWord({"from", "between"}, 1) && at_.is(TokenKind::Star, 2)) return true;
    if (!isRepeatWord(at_, 0)) return false;
    std::size_t next = 1;
    if (at_.is(TokenKind::Stop, next)) ++next;
    const bool bracket = at_.is(TokenKind::Open, next) && !at_.is(TokenKind::Close, next + 1);
    return !bracket && !at_.isWord({"row", "rows", "rnd", "rnds"}, next);
}

std::optional<int> RowParser::repeatTarget() const {
    for (std::size_t i = 1; i < 8; ++i) {
        const Token& token = at_.peek(i);
        if (token.kind == TokenKind::Star) return token.value;
        if (token.kind == TokenKind::Stop && i == 1) continue;
        if (token.kind != TokenKind::Word) break;
    }
    return {};
}

// "rep from **" after "** .. **" was closed, with other stars still open.
bool RowParser::repeatsMarked() const {
    const auto target = repeatTarget();
    return target && !isOpen(*target) && marked_.contains(*target);
}

bool RowParser::repeatComesLater(int stars) const {
    for (std::size_t i = 0; !at_.is(TokenKind::End, i); ++i) {
        if (isRepeatWord(at_, i)) {
            for (std::size_t k = i + 1; k < i + 8; ++k) {
                if (at_.is(TokenKind::Star, k)) return at_.peek(k).value == stars;
            }
        }
    }
    return false;
}

// The row repeats something from a star further on.
bool RowParser::anyRepeatLater() const {
    for (std::size_t i = 0; !at_.is(TokenKind::End, i); ++i) {
        if (isRepeatWord(at_, i) && at_.isWord({"from"}, i + 1) && at_.is(TokenKind::Star, i + 2))
            return true;
    }
    return false;
}

// "rep from * to *", "repeat between *s", "rep from the beginning".
void RowParser::passRepeatWords() {
    at_.advance();
    at_.accept(TokenKind::Stop);
    at_.skipWords({"btw",   "btwn", "from",      "between",      "after",     "the",
                   "first", "beg",  "beginning", "start",        "section",   "this",
                   "these", "sts",  "stitches",  "instructions", "pattern",   "patt",
                   "what",  "is",   "bracket",   "brackets",     "bracketed", "parentheses"});
    if (at_.is(TokenKind::Open) && at_.is(TokenKind::Close, 1)) at_.advance(2);  // "rep [ ]"
    const auto passStar = [this] {
        if (!at_.accept(TokenKind::Star)) return false;
        if (at_.peek().glued) at_.acceptWord({"s"});
        return true;
    };
    if (!passStar()) return;
    const std::size_t start = at_.position();
    if (at_.acceptWord({"to", "and"}) || at_.accept(TokenKind::Dash)) {
        at_.skipWords({"the", "next", "second"});
    }
    if (!passStar()) at_.moveTo(start);
}

// Requires: a star.
void RowParser::starred(Elements& out) {
    const Place place = at_.peek().place;
    const int stars = at_.peek().value;
    at_.advance();
    openStars_.push_back(stars);
    Elements body;
    sequence(body);
    openStars_.pop_back();

    const bool closed = at_.is(TokenKind::Star) && at_.peek().value == stars;
    if (closed) at_.advance();
    const std::size_t after = at_.position();
    skipSeparators();
    if (atRepeat()) {
        const auto target = repeatTarget();
        if (!target || *target == stars) {
            passRepeatWords();
            return out.push_back(repeated(std::move(body), place, 0));
        }
    }
    if (!closed) {
        // Another repeat goes back to a star outside: this one only marks a place.
        const bool mark = atRepeat() && !openStars_.empty();
        if (!mark) {
            complain(place, "nothing says how often the stretch from this star is repeated",
                     "\"rep from *\" and how far");
        }
        out.push_back({place, Aside{"", stars}});
        out.insert(out.end(), std::make_move_iterator(body.begin()),
                   std::make_move_iterator(body.end()));
        return;
    }
    Tail tail;
    auto count = timesApart(tail);
    if (!count && at_.isNumber() && !context_.vocabulary.match(at_.tokens(), at_.position()))
        count = figure();  // "*yo, ssk* 3"
    if (count) {
        return out.push_back({spanning(place, at_.previous().place),
                              Group{std::move(body), std::move(*count), {}, true}});
    }
    if (parseExtent(tail) || namedTimes(tail)) {
        return out.push_back(
            stretchOf(std::move(body), tail, spanning(place, at_.previous().place), true));
    }
    at_.moveTo(after);
    if (repeatComesLater(stars)) {
        if (affordable(body, place)) marked_[stars] = body;
        out.insert(out.end(), std::make_move_iterator(body.begin()),
                   std::make_move_iterator(body.end()));
        return;
    }
    if (anyRepeatLater()) {
        complain(place, "nothing says how often the stretch between these stars is repeated",
                 "\"rep from *\" and how far");
    }
    Stretch stretch;
    stretch.body = std::move(body);
    stretch.starred = true;
    out.push_back({spanning(place, at_.previous().place), std::move(stretch)});
}

// Copies of nested stretches multiply: a row may hold only so much.
bool RowParser::affordable(const Elements& copied, const Place& place) {
    copied_ += elementCount(copied);
    if (copied_ <= kMostCopied) return true;
    complain(place, "the repeats of this row lead to too many stitches to read");
    at_.moveTo(at_.tokens().size() - 1);
    return false;
}

// A repeat of what was marked earlier in the row; without a mark, of the bracket just before or of
// the whole sequence.
void RowParser::again(Elements& out) {
    const Place place = at_.peek().place;
    const auto target = repeatTarget();
    passRepeatWords();
    Elements body;
    if (target) {
        const auto marked = marked_.find(*target);
        if (marked == marked_.end()) {
            complain(place, "there is no star to repeat from", "a * where the repeat begins");
            parseTail();
            return;
        }
        if (!affordable(marked->second, place)) return;
        body = marked->second;
        // What was marked has been worked once already.
        return out.push_back(repeated(std::move(body), place, 1));
    }
    if (out.empty()) {
        complain(place, "there is nothing before this to repeat");
        parseTail();
        return;
    }
    auto* group = std::get_if<Group>(&out.back().what);
    if (group && group->times == Figure(1)) {
        body = std::move(group->body);
        out.pop_back();
    } else {
        body.swap(out);
    }
    out.push_back(repeated(std::move(body), place, 0));
}

// `worked`: how often the body already stands in the row.
Element RowParser::repeated(Elements body, const Place& start, int worked) {
    Tail tail = parseTail();
    const Place place = spanning(start, at_.previous().place);
    if (tail.times) {
        // "rep from * 3 times" is 3 more to most writers and 3 in all to some.
        const auto times = [&](int more) {
            Figure count = *tail.times;
            for (int& n : count.bySize) n = std::clamp(n + more - worked, 0, kMaxFigure);
            return count;
        };
        Group group{std::move(body), times(tail.inAll ? 0 : 1), {}, true};
        if (!tail.more && !tail.inAll) group.orTimes = times(0);
        Figure often = group.times;
        Elements last = endingOf(group.body, often, place);
        if (last.empty()) return {place, std::move(group)};
        group.times = std::move(often);
        if (group.orTimes) {
            for (int& n : group.orTimes->bySize) n = std::max(0, n - 1);
        }
        last.insert(last.begin(), Element{place, std::move(group)});
        return {place, Group{std::move(last), Figure(1)}};
    }
    Element element = stretchOf(std::move(body), tail, place, true);
    auto& stretch = std::get<Stretch>(element.what);
    const std::size_t before = at_.position();
    Ending ending = parseEnding();
    if (ending.lastTime && affordable(stretch.body, place)) {
        stretch.lastTime = lastPass(stretch.body, ending, place);
    } else {
        at_.moveTo(before);
    }
    // "to end, end k1": what follows says how many are left.
    if (tail.toEnd && moreFollows()) stretch.leaves.reset();
    return element;
}

Element RowParser::stretchOf(Elements body, const Tail& tail, const Place& place,
                             bool starred) const {
    Stretch stretch;
    stretch.body = std::move(body);
    stretch.starred = starred;
    stretch.leaves = tail.toEnd ? Figure(0) : tail.leaves;
    if (!tail.toEnd && !tail.leaves) stretch.leaves.reset();
    stretch.named = tail.named;
    stretch.to = tail.to;
    stretch.before = tail.before;
    stretch.stitches = tail.stitches;
    return {place, std::move(stretch)};
}

}  // namespace lacewright
