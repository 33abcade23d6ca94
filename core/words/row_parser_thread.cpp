#include "core/words/row_parser.h"

namespace lacewright {

// "Throw the wool forward", "pass the thread twice round the needle", "cotton over": an over in the
// words of older books, whichever verb and fibre they name. Nothing is passed when none stands
// here.
bool RowParser::threadOver(Elements& out) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    const bool verb = at_.acceptWord({"bring", "throw", "pass", "put", "turn", "take", "carry",
                                      "wind", "wrap", "lay", "bringing", "throwing", "passing",
                                      "putting", "turning", "taking", "winding"});
    at_.skipWords({"the", "your"});
    if (!at_.acceptWord({"wool", "thread", "cotton", "silk", "yarn", "worsted", "twine"}))
        return at_.moveTo(start), false;
    int loops = 1;
    const auto times = [&] {
        if (at_.acceptWord({"twice"})) loops = 2;
        if (at_.isWord({"three", "two"}) && at_.isWord({"times"}, 1)) {
            loops = at_.peek().value;
            at_.advance(2);
        }
    };
    times();
    const bool over = at_.acceptWord({"over", "round", "around", "on"});
    const bool forward = !over && at_.acceptWord({"forward", "forwards"});
    at_.skipWords({"the"});
    const bool needle = at_.acceptWord({"needle", "needles", "pin"});
    times();
    // A spelling of the vocabulary that says as much goes before.
    const auto known = context_.vocabulary.match(at_.tokens(), start);
    const bool longer = !known || at_.position() > start + known->tokens;
    if (!longer) return at_.moveTo(start), false;
    if (verb && !over && !forward) {  // "take the wool to the back"
        at_.skipWords({"to", "in", "the"});
        if (!at_.acceptWord({"back", "backwards", "front"})) return at_.moveTo(start), false;
        at_.skipWords({"of", "the", "work"});
        out.push_back({spanning(place, at_.previous().place), Aside{"yb", 0}});
        return true;
    }
    if (!(over || forward) || !(verb || needle)) return at_.moveTo(start), false;
    const Term* term = context_.vocabulary.find(forward ? "yfwd" : "yo");
    const TermMatch match{term, 0, 0, {}};
    if (loops == 1) {
        stitch(out, match, place);
        return true;
    }
    Working one = working(*context_.vocabulary.find("yo"), {});
    workedTimes(out, {spanning(place, at_.previous().place), std::move(one)}, Figure(loops), true);
    return true;
}

}  // namespace lacewright
