#include "core/words/merge_phrases.h"

#include <algorithm>
#include <optional>

namespace lacewright {
namespace {

bool sameShape(const Phrases& a, const Phrases& b);

bool sameShape(const Phrase& a, const Phrase& b) {
    return a.word == b.word && sameShape(a.body, b.body);
}

bool sameShape(const Phrases& a, const Phrases& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const Phrase& x, const Phrase& y) { return sameShape(x, y); });
}

// Phrases of one shape, their numbers side by side.
Phrase joined(const std::vector<const Phrase*>& bySize) {
    Phrase all = *bySize.front();
    for (std::size_t i = 1; i < bySize.size(); ++i) all.times.push_back(bySize[i]->times.front());
    for (std::size_t part = 0; part < all.body.size(); ++part) {
        std::vector<const Phrase*> parts;
        for (const Phrase* phrase : bySize) parts.push_back(&phrase->body[part]);
        all.body[part] = joined(parts);
    }
    return all;
}

// The phrase `back` places from the start, or from the end.
const Phrase& nth(const Phrases& phrases, std::size_t n, bool fromEnd) {
    return fromEnd ? phrases[phrases.size() - 1 - n] : phrases[n];
}

// All lists in the words of one of them, numbers side by side; nothing when none tells them all.
std::optional<Phrases> inOneShape(const std::vector<Phrases>& bySize, const WordNumbers& numbers) {
    std::vector<std::vector<WordIndex>> runs;
    for (const Phrases& phrases : bySize) runs.push_back(spelledOut(phrases));
    const std::size_t start = bySize.front().empty() ? 0 : bySize.front().front().first;
    for (const Phrases& shape : bySize) {
        if (shape.empty()) continue;
        std::vector<Phrases> fitted;
        for (const auto& run : runs) {
            auto own = fittedTo(shape, run, numbers);
            if (!own) break;
            fitted.push_back(std::move(*own));
        }
        if (fitted.size() < runs.size()) continue;
        Phrases all;
        for (std::size_t n = 0; n < shape.size(); ++n) {
            std::vector<const Phrase*> parts;
            for (const Phrases& own : fitted) parts.push_back(&own[n]);
            all.push_back(joined(parts));
        }
        shift(all, start);
        return all;
    }
    return {};
}

}  // namespace

Phrases mergedPhrases(const std::vector<Phrases>& bySize, const WordNumbers& numbers) {
    if (bySize.size() == 1) return bySize.front();
    if (auto one = inOneShape(bySize, numbers)) return std::move(*one);
    const Phrases& front = bySize.front();
    std::size_t shortest = front.size();
    for (const Phrases& phrases : bySize) shortest = std::min(shortest, phrases.size());
    const auto agreeing = [&](std::size_t limit, bool fromEnd) {
        std::size_t n = 0;
        while (n < limit && std::all_of(bySize.begin(), bySize.end(), [&](const Phrases& phrases) {
                   return sameShape(nth(phrases, n, fromEnd), nth(front, n, fromEnd));
               })) {
            ++n;
        }
        return n;
    };
    const std::size_t head = agreeing(shortest, false);
    const std::size_t tail = agreeing(shortest - head, true);
    const auto side = [&](std::size_t n, bool fromEnd) {
        std::vector<const Phrase*> parts;
        for (const Phrases& phrases : bySize) parts.push_back(&nth(phrases, n, fromEnd));
        return joined(parts);
    };

    Phrases merged;
    for (std::size_t n = 0; n < head; ++n) merged.push_back(side(n, false));
    std::vector<Phrases> middles;
    for (const Phrases& phrases : bySize) {
        middles.emplace_back(phrases.begin() + static_cast<std::ptrdiff_t>(head),
                             phrases.end() - static_cast<std::ptrdiff_t>(tail));
    }
    std::vector<bool> done(middles.size(), false);
    if (auto one = inOneShape(middles, numbers)) {
        merged.insert(merged.end(), one->begin(), one->end());
        done.assign(middles.size(), true);
    }
    for (std::size_t i = 0; i < middles.size(); ++i) {
        if (done[i] || middles[i].empty()) continue;
        Phrase only;
        only.body = middles[i];
        if (i == 0) {
            only.first = only.body.front().first;
            only.length = only.body.back().first + only.body.back().length - only.first;
        }
        only.times.assign(middles.size(), 0);
        for (std::size_t k = i; k < middles.size(); ++k) {
            // The same work, whatever cells it stands for.
            if (sameShape(middles[k], middles[i]) &&
                spelledOut(middles[k]) == spelledOut(middles[i])) {
                only.times[k] = 1;
                done[k] = true;
            }
        }
        merged.push_back(std::move(only));
    }
    for (std::size_t n = tail; n-- > 0;) merged.push_back(side(n, true));
    return merged;
}

}  // namespace lacewright
