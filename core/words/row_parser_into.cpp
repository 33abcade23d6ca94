#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

// "in next st", "all into the same st", "in each of next 3 sts"; 0 stitches for "in each st", which
// goes on to the end.
bool RowParser::parseInto(int& stitches, bool& each) {
    const std::size_t start = at_.position();
    at_.acceptWord({"all"});
    if (at_.acceptWord({"in", "into"})) {
        at_.skipWords({"the"});
        each = at_.acceptWord({"each", "every"});
        if (each) at_.skipWords({"of", "the"});
        const bool every = each && at_.isStitchNoun();
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
            if (every) stitches = 0;
            return true;
        }
    }
    at_.moveTo(start);
    return false;
}

// "into double yo", "in the yo2", "into next yo": how many loops that is; 0, and nothing is passed,
// when none stands here.
int RowParser::loopsOfOver() {
    const std::size_t start = at_.position();
    at_.acceptWord({"all"});
    if (at_.acceptWord({"in", "into"})) {
        at_.skipWords({"the", "each", "next", "both", "loops", "of", "same"});
        const bool several = at_.acceptWord({"double", "dyo"});
        const auto match = context_.vocabulary.match(at_.tokens(), at_.position());
        if (match && match->term->takes.with(match->number) == 0 &&
            match->term->rightId.starts_with("yo")) {
            at_.advance(match->tokens);
            if (at_.acceptWord({"twice"}) || several) return 2;
            return match->term->makes.with(match->number);
        }
        if (at_.acceptWord({"yos", "yarnovers", "overs"}) || several) return 2;
    }
    at_.moveTo(start);
    return 0;
}

// Into a double yarn over each stitch goes into a loop of its own, into a single one all go
// together; a double one may also be a single long loop.
Element RowParser::intoOver(Elements body, int loops, const Place& place) {
    Reading each{"one stitch into each loop of the yarn over", {{place, Group{body, Figure(1)}}}};
    Reading all{"all into one loop of the yarn over", {{place, IntoOne{body, 1}}}};
    std::int64_t made = 0;
    for (const Element& element : body) {
        if (const auto* work = std::get_if<Working>(&element.what))
            made += std::int64_t{work->makes} * work->count.of(0);
    }
    Reading whole{"all into the loops of the yarn over together",
                  {{place, IntoOne{std::move(body), loops}}}};
    Choice choice{{std::move(each), std::move(all)}};
    if (loops == 1) std::swap(choice.readings[0], choice.readings[1]);
    // "(k1, p1, k1) into double yo" makes three of its two loops.
    if (loops > 1 && made != loops)
        choice.readings.insert(choice.readings.begin(), std::move(whole));
    return {place, std::move(choice)};
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
        int over = takes;  // "k2tog, k into same st again"
        for (auto element = split; element != before.end(); ++element)
            over = std::max(over, std::get<Working>(element->what).takes);
        reading.elements.push_back({place, IntoOne{{split, before.end()}, over}});
        choice.readings.push_back(std::move(reading));
    };
    add(usual);
    for (std::size_t joined = 2; joined <= run; ++joined) {
        if (joined != usual) add(joined);
    }
    out.push_back({spanning(before.front().place, at_.previous().place), std::move(choice)});
}

}  // namespace lacewright
