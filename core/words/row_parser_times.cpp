#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostJoined = 4;  // stitches that "twice" may reach back over

bool isYarnOver(const Working& work) {
    return work.takes == 0 && work.makes > 0;
}

std::string timesText(int times) {
    return times == 2 ? "twice" : std::to_string(times) + " times";
}

}  // namespace

// "yo twice" is one stitch; "yo, k2tog twice" may mean both stitches.
void RowParser::workedTimes(Elements& out, Element element, const Figure& times, bool olderWord) {
    const auto* work = std::get_if<Working>(&element.what);
    const Place place = spanning(element.place, at_.previous().place);
    const bool alone = !work || isYarnOver(*work) || out.empty() || times == Figure(1);
    if (work && isYarnOver(*work) && times == Figure(2) && wrapsForPurl(olderWord)) {
        Working two = *work;
        two.count = times;
        return out.push_back(wrappedForPurl(*work, two, place));
    }
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

// In older books "th o twice, p 2 tog" lays the thread right round the needle, since a purl stitch
// follows: it makes one loop.
bool RowParser::wrapsForPurl(bool olderWord) {
    if (!olderWord && context_.vocabulary.wording() != Wording::Older) return false;
    const std::size_t start = at_.position();
    skipSeparators();
    const auto next = context_.vocabulary.match(at_.tokens(), at_.position());
    at_.moveTo(start);
    return next && next->number == 2 && next->term->rightId == "p#tog";
}

Element RowParser::wrappedForPurl(Working one, Working two, const Place& place) {
    return {place, Choice{{{"the thread round the needle, one loop", {{place, std::move(one)}}},
                           {"two overs", {{place, std::move(two)}}}}}};
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
    // "K across, dec 1 st at end"
    const std::size_t after = at_.position();
    skipSeparators();
    if (tail.toEnd &&
        at_.isWord({"inc", "dec", "increase", "decrease", "increasing", "decreasing", "evenly"}))
        std::get<Stretch>(stretch.what).leaves.reset();
    at_.moveTo(after);
    std::get<Stretch>(stretch.what).breaksAnywhere = rib;
    out.push_back(std::move(stretch));
}

// "Inc 4 sts evenly across": shaping whose places the words leave open, among stitches worked as
// they come or as the words before it say.
bool RowParser::evenly(Elements& out) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    at_.acceptWord({"and"});
    bool even = at_.acceptWord({"evenly"});
    const bool inc = at_.acceptWord({"inc", "increase", "increasing"});
    const bool dec = !inc && at_.acceptWord({"dec", "decrease", "decreasing"});
    if (!(inc || dec)) return at_.moveTo(start), false;
    const auto evenlyHere = [&] {
        if (at_.acceptWord({"evenly"})) even = true;
        if (!even) return;
        at_.skipWords({"spaced", "across", "around", "over", "along", "in", "the", "this", "row",
                       "rnd", "round", "all", "of", "last"});
        at_.acceptStitchNoun();
    };
    evenlyHere();
    std::optional<Figure> count;
    if (at_.isNumber()) {
        count = figure();
        at_.acceptStitchNoun();
        evenlyHere();
    }
    std::optional<Figure> total;  // "inc evenly to 36 sts"
    if (!count && at_.isWord({"to"}) && at_.isNumber(1)) {
        at_.advance();
        total = figure();
        if (!at_.acceptStitchNoun()) return at_.moveTo(start), false;
        evenlyHere();
    }
    if (!even || !(count || total)) return at_.moveTo(start), false;
    Tail extent;  // what follows takes what is left
    parseExtent(extent);
    Working shaped;
    shaped.term = std::string(kEvenly);
    shaped.takes = inc ? 0 : 2;
    shaped.makes = 1;
    if (count) shaped.count = *count;

    const auto open = [](const Element& e) { return std::holds_alternative<Stretch>(e.what); };
    if (std::none_of(out.begin(), out.end(), open)) {
        Working between;
        between.term = "asis";
        Element once{place, between};
        if (!out.empty() && bare_ == out.back().place.offset) {  // "K, inc 4 sts evenly"
            once = std::move(out.back());
            out.pop_back();
        }
        out.push_back(stretchOf({once}, {}, once.place, false));
    }
    const Place whole = spanning(place, at_.previous().place);
    if (!total) {
        out.push_back({whole, std::move(shaped)});
        return true;
    }
    Stretch stretch;
    stretch.body.push_back({whole, std::move(shaped)});
    stretch.total = std::move(total);
    out.push_back({whole, std::move(stretch)});
    return true;
}

}  // namespace lacewright
