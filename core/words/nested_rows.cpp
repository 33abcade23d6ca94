#include "core/words/nested_rows.h"

#include <algorithm>
#include <cstdint>
#include <map>

#include "core/stitch/catalogue.h"

namespace lacewright {

namespace {

using Stitches = std::vector<RowStitch>;

constexpr std::int64_t kOwnCost = 100'000;  // of a stitch of one's own, in stitches off the centre

constexpr std::int64_t kCutCost = 50'000;  // of an edge within a box

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

// Where one edge of the narrow row may stand: outside the boxes, or within the nearest one, a part
// of which the size then works besides the full passes.
struct EdgePlace {
    std::size_t skipped = 0;  // stitches of the wide row, every box counted once
    std::vector<OwnCell> own = {};
    bool cut = false;  // within a box
};

std::vector<EdgePlace> rightPlaces(const BoxRow& wide, const BoxRow& narrow, std::size_t most) {
    std::vector<EdgePlace> places;
    const Stitches& edge = narrow.before;
    const Stitches& box = wide.boxes.front().stitches;
    if (edge.size() <= wide.before.size()) {
        const std::size_t skipped = wide.before.size() - edge.size();
        if (auto own = ownCells(edge, wide.before, skipped, most)) {
            for (OwnCell& cell : *own) cell.nearStart = true;
            places.push_back({skipped, std::move(*own)});
        }
    }
    if (!edge.empty() && edge.size() < box.size() &&
        std::equal(edge.rbegin(), edge.rend(), box.rbegin(), sameStitch))
        places.push_back({wide.before.size() + box.size() - edge.size(), {}, true});
    return places;
}

std::vector<EdgePlace> leftPlaces(const BoxRow& wide, const BoxRow& narrow, std::size_t most) {
    std::vector<EdgePlace> places;
    const Stitches& edge = narrow.boxes.back().after;
    const Stitches& box = wide.boxes.back().stitches;
    const Stitches& wideEdge = wide.boxes.back().after;
    if (edge.size() <= wideEdge.size()) {
        if (const auto own = ownCells(edge, wideEdge, 0, most)) {
            EdgePlace place{wideEdge.size() - edge.size()};
            const std::size_t behind = wide.all().size() - wideEdge.size();
            for (const OwnCell& cell : *own)
                place.own.push_back({behind + cell.stitch, false, cell.id});
            places.push_back(std::move(place));
        }
    }
    if (!edge.empty() && edge.size() < box.size() &&
        std::equal(edge.begin(), edge.end(), box.begin(), sameStitch))
        places.push_back({wideEdge.size() + box.size() - edge.size(), {}, true});
    return places;
}

// Where the narrow row may stand in the wide one.
std::vector<NestedRow> placesIn(const BoxRow& wide, const BoxRow& narrow) {
    std::vector<NestedRow> places;
    if (wide.hasBox() != narrow.hasBox()) return places;
    if (wide.hasBox()) {
        if (!sameBoxes(wide, narrow)) return places;
        const std::size_t most = mostOwn(narrow.before.size() + narrow.boxes.back().after.size());
        const std::size_t all = wide.all().size();
        for (const EdgePlace& right : rightPlaces(wide, narrow, most)) {
            for (const EdgePlace& left : leftPlaces(wide, narrow, most)) {
                if (right.skipped + left.skipped >= all) continue;
                NestedRow place{right.skipped, left.skipped, right.own, right.cut || left.cut};
                place.own.insert(place.own.end(), left.own.begin(), left.own.end());
                places.push_back(std::move(place));
            }
        }
        return places;
    }
    const Stitches all = wide.edges();
    const Stitches part = narrow.edges();
    for (std::size_t at = 0; at + part.size() <= all.size(); ++at) {
        if (auto own = ownCells(part, all, at, mostOwn(part.size())))
            places.push_back({at, all.size() - part.size() - at, std::move(*own), false});
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
           kOwnCost * static_cast<std::int64_t>(place.own.size()) + (place.cut ? kCutCost : 0);
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
        const Stitches all = wide[r].all();
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
