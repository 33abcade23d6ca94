#include <algorithm>

#include "core/words/row_parser.h"

namespace lacewright {

void RowParser::bracket(Elements& out) {
    const Place open = at_.peek().place;
    at_.advance();
    Elements body;
    // Stars opened outside a bracket are not closed inside it.
    std::vector<int> outside;
    outside.swap(openStars_);
    ++brackets_;
    sequence(body);
    --brackets_;
    openStars_.swap(outside);
    if (!at_.accept(TokenKind::Close)) complain(open, "this bracket is never closed");
    const Place place = spanning(open, at_.previous().place);

    if (const int loops = loopsOfOver()) {
        return out.push_back(
            intoOver(std::move(body), loops, spanning(open, at_.previous().place)));
    }
    const std::size_t after = at_.position();
    int stitches = 0;
    bool each = false;
    if (parseInto(stitches, each)) {
        if (stitches == 0) {  // "in each st to end"
            Tail tail;
            if (!parseExtent(tail)) tail.toEnd = true;
            Element one{place, IntoOne{std::move(body), 1}};
            return out.push_back(stretchOf({std::move(one)}, tail, place, false));
        }
        int takes = each ? 1 : stitches;
        if (!each && stitches > 1) {
            // "(k3tog, yo, k3tog) in next 3 sts" is one working; "(k1, yo, k1) in next 3 sts" is
            // three.
            const bool wide = std::any_of(body.begin(), body.end(), [&](const Element& e) {
                const auto* work = std::get_if<Working>(&e.what);
                return work && work->takes == stitches;
            });
            if (!wide) {
                each = true;
                takes = 1;
            }
        }
        Element one{place, IntoOne{std::move(body), takes}};
        if (!each) return out.push_back(std::move(one));
        return out.push_back({place, Group{{std::move(one)}, Figure(stitches)}});
    }
    at_.moveTo(after);
    Tail tail;
    if (parseExtent(tail)) {
        Element element = stretchOf(std::move(body), tail, place, false);
        if (tail.toEnd && moreFollows()) std::get<Stretch>(element.what).leaves.reset();
        return out.push_back(std::move(element));
    }
    if (namedTimes(tail)) return out.push_back(stretchOf(std::move(body), tail, place, true));
    if (auto count = timesApart(tail)) {
        Elements last = endingOf(body, *count, place);
        out.push_back({place, Group{std::move(body), std::move(*count)}});
        std::move(last.begin(), last.end(), std::back_inserter(out));
        return;
    }
    if (at_.isNumber() && !context_.vocabulary.match(at_.tokens(), at_.position())) {
        return out.push_back({place, Group{std::move(body), figure()}});
    }
    out.push_back({place, Group{std::move(body), Figure(1)}});
}

// "5 x (yo, k2tog)". Nothing is passed when none stands here.
bool RowParser::timesBracket(Elements& out) {
    if (!at_.isNumber() || context_.vocabulary.match(at_.tokens(), at_.position())) return false;
    const std::size_t start = at_.position();
    const std::size_t messages = context_.figures.messages.size();
    const Place place = at_.peek().place;
    Figure count = figure();
    if (!at_.accept(TokenKind::Cross)) at_.acceptWord({"x", "times"});
    if (!at_.is(TokenKind::Open)) {
        context_.figures.messages.resize(std::min(messages, context_.figures.messages.size()));
        at_.moveTo(start);
        return false;
    }
    Elements inner;
    bracket(inner);
    const Place whole = spanning(place, at_.previous().place);
    auto* group = inner.empty() ? nullptr : std::get_if<Group>(&inner.front().what);
    if (group != nullptr && group->times == Figure(1)) inner = std::move(group->body);
    out.push_back({whole, Group{std::move(inner), std::move(count)}});
    return true;
}

}  // namespace lacewright
