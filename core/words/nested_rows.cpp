#include "core/words/nested_rows.h"

#include <algorithm>
#include <cstdint>
#include <limits>

namespace lacewright {

namespace {

using Stitches = std::vector<RowStitch>;

bool standsAt(const Stitches& narrow, const Stitches& wide, std::size_t at) {
    return at + narrow.size() <= wide.size() &&
           std::equal(narrow.begin(), narrow.end(), wide.begin() + static_cast<std::ptrdiff_t>(at),
                      sameStitch);
}

std::int64_t loopsOf(const Stitches& stitches, std::size_t count, int RowStitch::*loops) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < count; ++i) sum += stitches[i].*loops;
    return sum;
}

// The stitches of a row without a box.
Stitches allOf(const BoxRow& row) {
    Stitches all = row.before;
    all.insert(all.end(), row.after.begin(), row.after.end());
    return all;
}

// Where the narrow row may stand in the wide one.
std::vector<NestedRow> placesIn(const BoxRow& wide, const BoxRow& narrow) {
    std::vector<NestedRow> places;
    if (wide.box.empty() != narrow.box.empty()) return places;
    if (!wide.box.empty()) {
        if (wide.before.size() < narrow.before.size() || wide.after.size() < narrow.after.size())
            return places;
        const std::size_t skipped = wide.before.size() - narrow.before.size();
        if (wide.box.size() == narrow.box.size() && standsAt(narrow.box, wide.box, 0) &&
            standsAt(narrow.before, wide.before, skipped) && standsAt(narrow.after, wide.after, 0))
            places.push_back({skipped, wide.after.size() - narrow.after.size()});
        return places;
    }
    const Stitches all = allOf(wide);
    const Stitches part = allOf(narrow);
    for (std::size_t at = 0; at + part.size() <= all.size(); ++at) {
        if (standsAt(part, all, at)) places.push_back({at, all.size() - part.size() - at});
    }
    return places;
}

// A place with the cheapest way up to it from row 1.
struct Reached {
    NestedRow place;
    std::int64_t takes = 0;  // loops left out at the right edge
    std::int64_t makes = 0;
    std::int64_t cost = 0;
    std::size_t from = 0;
};

std::int64_t offCentre(const NestedRow& place) {
    const auto right = static_cast<std::int64_t>(place.skippedRight);
    return std::abs(right - static_cast<std::int64_t>(place.skippedLeft));
}

}  // namespace

std::optional<std::vector<NestedRow>> nestedRows(const std::vector<BoxRow>& wide,
                                                 const std::vector<BoxRow>& narrow) {
    if (wide.size() != narrow.size() || wide.empty()) return {};
    std::vector<std::vector<Reached>> rows;
    for (std::size_t r = 0; r < wide.size(); ++r) {
        std::vector<Reached> now;
        const Stitches all = allOf(wide[r]);
        for (const NestedRow& place : placesIn(wide[r], narrow[r])) {
            Reached reached{place, loopsOf(all, place.skippedRight, &RowStitch::takes),
                            loopsOf(all, place.skippedRight, &RowStitch::makes), 0, 0};
            bool joined = rows.empty();
            for (std::size_t i = 0; !rows.empty() && i < rows.back().size(); ++i) {
                const Reached& below = rows.back()[i];
                if (below.makes != reached.takes || (joined && below.cost >= reached.cost))
                    continue;
                joined = true;
                reached.cost = below.cost;
                reached.from = i;
            }
            reached.cost += offCentre(place);
            if (joined) now.push_back(reached);
        }
        if (now.empty()) return {};
        rows.push_back(std::move(now));
    }
    std::vector<NestedRow> nested(wide.size());
    const auto& top = rows.back();
    std::size_t at = static_cast<std::size_t>(
        std::min_element(top.begin(), top.end(),
                         [](const Reached& a, const Reached& b) { return a.cost < b.cost; }) -
        top.begin());
    for (std::size_t r = rows.size(); r-- > 0;) {
        nested[r] = rows[r][at].place;
        at = rows[r][at].from;
    }
    return nested;
}

}  // namespace lacewright
