#include "core/words/row_loops.h"

#include <algorithm>

namespace lacewright {

std::optional<FixedLoops> fixedLoops(const Elements& elements, std::size_t size) {
    FixedLoops sum;
    const auto add = [&sum](const FixedLoops& more, std::int64_t times) {
        sum.takes += more.takes * times;
        sum.makes += more.makes * times;
    };
    for (const Element& element : elements) {
        if (const auto* work = std::get_if<Working>(&element.what)) {
            add({work->takes, work->makes}, work->count.of(size));
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            const auto body = fixedLoops(group->body, size);
            if (!body) return {};
            add(*body, group->times.of(size));
        } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
            const auto body = fixedLoops(one->body, size);
            if (!body) return {};
            add({one->takes, body->makes}, 1);
        } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
            const auto body = fixedLoops(choice->readings.front().elements, size);
            if (!body) return {};
            add(*body, 1);
        } else if (std::holds_alternative<Stretch>(element.what)) {
            return {};
        }
        if (sum.takes > kMostFollowed || sum.makes > kMostFollowed) return {};
    }
    return sum;
}

bool hasReadings(const Elements& elements) {
    return std::any_of(elements.begin(), elements.end(), [](const Element& element) {
        if (const auto* group = std::get_if<Group>(&element.what))
            return group->orTimes.has_value() || hasReadings(group->body);
        if (const auto* stretch = std::get_if<Stretch>(&element.what))
            return hasReadings(stretch->body) || hasReadings(stretch->lastTime);
        return std::holds_alternative<Choice>(element.what);
    });
}

bool slipsMarkers(const Elements& elements) {
    return std::any_of(elements.begin(), elements.end(), [](const Element& element) {
        if (const auto* group = std::get_if<Group>(&element.what)) return slipsMarkers(group->body);
        if (const auto* stretch = std::get_if<Stretch>(&element.what))
            return slipsMarkers(stretch->body) || slipsMarkers(stretch->lastTime);
        const auto* aside = std::get_if<Aside>(&element.what);
        return aside != nullptr && (aside->term == "sm" || aside->term == "rm");
    });
}

}  // namespace lacewright
