#include "core/words/open_repeats.h"

#include <algorithm>

#include "core/chart/letter_names.h"
#include "core/words/prove.h"

namespace lacewright {

namespace {

bool differs(const std::vector<int>& times) {
    return std::any_of(times.begin(), times.end(), [&](int n) { return n != times.front(); });
}

constexpr int kLeastCounted = 3;  // times that make a counted repeat a box

bool differsBySize(const Element& element) {
    const auto* group = std::get_if<Group>(&element.what);
    return group != nullptr && differs(group->times.bySize);
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

bool isRepeat(const Element& element, RepeatMarks marks) {
    if (marks == RepeatMarks::PlainToo) return true;
    const auto* stretch = std::get_if<Stretch>(&element.what);
    return stretch == nullptr || stretch->starred;
}

// How often a part of a row without open stretches is worked, where that may be told by a number.
std::optional<int> timesOf(const Element& element, std::size_t size, RepeatMarks marks) {
    if (const auto* group = std::get_if<Group>(&element.what)) return group->times.of(size);
    const auto* work = std::get_if<Working>(&element.what);
    if (work == nullptr || marks == RepeatMarks::Marked) return {};
    return work->count.of(size);
}

Stretch openStretch(const Element& element) {
    if (const auto* stretch = std::get_if<Stretch>(&element.what)) return *stretch;
    Stretch open;
    open.starred = true;
    if (std::holds_alternative<Working>(element.what)) {
        open.body = {element};
        std::get<Working>(open.body.front().what).count = Figure(1);
        return open;
    }
    open.body = std::get<Group>(element.what).body;
    return open;
}

// The one repeat of the row that the text stars and counts, "*..; rep from * 4 more times"; the end
// when there is none, or more than one.
Elements::iterator onlyStarred(Elements& elements, std::size_t size, const ReadingsChosen& chosen) {
    auto found = elements.end();
    for (auto element = elements.begin(); element != elements.end(); ++element) {
        const auto* stretch = std::get_if<Stretch>(&element->what);
        if (stretch != nullptr && stretch->starred) return elements.end();
        const auto* group = std::get_if<Group>(&element->what);
        if (group == nullptr || !group->starred ||
            chosenTimes(*group, size, chosen) < kLeastCounted)
            continue;
        if (found != elements.end()) return elements.end();
        found = element;
    }
    return found;
}

// A single repeat goes to the end.
void openOnly(WrittenRow& row, const CountedRepeats& repeats) {
    for (const std::size_t at : repeats.elements)
        row.elements[at].what = openStretch(row.elements[at]);
}

}  // namespace

std::optional<CountedRepeats> countedRepeats(const WrittenRow& row,
                                             const std::vector<const WrittenRowProof*>& bySize,
                                             RepeatMarks marks) {
    CountedRepeats repeats;
    for (const WrittenRowProof* proof : bySize) {
        Elements& closed = repeats.closed.emplace_back(row.elements);
        if (proof->verdict != RowVerdict::Fits || !closeStretches(closed, *proof)) return {};
    }
    for (std::size_t i = 0; i < row.elements.size(); ++i) {
        std::vector<int> times;
        for (std::size_t size = 0; size < repeats.closed.size(); ++size) {
            const auto worked = timesOf(repeats.closed[size][i], size, marks);
            if (worked) times.push_back(*worked);
        }
        if (times.empty()) continue;
        // What is worked once at most is a part that some sizes leave out.
        const bool often =
            *std::max_element(times.begin(), times.end()) > 1 || marks == RepeatMarks::PlainToo;
        if (!differs(times) || !often || !isRepeat(row.elements[i], marks)) continue;
        repeats.elements.push_back(i);
        repeats.times.push_back(std::move(times));
    }
    if (row.side == Side::Wrong) {
        std::reverse(repeats.elements.begin(), repeats.elements.end());
        std::reverse(repeats.times.begin(), repeats.times.end());
    }
    return repeats;
}

void nameAllRepeats(WrittenRow& row, const CountedRepeats& repeats, std::size_t size) {
    row.elements = repeats.closed[size];
    for (std::size_t i = 0; i < repeats.elements.size(); ++i) {
        Element& element = row.elements[repeats.elements[i]];
        Stretch stretch = openStretch(element);
        stretch.named = i;
        element.what = std::move(stretch);
    }
}

WrittenPattern withOpenRepeats(const WrittenPattern& pattern, std::size_t size) {
    WrittenPattern open = pattern;
    const WrittenProof proof = proveWritten(pattern, size);
    const bool counted = proof.knittable && proof.castOn && proof.castOn->multiple == 0;
    for (std::size_t r = 0; r < open.rows.size(); ++r) {
        Elements elements = open.rows[r].elements;
        auto repeat = std::find_if(elements.begin(), elements.end(), [](const Element& element) {
            return differsBySize(element) && std::get<Group>(element.what).starred;
        });
        if (repeat == elements.end() && counted)
            repeat = onlyStarred(elements, size, proof.rows[r].counted.chosen);
        if (repeat == elements.end())
            repeat = std::find_if(elements.begin(), elements.end(), differsBySize);
        const bool fits = proof.rows[r].verdict == RowVerdict::Fits;
        if (repeat == elements.end() || !fits) continue;
        const auto at = repeat - elements.begin();
        if (!closeStretches(elements, proof.rows[r])) continue;
        Element& element = elements[static_cast<std::size_t>(at)];
        element.what = openStretch(element);
        open.rows[r].elements = std::move(elements);
    }
    return open;
}

std::optional<NamedRepeats> withNamedRepeats(const WrittenPattern& pattern) {
    std::vector<WrittenProof> proofs;
    for (std::size_t size = 0; size < pattern.sizeCount(); ++size)
        proofs.push_back(proveWritten(pattern, size));
    std::vector<CountedRepeats> rows;
    std::vector<std::vector<int>> counts;
    for (std::size_t r = 0; r < pattern.rows.size(); ++r) {
        std::vector<const WrittenRowProof*> bySize;
        for (const WrittenProof& proof : proofs) bySize.push_back(&proof.rows[r]);
        auto repeats = countedRepeats(pattern.rows[r], bySize);
        if (!repeats) return {};
        if (repeats->times.size() > counts.size()) counts = repeats->times;
        rows.push_back(std::move(*repeats));
    }
    if (counts.size() < 2) return {};
    for (const CountedRepeats& row : rows) {
        if (row.times.size() > 1 && row.times != counts) return {};
    }
    NamedRepeats named;
    for (std::size_t size = 0; size < pattern.sizeCount(); ++size) {
        WrittenPattern& own = named.patterns.emplace_back(pattern);
        std::vector<int>& times = named.times.emplace_back();
        for (std::size_t i = 0; i < counts.size(); ++i) {
            own.counts.push_back(letterName(static_cast<int>(i)));
            times.push_back(counts[i][size]);
        }
        for (std::size_t r = 0; r < rows.size(); ++r) {
            if (rows[r].elements.size() > 1)
                nameAllRepeats(own.rows[r], rows[r], size);
            else
                openOnly(own.rows[r], rows[r]);
        }
    }
    return named;
}

}  // namespace lacewright
