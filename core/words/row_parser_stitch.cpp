#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

void RowParser::stitch(Elements& out, const TermMatch& match, const Place& place) {
    const Term& term = *match.term;
    if (term.role == TermRole::Aside || term.role == TermRole::Modifier) {
        return out.push_back({place, Aside{term.spellings.front(), 0}});
    }
    if (term.role == TermRole::Ground) return ground(out, term, place);

    const std::string word = at_.previous().text;
    const bool olderWord =
        word == "over" && (at_.position() < 2 || at_.tokens()[at_.position() - 2].text != "yarn");
    Working work = working(term, match);
    Tail tail;
    bool counted = match.number > 0;
    if ((work.term == "k" || work.term == "p") && !counted) {
        if (const int made = loopsFrontAndBack()) {
            const char* name = made == 2 ? "fb" : made == 3 ? "fbf" : "";
            const Term* known = context_.vocabulary.find(work.term + name);
            if (known != nullptr && *name != 0) work = working(*known, {});
            work.makes = made;
            counted = true;
        }
    }
    if (work.makes > 1 && at_.isWord({"of"})) {  // "kfb of next st"
        at_.skipWords({"of", "the", "next", "first", "last", "same", "each", "foll", "following"});
        at_.acceptStitchNoun();
        counted = true;
    }
    countOf(work, match, tail, counted);
    // "drop yos" is as many as there are.
    const bool dropsSeveral = work.term == "drop" && !counted &&
                              at_.isWord({"yos", "loops", "wraps", "yarnovers", "extra", "both"});
    if (work.term == "drop") {  // "drop 1 yo", "drop extra loops"
        at_.skipWords({"of",   "the",   "extra", "yo",    "yos",    "yarnover", "yarnovers",
                       "yarn", "overs", "loop",  "loops", "wrap",   "wraps",    "sts",
                       "st",   "from",  "off",   "left",  "needle", "previous", "prev",
                       "last", "row",   "rnd",   "below"});
    }
    // "k next 2 sts tog"
    if (at_.isWord({"tog", "together"}) && work.takes == 1 && work.makes == 1) {
        if (const Term* together = context_.vocabulary.find(work.term + " # tog")) {
            const int number = work.count.of(0);
            work = working(*together,
                           {together, 0, number, work.term + std::to_string(number) + "tog"});
            at_.advance();
        } else if (work.term == "sl") {  // "sl 2 tog knitwise"
            at_.advance();
        }
    }
    modifiers(work);
    if (work.takes == 0 && work.makes < 0) passWhatIsPassedOver();
    const bool stop = at_.is(TokenKind::Stop) && at_.peek().glued && word.size() <= 2 &&
                      at_.isWord({"to", "until", "till", "across"}, 1);
    if (stop) at_.advance();  // "P. to end"
    if (counted && !tail.any()) passFabric();
    int into = 0;
    bool each = false;
    const std::size_t before = at_.position();
    const bool intoOne = parseInto(into, each);
    if (intoOne && each && into > 0) work.count = Figure(into);
    if (intoOne && into == 0 && !parseExtent(tail)) tail.toEnd = true;
    if (!intoOne) {
        at_.moveTo(before);
        loopsOfOver();  // "k1, p1 into double yo": one into each loop
    }
    if (!tail.any() && !intoOne) parseExtent(tail);

    Element element{spanning(place, at_.previous().place), work};
    if (term.mayMean && mayMeanOther(term, work)) {
        Working other = work;
        other.takes = term.mayMean->takes;
        other.makes = term.mayMean->makes;
        other.rightId = other.wrongId = "";
        element.what = Choice{{{term.meaning, {{element.place, work}}},
                               {term.mayMean->meaning, {{element.place, other}}}}};
        // Yarn forward before a slipped stitch usually only moves the yarn.
        std::size_t skip = at_.is(TokenKind::Comma) ? 1 : 0;
        if (other.makes == 0 && at_.isWord({"sl", "slip"}, skip)) {
            auto& readings = std::get<Choice>(element.what).readings;
            std::swap(readings[0], readings[1]);
        }
    }
    if (work.takes == 0 && work.makes == 2 && !tail.any() && wrapsForPurl(false))
        return out.push_back(
            wrappedForPurl(working(*context_.vocabulary.find("yo"), {}), work, element.place));
    if (dropsSeveral) {
        Choice several;
        for (const int loops : {2, 1, 3, 4}) {
            Working dropped = work;
            dropped.count = Figure(loops);
            several.readings.push_back({std::to_string(loops) + " dropped each time",
                                        {{element.place, std::move(dropped)}}});
        }
        element.what = std::move(several);
        return out.push_back(std::move(element));
    }
    if (tail.any()) return workedUntil(out, std::move(element), tail, counted);
    if (intoOne && !each) {
        out.push_back(std::move(element));
        return intoOneUnbracketed(out, into, place);
    }
    Tail often;
    if (auto count = times(often)) return workedTimes(out, std::move(element), *count, olderWord);
    if (!counted) {
        bare_ = place.offset;
        bareInFull_ = word.size() > 2;
    }
    out.push_back(std::move(element));
}

// The second meaning of the term may be meant here. A double over is one long loop only where the
// text lets loops fall; yarn brought forward lies over the needle when a knit stitch or "sl 1, k1,
// psso" follows, and may only have been moved before a purl or a slipped stitch.
bool RowParser::mayMeanOther(const Term& term, const Working& work) {
    if (work.takes == term.mayMean->takes && work.makes == term.mayMean->makes) return false;
    if (work.makes > 1) return context_.lettingFall;
    if (term.mayMean->makes > 0 || work.takes > 0) return true;
    const std::size_t start = at_.position();
    skipSeparators();
    const auto next = context_.vocabulary.match(at_.tokens(), at_.position());
    const bool purl = next && (next->term->rightId.starts_with("p") || next->term->rightId.empty());
    const bool slip = next && next->term->rightId.starts_with("sl") && !passedOverLater();
    at_.moveTo(start);
    return purl || slip;
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

}  // namespace lacewright
