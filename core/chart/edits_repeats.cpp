#include <algorithm>
#include <utility>

#include "core/chart/edit_steps.h"
#include "core/chart/edits.h"
#include "core/chart/letter_names.h"

namespace lacewright {
namespace {

std::string freeName(const std::vector<Repeat>& repeats) {
    const auto taken = [&](const std::string& name) {
        return std::any_of(repeats.begin(), repeats.end(),
                           [&](const Repeat& repeat) { return repeat.name == name; });
    };
    int rank = 0;
    while (taken(letterName(rank))) ++rank;
    return letterName(rank);
}

// The repeat's place in Chart::repeats, or nothing.
std::optional<std::size_t> placeOf(const Chart& chart, const std::string& name) {
    const Repeat* found = chart.findRepeat(name);
    if (found == nullptr) return std::nullopt;
    return static_cast<std::size_t>(found - chart.repeats.data());
}

// The chart, unless the repeat of that name is out of order.
Result<Chart> settledRepeat(Chart chart, const std::string& name) {
    if (auto problem = frameProblem(chart)) return *std::move(problem);
    if (auto problem = overlapProblem(chart, name)) return *std::move(problem);
    return chart;
}

Error noSuchRepeat(const std::string& name) {
    return notFound("The chart has no repeat " + name + ".");
}

}  // namespace

Result<Chart> addRepeat(const Chart& chart, Repeat repeat) {
    if (repeat.name.empty()) repeat.name = freeName(chart.repeats);
    const std::string name = repeat.name;
    Chart changed = chart;
    for (Size& size : changed.sizes) size.times.emplace(name, 1);
    changed.repeats.push_back(std::move(repeat));
    return settledRepeat(std::move(changed), name);
}

Result<Chart> changeRepeat(const Chart& chart, const std::string& name, Repeat repeat) {
    const auto place = placeOf(chart, name);
    if (!place) return noSuchRepeat(name);
    if (repeat.name.empty()) repeat.name = name;
    const std::string newName = repeat.name;
    Chart changed = chart;
    changed.repeats[*place] = std::move(repeat);
    for (Size& size : changed.sizes) {
        const auto times = size.times.find(name);
        if (newName == name || times == size.times.end()) continue;
        size.times[newName] = times->second;
        size.times.erase(name);
    }
    return settledRepeat(std::move(changed), newName);
}

Result<Chart> removeRepeat(const Chart& chart, const std::string& name) {
    const auto place = placeOf(chart, name);
    if (!place) return noSuchRepeat(name);
    Chart changed = chart;
    changed.repeats.erase(changed.repeats.begin() + static_cast<std::ptrdiff_t>(*place));
    for (Size& size : changed.sizes) size.times.erase(name);
    return settled(std::move(changed));
}

Result<Chart> setRowRepeat(const Chart& chart, std::optional<RowRepeat> rowRepeat) {
    Chart changed = chart;
    changed.rowRepeat = std::move(rowRepeat);
    return settled(std::move(changed));
}

}  // namespace lacewright
