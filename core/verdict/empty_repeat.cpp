#include "core/verdict/empty_repeat.h"

namespace lacewright {
namespace {

// How many stitches are worked, and how many loops they use up; stretches are worked once.
struct WorkedLoops {
    int stitches = 0;
    int takes = 0;

    void add(const WorkedLoops& other, int times) {
        stitches += times * other.stitches;
        takes += times * other.takes;
    }
};

WorkedLoops workedIn(const Elements& elements, std::size_t size);

struct Counter {
    std::size_t size;

    WorkedLoops operator()(const Working& working) const {
        const int times = working.count.of(size);
        return {times, times * working.takes};
    }
    WorkedLoops operator()(const Group& group) const {
        WorkedLoops worked;
        worked.add(workedIn(group.body, size), group.times.of(size));
        return worked;
    }
    WorkedLoops operator()(const IntoOne& into) const { return {1, into.takes}; }
    WorkedLoops operator()(const Stretch& stretch) const { return workedIn(stretch.body, size); }
    WorkedLoops operator()(const Aside&) const { return {}; }
    WorkedLoops operator()(const Choice& choice) const {
        return workedIn(choice.readings.front().elements, size);
    }
};

WorkedLoops workedIn(const Elements& elements, std::size_t size) {
    WorkedLoops worked;
    for (const Element& element : elements) worked.add(std::visit(Counter{size}, element.what), 1);
    return worked;
}

}  // namespace

std::vector<Suspect> suspectsInEmptyRepeat(const WrittenRow& row, std::size_t size) {
    int before = 0;
    for (const Element& element : row.elements) {
        const WorkedLoops worked = std::visit(Counter{size}, element.what);
        const auto* stretch = std::get_if<Stretch>(&element.what);
        if (stretch == nullptr || !stretch->starred || worked.takes != 0) {
            before += worked.stitches;
            continue;
        }
        std::vector<Suspect> suspects;
        for (int place = 1; place <= worked.stitches + 1; ++place)
            suspects.push_back({row.number, before + place, 1.0 / (worked.stitches + 1), {}});
        return suspects;
    }
    return {};
}

}  // namespace lacewright
