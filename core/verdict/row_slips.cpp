#include "core/verdict/row_slips.h"

#include <algorithm>
#include <functional>
#include <optional>

#include "core/verdict/figure_slips.h"
#include "core/verdict/slip_letters.h"

namespace lacewright {
namespace {

constexpr int kLongestRun = 100;  // of like stitches, within which slips are looked for

// `figure` with `less` taken away for every size; nothing where a size has not so many.
std::optional<Figure> lessened(const Figure& figure, int less) {
    Figure result = figure;
    for (int& count : result.bySize) {
        count -= less;
        if (count < 0) return std::nullopt;
    }
    return result;
}

class Visitor {
 public:
    using Visit = std::function<void(const SlipUndone&)>;
    Visitor(const std::vector<Working>& letters, std::size_t size, const Visit& visit)
        : letters_(letters), size_(size), visit_(visit) {}

    // `whole` gives the row's elements with these in their place.
    void walk(const Elements& elements, const std::function<Elements(Elements)>& whole) {
        for (std::size_t i = 0; i < elements.size(); ++i) {
            const auto with = [&](const std::vector<Element>& instead) {
                Elements changed(elements.begin(), elements.begin() + static_cast<long>(i));
                changed.insert(changed.end(), instead.begin(), instead.end());
                changed.insert(changed.end(), elements.begin() + static_cast<long>(i) + 1,
                               elements.end());
                return whole(std::move(changed));
            };
            if (const auto* working = std::get_if<Working>(&elements[i].what)) {
                const Working* before =
                    i > 0 ? std::get_if<Working>(&elements[i - 1].what) : nullptr;
                const Working* behind =
                    i + 1 < elements.size() ? std::get_if<Working>(&elements[i + 1].what) : nullptr;
                change(elements[i], *working, before, behind, with);
            } else {
                putInBefore(elements, i, with);
                inside(elements[i], with);
            }
        }
        const Working* last =
            elements.empty() ? nullptr : std::get_if<Working>(&elements.back().what);
        for (const Working& letter : letters_) {
            if (last != nullptr && sameWork(*last, letter)) continue;
            Elements changed = elements;
            changed.push_back(comes(letter));
            visit_({SlipUndone::Kind::PutIn, whole(std::move(changed)), letter});
        }
    }

 private:
    template <class With>
    void change(const Element& element, const Working& working, const Working* before,
                const Working* behind, const With& with) {
        const auto some = [&](const Figure& count) {
            Element part = element;
            std::get<Working>(part.what).count = count;
            return part;
        };
        const int count = working.count.of(size_);
        for (int j = 0; j < std::min(count, kLongestRun); ++j) {
            const auto rest = lessened(working.count, j);
            const auto others = lessened(working.count, j + 1);
            if (!rest) break;
            const auto parts = [&](const Working& letter, const Figure& left) {
                std::vector<Element> all;
                if (j > 0) all.push_back(some(Figure(j)));
                all.push_back(comes(letter));
                if (left.of(size_) > 0 || left.bySize.size() > 1) all.push_back(some(left));
                return all;
            };
            for (const Working& letter : letters_) {
                const bool likeBefore = j == 0 && before != nullptr && sameWork(*before, letter);
                if (!sameWork(letter, working) && !likeBefore)
                    visit_({SlipUndone::Kind::PutIn, with(parts(letter, *rest)), letter});
                if (!sameWork(letter, working) && others)
                    visit_({SlipUndone::Kind::Reworked, with(parts(letter, *others)), letter});
            }
        }
        otherCounts(element, with);
        // One more of the same; one fewer.
        Working same = working;
        same.count = Figure(1);
        if (before == nullptr || !sameWork(*before, working)) {
            std::vector<Element> parts{some(working.count), comes(same)};
            if (count == 0) parts.erase(parts.begin());
            visit_({SlipUndone::Kind::PutIn, with(parts), same});
        }
        const auto fewer = lessened(working.count, 1);
        if (!fewer || (before != nullptr && sameWork(*before, working))) return;
        const bool twice = count > 1 || (behind != nullptr && sameWork(*behind, working));
        std::vector<Element> left;
        if (fewer->of(size_) > 0 || fewer->bySize.size() > 1) left.push_back(some(*fewer));
        visit_({SlipUndone::Kind::LeftOut, with(left), same, twice});
    }

    template <class With>
    void putInBefore(const Elements& elements, std::size_t i, const With& with) {
        const Working* before = i > 0 ? std::get_if<Working>(&elements[i - 1].what) : nullptr;
        for (const Working& letter : letters_) {
            if (before != nullptr && sameWork(*before, letter)) continue;
            visit_({SlipUndone::Kind::PutIn, with({comes(letter), elements[i]}), letter});
        }
    }

    using Kind = SlipUndone::Kind;

    // `figureOf` gives the number within an element of this kind.
    template <class FigureOf, class With>
    void otherFigures(const SlipUndone& slip, const Element& element, int leastOff,
                      FigureOf figureOf, const With& with) {
        Element other = element;
        SlipUndone told = slip;
        told.written = figureOf(other);
        for (Figure& figure : figuresNear(told.written, size_, leastOff)) {
            told.figure = figure;
            figureOf(other) = std::move(figure);
            told.elements = with({other});
            visit_(told);
        }
    }

    // What a stretch leaves before the end or a landmark.
    template <class With>
    void otherRests(const Element& element, const With& with) {
        const auto& stretch = std::get<Stretch>(element.what);
        SlipUndone slip{Kind::Rest, {}, {}};
        slip.to = stretch.to;
        if (stretch.to == Landmark::Marker) {
            otherFigures(
                slip, element, 1,
                [](Element& e) -> Figure& { return std::get<Stretch>(e.what).before; }, with);
        } else if (stretch.leaves) {
            otherFigures(
                slip, element, 1,
                [](Element& e) -> Figure& { return *std::get<Stretch>(e.what).leaves; }, with);
        }
    }

    // Brackets worked more or fewer times; the first stitch in them tells the place.
    template <class With>
    void otherTimes(const Element& element, const With& with) {
        Element other = element;
        auto& group = std::get<Group>(other.what);
        if (group.body.empty() || group.orTimes) return;
        group.body.front().place = kNewPlace;
        SlipUndone slip{Kind::Brackets, {}, {}};
        slip.meant.term = group.starred ? "repeat" : "brackets";
        otherFigures(
            slip, other, 1, [](Element& e) -> Figure& { return std::get<Group>(e.what).times; },
            with);
    }

    // One more and one fewer are a stitch put in or left out.
    template <class With>
    void otherCounts(const Element& element, const With& with) {
        const auto& working = std::get<Working>(element.what);
        if (working.count.bySize.size() == 1 && working.count.of(0) < 2) return;
        Element other = element;
        other.place = kNewPlace;
        SlipUndone slip{Kind::Count, {}, working};
        otherFigures(
            slip, other, 2, [](Element& e) -> Figure& { return std::get<Working>(e.what).count; },
            with);
    }

    template <class With>
    void inside(const Element& element, const With& with) {
        const auto within = [&](const Elements& body, auto bodyOf) {
            walk(body, [&](Elements changed) {
                Element whole = element;
                bodyOf(whole) = std::move(changed);
                return with({whole});
            });
        };
        if (const auto* group = std::get_if<Group>(&element.what)) {
            otherTimes(element, with);
            within(group->body,
                   [](Element& e) -> Elements& { return std::get<Group>(e.what).body; });
        } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            otherRests(element, with);
            if (!stretch->starred) return;
            within(stretch->body,
                   [](Element& e) -> Elements& { return std::get<Stretch>(e.what).body; });
            if (stretch->lastTime.empty()) return;
            within(stretch->lastTime,
                   [](Element& e) -> Elements& { return std::get<Stretch>(e.what).lastTime; });
        }
    }

    static Element comes(const Working& letter) { return {kNewPlace, letter}; }

    const std::vector<Working>& letters_;
    std::size_t size_;
    const Visit& visit_;
};

}  // namespace

void forEachSlip(const WrittenRow& row, const std::vector<Working>& letters, std::size_t size,
                 const std::function<void(const SlipUndone&)>& visit) {
    Visitor(letters, size, visit).walk(row.elements, [](Elements changed) { return changed; });
}

}  // namespace lacewright
