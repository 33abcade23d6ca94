#include "core/words/open_repeats.h"

#include <algorithm>

#include "core/words/prove.h"

namespace lacewright {

namespace {

bool differsBySize(const Element& element) {
    const auto* group = std::get_if<Group>(&element.what);
    if (group == nullptr) return false;
    const std::vector<int>& times = group->times.bySize;
    return std::any_of(times.begin(), times.end(), [&](int n) { return n != times.front(); });
}

// Gives every open stretch of the row the number of times that the proof found; false when it found
// none.
bool closeStretches(Elements& elements, const WrittenRowProof& proof) {
    std::size_t own = 0;
    for (Element& element : elements) {
        const auto* stretch = std::get_if<Stretch>(&element.what);
        if (stretch == nullptr) continue;
        if (own >= proof.counted.own.size() || !stretch->lastTime.empty() ||
            (stretch->breaksAnywhere && stretch->body.size() > 1))
            return false;
        const auto solved = proof.fit.solved.find(proof.counted.own[own++].variable);
        if (solved == proof.fit.solved.end() || !solved->second.isConstant()) return false;
        Group group{stretch->body, Figure(static_cast<int>(solved->second.constant())), {}};
        element.what = std::move(group);
    }
    return own == proof.counted.own.size();
}

}  // namespace

WrittenPattern withOpenRepeats(const WrittenPattern& pattern, std::size_t size) {
    WrittenPattern open = pattern;
    const WrittenProof proof = proveWritten(pattern, size);
    for (std::size_t r = 0; r < open.rows.size(); ++r) {
        Elements elements = open.rows[r].elements;
        const auto repeat = std::find_if(elements.begin(), elements.end(), differsBySize);
        const bool fits = proof.rows[r].verdict == RowVerdict::Fits;
        if (repeat == elements.end() || !fits) continue;
        const auto at = repeat - elements.begin();
        if (!closeStretches(elements, proof.rows[r])) continue;
        Element& element = elements[static_cast<std::size_t>(at)];
        Stretch stretch;
        stretch.body = std::get<Group>(element.what).body;
        stretch.starred = true;
        element.what = std::move(stretch);
        open.rows[r].elements = std::move(elements);
    }
    return open;
}

}  // namespace lacewright
