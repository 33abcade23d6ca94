#include <algorithm>
#include <utility>

#include "core/chart/edit_steps.h"
#include "core/chart/edits.h"

namespace lacewright {
namespace {

// Places in Chart::sizes and Chart::points by name; nothing when there is none.
template <class T>
std::optional<std::ptrdiff_t> placeOf(const std::vector<T>& items, const T* found) {
    if (found == nullptr) return std::nullopt;
    return found - items.data();
}

Error noSuchSize(const std::string& name) {
    return notFound("The chart has no size " + name + ".");
}

Result<Chart> settledSizes(const Chart& before, Chart after) {
    settlePoints(before, after);
    return settled(std::move(after));
}

}  // namespace

Result<Chart> addSize(const Chart& chart, Size size) {
    for (const Repeat& repeat : chart.repeats) size.times.emplace(repeat.name, 1);
    Chart changed = chart;
    changed.sizes.push_back(std::move(size));
    return settledSizes(chart, std::move(changed));
}

Result<Chart> changeSize(const Chart& chart, const std::string& name, Size size) {
    const auto place = placeOf(chart.sizes, chart.findSize(name));
    if (!place) return noSuchSize(name);
    Chart changed = chart;
    changed.sizes[static_cast<std::size_t>(*place)] = std::move(size);
    return settledSizes(chart, std::move(changed));
}

Result<Chart> removeSize(const Chart& chart, const std::string& name) {
    const auto place = placeOf(chart.sizes, chart.findSize(name));
    if (!place) return noSuchSize(name);
    Chart changed = chart;
    changed.sizes.erase(changed.sizes.begin() + *place);
    return settledSizes(chart, std::move(changed));
}

Result<Chart> moveSize(const Chart& chart, const std::string& name, int places) {
    const auto from = placeOf(chart.sizes, chart.findSize(name));
    if (!from) return noSuchSize(name);
    Chart changed = chart;
    const auto last = static_cast<std::ptrdiff_t>(changed.sizes.size()) - 1;
    const auto to = std::clamp<std::ptrdiff_t>(*from + places, 0, last);
    const auto first = changed.sizes.begin();
    if (to > *from) std::rotate(first + *from, first + *from + 1, first + to + 1);
    if (to < *from) std::rotate(first + to, first + *from, first + *from + 1);
    return changed;
}

Result<Chart> renamePoint(const Chart& chart, const std::string& name, const std::string& newName) {
    const auto place = placeOf(chart.points, chart.findPoint(name));
    if (!place) return notFound("The chart has no point " + name + ".");
    Chart changed = chart;
    Point& point = changed.points[static_cast<std::size_t>(*place)];
    if (!newName.empty()) {
        point.name = newName;
        return settled(std::move(changed));
    }
    const int column = point.column;
    changed.points.erase(changed.points.begin() + *place);
    for (const Size& size : chart.sizes) {
        const bool isEdge = size.reach.start == column || size.reach.end == column;
        if (!isEdge || changed.pointAt(column) != nullptr) continue;
        return refusal("Size " + size.name + " begins or ends at point " + name +
                       ", so the point can be renamed but not removed.");
    }
    return settledSizes(chart, std::move(changed));
}

}  // namespace lacewright
