#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostJoined = 4;  // stitches that "twice" may reach back over

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

bool isYarnOver(const Working& work) {
    return work.takes == 0 && work.makes > 0;
}

std::string timesText(int times) {
    return times == 2 ? "twice" : std::to_string(times) + " times";
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
        work.term.size() <= 2) {
        at_.advance();  // "k. 3"
    }
    const bool all = at_.isWord({"all", "every", "each", "rem", "remaining", "rest", "back"}) ||
                     (at_.isWord({"the"}) && at_.isWord({"rest", "remaining", "rem"}, 1)) ||
                     (at_.isWord({"row", "rnd", "round"}) && !at_.isNumber(1));
    if (all && !(at_.isWord({"all"}) && at_.isWord({"in", "into"}, 1))) {
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

void RowParser::stitch(Elements& out, const TermMatch& match, const Place& place) {
    const Term& term = *match.term;
    if (term.role == TermRole::Aside || term.role == TermRole::Modifier) {
        return out.push_back({place, Aside{term.spellings.front(), 0}});
    }
    if (term.role == TermRole::Ground) return ground(out, term, place);

    const std::string word = at_.previous().text;
    Working work = working(term, match);
    Tail tail;
    bool counted = match.number > 0;
    countOf(work, match, tail, counted);
    // "k next 2 sts tog"
    if (at_.isWord({"tog", "together"}) && work.takes == 1 && work.makes == 1) {
        if (const Term* together = context_.vocabulary.find(work.term + " # tog")) {
            const int number = work.count.of(0);
            work = working(*together,
                           {together, 0, number, work.term + std::to_string(number) + "tog"});
            at_.advance();
        }
    }
    modifiers(work);
    int into = 0;
    bool each = false;
    const std::size_t before = at_.position();
    const bool intoOne = parseInto(into, each);
    if (intoOne && each) work.count = Figure(into);
    if (!intoOne) at_.moveTo(before);
    if (!tail.any() && !intoOne) parseExtent(tail);

    Element element{spanning(place, at_.previous().place), work};
    if (term.mayMean && !(work.takes == term.mayMean->takes && work.makes == term.mayMean->makes)) {
        Working other = work;
        other.takes = term.mayMean->takes;
        other.makes = term.mayMean->makes;
        other.rightId = other.wrongId = "";
        element.what = Choice{{{term.meaning, {{element.place, work}}},
                               {term.mayMean->meaning, {{element.place, other}}}}};
        // Yarn forward before a slipped stitch usually only moves the yarn.
        std::size_t skip = at_.is(TokenKind::Comma) ? 1 : 0;
        if (other.makes == 0 && at_.isWord({"sl", "slip"}, skip) && !passedOverLater()) {
            auto& readings = std::get<Choice>(element.what).readings;
            std::swap(readings[0], readings[1]);
        }
    }
    if (tail.any()) return workedUntil(out, std::move(element), tail, counted);
    if (intoOne && !each) {
        out.push_back(std::move(element));
        return intoOneUnbracketed(out, into, place);
    }
    Tail often;
    if (auto count = times(often)) return workedTimes(out, std::move(element), *count);
    if (!counted) {
        bare_ = place.offset;
        bareInFull_ = word.size() > 2;
    }
    out.push_back(std::move(element));
}

// "sl 1, k1, psso" follows: a yarn forward before it is an over.
bool RowParser::passedOverLater() const {
    constexpr std::size_t kFar = 9;  // tokens of "sl 1, k2tog, psso"
    for (std::size_t i = 0; i < kFar; ++i) {
        if (at_.isWord({"psso", "passo", "pass", "sso"}, i)) return true;
        if (at_.is(TokenKind::Star, i) || at_.is(TokenKind::End, i)) return false;
    }
    return false;
}

// "garter st", "k1, p1 rib", "in pattern": any number of stitches, one into one.
void RowParser::ground(Elements& out, const Term& term, const Place& place) {
    Working work;
    work.term = term.spellings.front();
    Tail tail;
    bool counted = false;
    countOf(work, {}, tail, counted);
    if (!tail.any()) parseExtent(tail);
    Elements body;
    if (term.spellings.front() == "rib" && out.size() >= 2) {
        const auto* last = std::get_if<Working>(&out.back().what);
        const auto* first = std::get_if<Working>(&out[out.size() - 2].what);
        if (last && first && last->takes == 1 && first->takes == 1 && last->makes == 1 &&
            first->makes == 1) {
            body.assign(std::make_move_iterator(out.end() - 2), std::make_move_iterator(out.end()));
            out.resize(out.size() - 2);
        }
    }
    const Place whole = spanning(body.empty() ? place : body.front().place, at_.previous().place);
    if (counted) return out.push_back({whole, std::move(work)});
    if (body.empty()) body.push_back({place, std::move(work)});
    if (!tail.any()) tail.toEnd = false;
    Element element = stretchOf(std::move(body), tail, whole, false);
    std::get<Stretch>(element.what).breaksAnywhere = true;
    out.push_back(std::move(element));
}

// "yo twice" is one stitch; "yo, k2tog twice" may mean both stitches.
void RowParser::workedTimes(Elements& out, Element element, const Figure& times) {
    const auto* work = std::get_if<Working>(&element.what);
    const Place place = spanning(element.place, at_.previous().place);
    const bool alone = !work || isYarnOver(*work) || out.empty() || times == Figure(1);
    Element usual{place, Group{{element}, times}};
    if (alone) return out.push_back(std::move(usual));

    // The stitches before it that the words may reach back to.
    std::size_t reach = 0;
    while (reach < kMostJoined - 1 && reach < out.size() &&
           std::holds_alternative<Working>(out[out.size() - 1 - reach].what)) {
        ++reach;
    }
    if (reach == 0) return out.push_back(std::move(usual));
    const Elements before(out.end() - static_cast<std::ptrdiff_t>(reach), out.end());
    out.resize(out.size() - reach);

    Choice choice;
    for (std::size_t joined = 0; joined <= reach; ++joined) {
        Reading reading;
        reading.meaning =
            timesText(times.of(0)) + " over the last " +
            (joined == 0 ? std::string("stitch") : std::to_string(joined + 1) + " stitches");
        const auto split = before.end() - static_cast<std::ptrdiff_t>(joined);
        reading.elements.assign(before.begin(), split);
        Elements body(split, before.end());
        body.push_back(element);
        reading.elements.push_back({place, Group{std::move(body), times}});
        choice.readings.push_back(std::move(reading));
    }
    out.push_back({spanning(before.front().place, place), std::move(choice)});
}

// "k to end"; "k1, p1 to end" alternates the two.
void RowParser::workedUntil(Elements& out, Element element, const Tail& tail, bool counted) {
    const Place place = spanning(element.place, at_.previous().place);
    Elements body;
    bool rib = false;
    const auto* work = std::get_if<Working>(&element.what);
    if (counted && work && !out.empty()) {
        const auto* before = std::get_if<Working>(&out.back().what);
        rib = before && before->takes == 1 && before->makes == 1 && work->takes == 1 &&
              work->makes == 1 && before->count == work->count && before->term != work->term &&
              before->term != "sl";
        if (rib) {
            body.push_back(std::move(out.back()));
            out.pop_back();
        }
    }
    body.push_back(std::move(element));
    Element stretch = stretchOf(std::move(body), tail, place, false);
    std::get<Stretch>(stretch.what).breaksAnywhere = rib;
    out.push_back(std::move(stretch));
}

// "in next st", "all into the same st", "in each of next 3 sts".
bool RowParser::parseInto(int& stitches, bool& each) {
    const std::size_t start = at_.position();
    at_.acceptWord({"all"});
    if (at_.acceptWord({"in", "into"})) {
        at_.skipWords({"the"});
        each = at_.acceptWord({"each"});
        if (each) at_.skipWords({"of", "the"});
        const bool which = at_.acceptWord(
            {"next", "same", "following", "foll", "first", "last", "one", "st", "stitch", "a"});
        stitches = 1;
        if (at_.is(TokenKind::Number) && at_.isStitchNoun(1)) {
            stitches = at_.peek().value;
            at_.advance(2);
            return true;
        }
        if (which || each) {
            at_.acceptStitchNoun();
            return true;
        }
    }
    at_.moveTo(start);
    return false;
}

// "k1, yo, k1 in next st" without a bracket: two stitches, or three when the outer two are alike.
void RowParser::intoOneUnbracketed(Elements& out, int takes, const Place& place) {
    std::size_t run = 0;
    while (run < 5 && run < out.size() &&
           std::holds_alternative<Working>(out[out.size() - 1 - run].what))
        ++run;
    if (run < 2) return;  // "k1 in next st" is a plain knit stitch
    const auto term = [&out](std::size_t back) {
        return std::get<Working>(out[out.size() - 1 - back].what).term;
    };
    const std::size_t usual = run >= 5 && term(4) == term(0) && term(2) == term(0) ? 5
                              : run >= 3 && term(2) == term(0)                     ? 3
                                                                                   : 2;
    const Elements before(out.end() - static_cast<std::ptrdiff_t>(run), out.end());
    out.resize(out.size() - run);
    Choice choice;
    const auto add = [&](std::size_t joined) {
        const auto split = before.end() - static_cast<std::ptrdiff_t>(joined);
        Reading reading{"the last " + std::to_string(joined) + " into one stitch",
                        {before.begin(), split}};
        reading.elements.push_back({place, IntoOne{{split, before.end()}, takes}});
        choice.readings.push_back(std::move(reading));
    };
    add(usual);
    for (std::size_t joined = 2; joined <= run; ++joined) {
        if (joined != usual) add(joined);
    }
    out.push_back({spanning(before.front().place, at_.previous().place), std::move(choice)});
}

}  // namespace lacewright
