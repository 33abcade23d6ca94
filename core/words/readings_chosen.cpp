#include "core/words/readings_chosen.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr std::size_t kMostReadings = 24;
// Elements that all readings of a row count together: of a very long row only its first readings
// are tried, so that the time a text takes grows with its length and no faster.
constexpr std::size_t kMostCounted = 10'000;

// Choices that offer the same meanings are understood the same way throughout a row.
std::string kindOf(const Choice& choice) {
    std::string kind;
    for (const Reading& reading : choice.readings) kind += reading.meaning + '\n';
    return kind;
}

std::string kindOf(const Group& group) {
    return "times " + std::to_string(group.orTimes->of(0));
}

std::size_t chosenFor(const std::string& kind, const ReadingsChosen& chosen) {
    const auto at = chosen.find(kind);
    return at == chosen.end() ? 0 : at->second;
}

using Kinds = std::map<std::string, std::size_t>;  // how many readings each kind of choice has

void collectKinds(const Elements& elements, Kinds& kinds) {
    for (const Element& element : elements) {
        if (const auto* group = std::get_if<Group>(&element.what)) {
            if (group->orTimes) kinds[kindOf(*group)] = 2;
            collectKinds(group->body, kinds);
        }
        if (const auto* one = std::get_if<IntoOne>(&element.what)) collectKinds(one->body, kinds);
        if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            collectKinds(stretch->body, kinds);
            collectKinds(stretch->lastTime, kinds);
        }
        if (const auto* choice = std::get_if<Choice>(&element.what)) {
            kinds[kindOf(*choice)] = choice->readings.size();
            for (const Reading& reading : choice->readings) collectKinds(reading.elements, kinds);
        }
    }
}

}  // namespace

const Reading& chosenReading(const Choice& choice, const ReadingsChosen& chosen) {
    return choice.readings[std::min(chosenFor(kindOf(choice), chosen), choice.readings.size() - 1)];
}

std::int64_t chosenTimes(const Group& group, std::size_t size, const ReadingsChosen& chosen) {
    const bool inAll = group.orTimes && chosenFor(kindOf(group), chosen) == 1;
    return (inAll ? *group.orTimes : group.times).of(size);
}

std::size_t elementCount(const Elements& elements) {
    std::size_t count = elements.size();
    for (const Element& element : elements) {
        if (const auto* group = std::get_if<Group>(&element.what))
            count += elementCount(group->body);
        if (const auto* one = std::get_if<IntoOne>(&element.what)) count += elementCount(one->body);
        if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            count += elementCount(stretch->body) + elementCount(stretch->lastTime);
        }
        if (const auto* choice = std::get_if<Choice>(&element.what)) {
            for (const Reading& reading : choice->readings) count += elementCount(reading.elements);
        }
    }
    return count;
}

std::vector<ReadingsChosen> waysToChoose(const Elements& elements) {
    Kinds kinds;
    collectKinds(elements, kinds);
    ReadingsChosen chosen;
    for (const auto& [kind, count] : kinds) chosen[kind] = 0;
    const std::size_t most = std::clamp<std::size_t>(
        kMostCounted / std::max<std::size_t>(elementCount(elements), 1), 1, kMostReadings);
    std::vector<ReadingsChosen> ways;
    while (ways.size() < most) {
        ways.push_back(chosen);
        // The next combination, as on a counting wheel.
        auto wheel = chosen.begin();
        while (wheel != chosen.end() && ++wheel->second >= kinds.at(wheel->first)) {
            wheel->second = 0;
            ++wheel;
        }
        if (wheel == chosen.end()) break;
    }
    return ways;
}

}  // namespace lacewright
