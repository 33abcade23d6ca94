#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

namespace {

bool sameWork(const Element& a, const Element& b) {
    const auto* left = std::get_if<Working>(&a.what);
    const auto* right = std::get_if<Working>(&b.what);
    return left && right && left->term == right->term && left->count == right->count;
}

}  // namespace

// Something else than the end of the row, a closing bracket or a stated count comes next.
bool RowParser::moreFollows() {
    const std::size_t here = at_.position();
    skipSeparators();
    ParsedRow stated;
    const bool last = at_.atEnd() || at_.is(TokenKind::Close) || parseStated(stated);
    at_.moveTo(here);
    return !last;
}

// "ending last rep k2 instead of k5", "ending last rep at **", "ending k2 instead of k5".
RowParser::Ending RowParser::parseEnding() {
    Ending ending;
    skipSeparators();
    at_.skipWords({"but"});
    const bool ends = at_.acceptWord(
        {"ending", "end", "ends", "finishing", "finish", "terminate", "terminating"});
    const bool omits = !ends && at_.acceptWord({"omitting", "omit"});
    if (!ends && !omits) return ending;
    bool last = false;
    at_.skipWords({"the"});
    if (omits) {
        sequence(ending.insteadOf);
        ending.lastTime = !ending.insteadOf.empty();
        return ending;
    }
    if (at_.acceptWord({"last", "final"})) {
        last = at_.acceptWord({"rep", "repeat", "time", "group", "patt", "pattern"});
    }
    at_.skipWords({"with", "at", "by", "on"});
    if (last && at_.is(TokenKind::Star)) {
        ending.mark = at_.peek().value;
        ending.lastTime = true;
        at_.advance();
        return ending;
    }
    // One item here: more would be taken from the rest of the row.
    item(ending.with);
    if (at_.isWord({"instead"}) && at_.isWord({"of"}, 1)) {
        at_.advance(2);
        item(ending.insteadOf);
        ending.lastTime = true;
    }
    if (last) ending.lastTime = true;
    return ending;
}

// "(..) 4 times, ending last rep k4 instead of k1": the last pass, which `times` then leaves out.
Elements RowParser::endingOf(const Elements& body, Figure& times, const Place& place) {
    const std::size_t start = at_.position();
    const auto& all = times.bySize;
    const Ending ending = parseEnding();
    if (ending.lastTime && std::all_of(all.begin(), all.end(), [](int n) { return n > 0; }) &&
        affordable(body, place)) {
        for (int& n : times.bySize) --n;
        return lastPass(body, ending, place);
    }
    at_.moveTo(start);
    return {};
}

// The body as it is worked for the last time.
Elements RowParser::lastPass(const Elements& body, const Ending& ending, const Place& place) {
    Elements last = body;
    if (ending.mark > 0) {
        const auto mark = std::find_if(last.begin(), last.end(), [&](const Element& e) {
            const auto* aside = std::get_if<Aside>(&e.what);
            return aside && aside->marks == ending.mark;
        });
        if (mark == last.end()) complain(place, "the repeat has no such star to end at");
        last.erase(mark, last.end());
        return last;
    }
    const Elements& old = ending.insteadOf;
    const std::size_t drop = old.empty() ? 1 : old.size();
    bool matches = drop <= last.size();
    for (std::size_t i = 0; matches && i < old.size(); ++i) {
        matches = sameWork(last[last.size() - drop + i], old[i]);
    }
    if (!matches) {
        complain(place, "the repeat does not end in what is to be replaced");
        return last;
    }
    last.erase(last.end() - static_cast<std::ptrdiff_t>(drop), last.end());
    last.insert(last.end(), ending.with.begin(), ending.with.end());
    return last;
}

}  // namespace lacewright
