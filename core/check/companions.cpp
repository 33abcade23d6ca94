#include "core/check/companions.h"

#include <algorithm>

#include "core/check/pairing.h"

namespace lacewright {
namespace {

// A run of segments paired together.
struct Stretch {
    std::size_t firstSegment = 0;
    std::size_t lastSegment = 0;  // inclusive
    bool ring = false;
};

int netOf(const std::vector<ShapingUnit>& units) {
    int net = 0;
    for (const ShapingUnit& unit : units) net += unit.net;
    return net;
}

std::vector<ShapingUnit> unitsIn(const Row& row, int first, int last,
                                 const StitchCatalogue& stitches) {
    std::vector<ShapingUnit> units;
    units.reserve(static_cast<std::size_t>(last - first + 1) / 2);
    for (int column = first; column <= last; ++column) {
        const StitchIndex index = row.at(column);
        // Most cells shape nothing, and say so without their whole stitch being fetched.
        if ((stitches.bits()[index] & kShapingBit) == 0) continue;
        const Stitch& stitch = stitches[index];
        if (stitch.kind == StitchKind::BindOff || stitch.kind == StitchKind::CastOn) continue;
        units.push_back({column, stitch.net()});
    }
    return units;
}

// Where the stretch that begins at `first` ends so that edges make up for each other.
Stretch stretchFrom(const Path& path, const std::vector<int>& nets, std::size_t first) {
    if (path[first].isBox()) return {first, first, true};
    int sum = 0;
    for (std::size_t i = first; i < path.size(); ++i) {
        if (path[i].isBox() && nets[i] != 0) break;
        sum += nets[i];
        if (sum == 0) return {first, i, false};
    }
    return {first, first, false};
}

// What is paired together: visit(units, box), the box null where it is no circle.
template <class Visit>
void forEachStretch(const Row& row, const Path& path, const StitchCatalogue& stitches,
                    Visit visit) {
    if (!row.traits().hasShaping) return;
    std::vector<std::vector<ShapingUnit>> units;
    std::vector<int> nets;
    for (const Segment& segment : path) {
        units.push_back(unitsIn(row, segment.first, segment.last, stitches));
        nets.push_back(netOf(units.back()));
    }
    for (std::size_t i = 0; i < path.size();) {
        const Stretch stretch = stretchFrom(path, nets, i);
        const Segment* box = stretch.ring ? &path[stretch.firstSegment] : nullptr;
        std::vector<ShapingUnit> together = std::move(units[i]);
        for (++i; i <= stretch.lastSegment; ++i)
            together.insert(together.end(), units[i].begin(), units[i].end());
        if (!together.empty()) visit(together, box);
    }
}

}  // namespace

Companions companionsOn(const Row& row, const Path& path, const StitchCatalogue& stitches) {
    Companions all;
    forEachStretch(row, path, stitches, [&](const auto& units, const Segment* box) {
        const Companions some =
            box != nullptr ? pairOnRing(units, box->first, box->last) : pairOnLine(units);
        all.pairs.insert(all.pairs.end(), some.pairs.begin(), some.pairs.end());
        all.orphans.insert(all.orphans.end(), some.orphans.begin(), some.orphans.end());
        all.ambiguous = all.ambiguous || some.ambiguous;
    });
    std::stable_sort(all.pairs.begin(), all.pairs.end(),
                     [](const auto& a, const auto& b) { return a.increase < b.increase; });
    return all;
}

Companions companionsOn(const Chart& chart, int rowIndex) {
    return companionsOn(chart.row(rowIndex), pathOn(chart, rowIndex, nullptr), *chart.stitches);
}

std::vector<int> orphansOn(const Row& row, const Path& path, const StitchCatalogue& stitches) {
    std::vector<int> all;
    forEachStretch(row, path, stitches, [&](const auto& units, const Segment* box) {
        const auto some =
            box != nullptr ? orphansOnRing(units, box->first, box->last) : orphansOnLine(units);
        all.insert(all.end(), some.begin(), some.end());
    });
    return all;
}

std::vector<int> orphansOn(const Chart& chart, int rowIndex) {
    return orphansOn(chart.row(rowIndex), pathOn(chart, rowIndex, nullptr), *chart.stitches);
}

int displacement(const Row& row, int first, int column) {
    return static_cast<int>(row.tally(first, column).net());
}

double bias(const Row& row, int first, int last) {
    double sum = 0;
    for (int column = first; column <= last; ++column) sum += displacement(row, first, column);
    return sum / (last - first + 1);
}

double bias(const Chart& chart, const Repeat* repeat) {
    const int firstRow = repeat != nullptr ? repeat->firstRow : 0;
    const int lastRow = repeat != nullptr ? repeat->lastRow : chart.height() - 1;
    double sum = 0;
    for (int row = firstRow; row <= lastRow; ++row) {
        const Box box = repeat != nullptr ? repeat->on(row) : Box{1, chart.width};
        sum += bias(chart.row(row), std::max(box.right, 1), std::min(box.left, chart.width));
    }
    const int rowsEach = chart.uncharted == Uncharted::None ? 1 : 2;
    return sum / (rowsEach * (lastRow - firstRow + 1));
}

}  // namespace lacewright
