#include <iterator>

#include "core/words/row_parser.h"

namespace lacewright {

namespace {

bool isTurn(const Elements& elements, std::size_t at) {
    const auto* aside = at < elements.size() ? std::get_if<Aside>(&elements[at].what) : nullptr;
    return aside != nullptr && aside->term == "turn";
}

// Several stitches worked into one; how many: 0 when it is something else.
int madeIntoOne(const Element& element) {
    const auto* one = std::get_if<IntoOne>(&element.what);
    if (one == nullptr || one->takes != 1) return 0;
    int made = 0;
    for (const Element& inner : one->body) {
        const auto* work = std::get_if<Working>(&inner.what);
        if (work == nullptr || work->count.bySize.size() > 1) return 0;
        made += work->makes * work->count.of(0);
    }
    return made;
}

// The place behind the bobble that begins at `first`, worked to and fro over the stitches made into
// one until a single one is left; `first` itself when none begins there.
std::size_t endOfBobble(const Elements& elements, std::size_t first) {
    int have = madeIntoOne(elements[first]);
    std::size_t at = first + 1;
    int turns = 0;
    while (have > 1 && isTurn(elements, at)) {
        ++at;
        ++turns;
        int left = have;
        have = 0;
        while (left > 0 && at < elements.size()) {
            const auto* work = std::get_if<Working>(&elements[at].what);
            if (work == nullptr || work->count.bySize.size() > 1) return first;
            left -= work->takes * work->count.of(0);
            have += work->makes * work->count.of(0);
            ++at;
        }
        if (left != 0) return first;
    }
    return have == 1 && turns >= 2 && turns % 2 == 0 ? at : first;
}

}  // namespace

// "(k1, yo, k1) in next st, turn, p3, turn, k3tog" is one stitch.
void RowParser::foldBobbles(Elements& elements) const {
    for (std::size_t i = 0; i < elements.size(); ++i) {
        const std::size_t end = endOfBobble(elements, i);
        if (end == i) continue;
        const Place place = spanning(elements[i].place, elements[end - 1].place);
        elements[i] = {place, working(*context_.vocabulary.find("mb"), {})};
        elements.erase(elements.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                       elements.begin() + static_cast<std::ptrdiff_t>(end));
    }
}

// After "k": "into front and back of next st", "in front, back and front". How many stitches are
// made so; 0, and nothing is passed, when none stands here.
int RowParser::loopsFrontAndBack() {
    const std::size_t start = at_.position();
    if (at_.acceptWord({"in", "into"})) {
        int made = 0;
        for (;;) {
            at_.skipWords({"the", "and", "then", "into", "in", "again"});
            at_.accept(TokenKind::Comma);
            at_.skipWords({"and", "the", "then"});
            if (!at_.acceptWord({"front", "back"})) break;
            ++made;
            at_.acceptWord({"loop", "loops", "leg"});
        }
        if (made > 1) {
            if (at_.acceptWord({"of"})) {
                at_.skipWords(
                    {"the", "next", "same", "first", "last", "each", "foll", "following"});
                at_.acceptStitchNoun();
            }
            return made;
        }
    }
    at_.moveTo(start);
    return 0;
}

}  // namespace lacewright
