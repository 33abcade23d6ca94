#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

namespace {

// The id with the number in place of "#".
std::string numbered(const std::string& id, int number) {
    const std::size_t mark = id.find('#');
    return mark == std::string::npos
               ? id
               : id.substr(0, mark) + std::to_string(number) + id.substr(mark + 1);
}

std::string knownStitch(const std::string& id, int number) {
    const std::string full = numbered(id, number);
    return builtInStitches()->find(full) ? full : std::string();
}

}  // namespace

Working RowParser::working(const Term& term, const TermMatch& match) const {
    Working work;
    work.term = match.written.empty() ? term.spellings.front() : match.written;
    work.takes = term.takes.with(match.number);
    work.makes = term.makes.with(match.number);
    work.rightId = knownStitch(term.rightId, match.number);
    work.wrongId = knownStitch(term.wrongId, match.number);
    // One spelling for all ways to write the same stitch.
    if (match.number == 0) work.term = term.spellings.front();
    return work;
}

// What may follow a stitch: a count, "next 3 sts", "all", a modifier.
void RowParser::countOf(Working& work, const TermMatch& match, Tail& tail, bool& counted) {
    if (at_.is(TokenKind::Stop) && at_.peek().glued && at_.is(TokenKind::Number, 1) &&
        at_.previous().text.size() <= 2) {
        at_.advance();  // "k. 3"
    }
    if (match.number == 0 && passWrapped()) {
        counted = true;
        return;
    }
    const bool all = at_.isWord({"all", "every", "each", "rem", "remaining", "rest", "back"}) ||
                     (at_.isWord({"the"}) && at_.isWord({"rest", "remaining", "rem"}, 1)) ||
                     (at_.isWord({"row", "rnd", "round"}) && !at_.isNumber(1));
    if (all && !(at_.isWord({"all"}) && at_.isWord({"in", "into", "but"}, 1))) {
        at_.skipWords({"the", "all", "every", "each", "rem", "remaining", "rest", "back", "row",
                       "rnd", "round"});
        if (at_.acceptWord({"of"})) at_.skipWords({"the", "row", "rnd", "round", "sts"});
        at_.acceptStitchNoun();
        Tail extent;
        if (!parseExtent(extent)) extent.toEnd = true;
        tail = extent;
        return;
    }
    const bool next =
        at_.isWord({"next", "last", "following", "foll", "first"}) ||
        (at_.isWord({"the"}) && at_.isWord({"next", "last", "following", "first"}, 1));
    if (next) {
        at_.skipWords({"the", "next", "last", "following", "foll", "first"});
        counted = true;
    }
    const std::size_t before = at_.position();
    Tail ignored;
    if (match.number == 0 && at_.isNumber() && !times(ignored)) {
        work.count = figure();
        counted = true;
    } else {
        at_.moveTo(before);
    }
    at_.acceptStitchNoun();
}

// "at beg of row" says where the stitch stands, which the order of the words says already.
void RowParser::passWhere() {
    const std::size_t start = at_.position();
    if (at_.acceptWord({"at"})) {
        at_.skipWords({"the"});
        if (at_.acceptWord({"beg", "beginning", "start", "end"})) {
            at_.accept(TokenKind::Stop);
            at_.skipWords({"of", "the", "this", "each", "every", "row", "rnd", "round"});
            return;
        }
    }
    at_.moveTo(start);
}

void RowParser::modifiers(Working& work) {
    passWhere();
    // "sl 1 yf": the yarn lies in front of the slipped stitch.
    if (work.term == "sl" && at_.isWord({"yf", "yfwd", "yft"}) &&
        (at_.is(TokenKind::Comma, 1) || at_.is(TokenKind::End, 1) || at_.is(TokenKind::Close, 1))) {
        at_.advance();
    }
    while (const auto match = context_.vocabulary.match(at_.tokens(), at_.position())) {
        if (match->term->role != TermRole::Modifier) return;
        at_.advance(match->tokens);
        const Term* changed =
            context_.vocabulary.find(work.term + " " + match->term->spellings.front());
        if (!changed || changed->takes.with(0) != work.takes) continue;
        work.term = changed->spellings.front();
        work.rightId = knownStitch(changed->rightId, 0);
        work.wrongId = knownStitch(changed->wrongId, 0);
    }
}

}  // namespace lacewright
