#include "core/words/nested_rows.h"

#include <algorithm>
#include <cstdint>
#include <map>

#include "core/stitch/catalogue.h"

namespace lacewright {

namespace {

using Stitches = std::vector<RowStitch>;

constexpr std::int64_t kOwnCost = 100'000;  // of a stitch of one's own, in stitches off the centre

// The most stitches of its own that a row may have and still be the same row.
std::size_t mostOwn(std::size_t stitches) {
    return std::clamp<std::size_t>(stitches / 4, 2, 12);
}

bool mayStandFor(const RowStitch& own, const RowStitch& wide) {
    const StitchCatalogue& known = *builtInStitches();
    const auto spanOf = [&known](const RowStitch& stitch) {
        const auto index = stitch.own || stitch.presents ? std::nullopt : known.find(stitch.id);
        return index ? known.spans()[*index] : 0;
    };
    const int span = spanOf(own);
    return span > 0 && span == spanOf(wide);
}

// The stitches of `narrow` that differ from those of `wide` from `at` on; nothing when it does not
// fit or too many do.
std::optional<std::vector<OwnCell>> ownCells(const Stitches& narrow, const Stitches& wide,
                                             std::size_t at, std::size_t most) {
    if (at + narrow.size() > wide.size()) return {};
    std::vector<OwnCell> own;
    for (std::size_t i = 0; i < narrow.size(); ++i) {
        if (sameStitch(narrow[i], wide[at + i])) continue;
        if (own.size() == most || !mayStandFor(narrow[i], wide[at + i])) return {};
        own.push_back({at + i, 2 * i < narrow.size(), narrow[i].id});
    }
    return own;
}

// Sums of the loops of the first 0, 1, .. stitches.
std::vector<std::int64_t> sums(const Stitches& stitches, int RowStitch::*loops) {
    std::vector<std::int64_t> sums = {0};
    for (const RowStitch& stitch : stitches) sums.push_back(sums.back() + stitch.*loops);
    return sums;
}

// From the first box to the last, without what stands behind it.
Stitches betweenEdges(const BoxRow& row) {
    Stitches stitches;
    for (const RowBox& box : row.boxes) {
        stitches.insert(stitches.end(), box.stitches.begin(), box.stitches.end());
        if (&box != &row.boxes.back())
            stitches.insert(stitches.end(), box.after.begin(), box.after.end());
    }
    return stitches;
}

bool sameBoxes(const BoxRow& a, const BoxRow& b) {
    const auto sameStitches = [](const Stitches& x, const Stitches& y) {
        return std::equal(x.begin(), x.end(), y.begin(), y.end(), sameStitch);
    };
    return a.boxes.size() == b.boxes.size() && sameStitches(betweenEdges(a), betweenEdges(b)) &&
           std::equal(a.boxes.begin(), a.boxes.end(), b.boxes.begin(),
                      [&](const RowBox& x, const RowBox& y) {
                          return x.stitches.size() == y.stitches.size();
                      });
}

// Where the narrow row may stand in the wide one.
std::vector<NestedRow> placesIn(const BoxRow& wide, const BoxRow& narrow) {
    std::vector<NestedRow> places;
    if (wide.hasBox() != narrow.hasBox()) return places;
    if (wide.hasBox()) {
        const Stitches& wideAfter = wide.boxes.back().after;
        if (!sameBoxes(wide, narrow)) return places;
        const Stitches& after = narrow.boxes.back().after;
        if (wide.before.size() < narrow.before.size() || wideAfter.size() < after.size())
            return places;
        const std::size_t skipped = wide.before.size() - narrow.before.size();
        const std::size_t most = mostOwn(narrow.before.size() + after.size());
        auto own = ownCells(narrow.before, wide.before, skipped, most);
        const auto ownAfter = ownCells(after, wideAfter, 0, most);
        if (!own || !ownAfter) return places;
        for (OwnCell& cell : *own) cell.nearStart = true;
        const std::size_t behind = wide.all().size() - wideAfter.size();
        for (const OwnCell& cell : *ownAfter)
            own->push_back({behind + cell.stitch, false, cell.id});
        places.push_back({skipped, wideAfter.size() - after.size(), std::move(*own)});
        return places;
    }
    const Stitches all = wide.edges();
    const Stitches part = narrow.edges();
    for (std::size_t at = 0; at + part.size() <= all.size(); ++at) {
        if (auto own = ownCells(part, all, at, mostOwn(part.size())))
            places.push_back({at, all.size() - part.size() - at, std::move(*own)});
    }
    return places;
}

// A place with the cheapest way up to it from row 1.
struct Reached {
    NestedRow place;
    std::int64_t cost = 0;
    std::size_t from = 0;
};

std::int64_t costOf(const NestedRow& place) {
    const auto right = static_cast<std::int64_t>(place.skippedRight);
    return std::abs(right - static_cast<std::int64_t>(place.skippedLeft)) +
           kOwnCost * static_cast<std::int64_t>(place.own.size());
}

}  // namespace

NestedRows nestedRows(const std::vector<BoxRow>& wide, const std::vector<BoxRow>& narrow) {
    NestedRows nested;
    if (wide.size() != narrow.size() || wide.empty()) {
        nested.notWithin = std::min(wide.size(), narrow.size());
        return nested;
    }
    std::vector<std::vector<Reached>> rows;
    std::map<std::int64_t, std::size_t> cheapest;  // of the row below, by the loops it leaves out
    for (std::size_t r = 0; r < wide.size(); ++r) {
        std::vector<Reached> now;
        std::map<std::int64_t, std::size_t> here;
        const Stitches all = wide[r].edges();
        const auto takes = sums(all, &RowStitch::takes);
        const auto makes = sums(all, &RowStitch::makes);
        for (NestedRow& place : placesIn(wide[r], narrow[r])) {
            const std::size_t skipped = place.skippedRight;
            Reached reached{std::move(place), 0, 0};
            reached.cost = costOf(reached.place);
            if (r > 0) {
                const auto below = cheapest.find(takes[skipped]);
                if (below == cheapest.end()) continue;
                reached.from = below->second;
                reached.cost += rows.back()[reached.from].cost;
            }
            const auto [at, fresh] = here.try_emplace(makes[skipped], now.size());
            if (!fresh && now[at->second].cost > reached.cost) at->second = now.size();
            now.push_back(std::move(reached));
        }
        if (now.empty()) {
            nested.notWithin = r;
            return nested;
        }
        rows.push_back(std::move(now));
        cheapest = std::move(here);
    }
    nested.rows.resize(wide.size());
    const auto& top = rows.back();
    std::size_t at = static_cast<std::size_t>(
        std::min_element(top.begin(), top.end(),
                         [](const Reached& a, const Reached& b) { return a.cost < b.cost; }) -
        top.begin());
    for (std::size_t r = rows.size(); r-- > 0;) {
        nested.rows[r] = rows[r][at].place;
        at = rows[r][at].from;
    }
    return nested;
}

}  // namespace lacewright
