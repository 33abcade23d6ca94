#include "core/check/companions.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>

#include "core/check/lone_orphan.h"
#include "core/check/pairing.h"

namespace lacewright {
namespace {

// A run of segments paired together.
struct Stretch {
    std::size_t firstSegment = 0;
    std::size_t lastSegment = 0;  // inclusive
    int net = 0;                  // of all its units
};

void addUnits(const Row& row, const Segment& segment, const StitchCatalogue& stitches,
              std::vector<ShapingUnit>& units) {
    const std::size_t had = units.size();
    units.resize(had + static_cast<std::size_t>(segment.last - segment.first + 1));
    ShapingUnit* end = units.data() + had;
    const std::uint32_t* counts = stitches.packedCounts();
    const std::uint8_t* bitsOf = stitches.bits();
    for (int column = segment.first; column <= segment.last; ++column) {
        const StitchIndex index = row.at(column);
        const std::uint32_t packed = counts[index];
        *end = {column, static_cast<int>(packed >> 16U) - static_cast<int>(packed & 0xFFFFU)};
        // No branch in here: in lace nobody foretells which cells shape.
        const unsigned bits = bitsOf[index] & (kShapingBit | kBindOffBit | kCastOnBit);
        end += bits == kShapingBit ? 1 : 0;
    }
    units.resize(static_cast<std::size_t>(end - units.data()));
}

// The units of a segment, summed up.
int netOf(const Row& row, const Segment& segment, const StitchCatalogue& stitches) {
    if (allHaveCompanions(row))
        return static_cast<int>(row.tally(segment.first, segment.last).net());
    std::vector<ShapingUnit> units;
    addUnits(row, segment, stitches, units);
    return std::accumulate(units.begin(), units.end(), 0,
                           [](int sum, const ShapingUnit& unit) { return sum + unit.net; });
}

// Where the stretch that begins at `first` ends so that edges make up for each other.
Stretch stretchFrom(const Path& path, const std::vector<int>& nets, std::size_t first) {
    if (path[first].isBox()) return {first, first, nets[first]};
    int sum = 0;
    for (std::size_t i = first; i < path.size(); ++i) {
        if (path[i].isBox() && nets[i] != 0) break;
        sum += nets[i];
        if (sum == 0) return {first, i, 0};
    }
    return {first, first, nets[first]};
}

// What is paired together.
std::vector<Stretch> stretchesOn(const Row& row, const Path& path,
                                 const StitchCatalogue& stitches) {
    std::vector<Stretch> stretches;
    if (!row.traits().hasShaping) return stretches;
    std::vector<int> nets;
    nets.reserve(path.size());
    for (const Segment& segment : path) nets.push_back(netOf(row, segment, stitches));
    for (std::size_t i = 0; i < path.size(); i = stretches.back().lastSegment + 1)
        stretches.push_back(stretchFrom(path, nets, i));
    return stretches;
}

std::vector<ShapingUnit> unitsOf(const Row& row, const Path& path, const Stretch& stretch,
                                 const StitchCatalogue& stitches) {
    std::vector<ShapingUnit> units;
    for (std::size_t i = stretch.firstSegment; i <= stretch.lastSegment; ++i)
        addUnits(row, path[i], stitches, units);
    return units;
}

// The orphan of one segment, where it has but one.
std::optional<int> loneOrphan(const Row& row, const Path& path, const Stretch& stretch) {
    const Segment& only = path[stretch.firstSegment];
    if (std::abs(stretch.net) != 1 || !allHaveCompanions(row)) return std::nullopt;
    const std::vector<int> heights = row.netsFrom(only.first, only.last);
    std::optional<int> found = only.isBox() ? loneOrphanOnRing(heights) : loneOrphanOnLine(heights);
    if (found) *found += only.first;
    return found;
}

}  // namespace

bool allHaveCompanions(const Row& row) {
    return !row.traits().hasBindOff && !row.traits().hasCastOn;
}

Companions companionsOn(const Row& row, const Path& path, const StitchCatalogue& stitches) {
    Companions all;
    for (const Stretch& stretch : stretchesOn(row, path, stitches)) {
        const auto units = unitsOf(row, path, stretch, stitches);
        const Segment& first = path[stretch.firstSegment];
        const Companions some =
            first.isBox() ? pairOnRing(units, first.first, first.last) : pairOnLine(units);
        all.pairs.insert(all.pairs.end(), some.pairs.begin(), some.pairs.end());
        all.orphans.insert(all.orphans.end(), some.orphans.begin(), some.orphans.end());
        all.ambiguous = all.ambiguous || some.ambiguous;
    }
    std::stable_sort(all.pairs.begin(), all.pairs.end(),
                     [](const auto& a, const auto& b) { return a.increase < b.increase; });
    return all;
}

Companions companionsOn(const Chart& chart, int rowIndex) {
    return companionsOn(chart.row(rowIndex), pathOn(chart, rowIndex, nullptr), *chart.stitches);
}

std::vector<int> orphansOn(const Row& row, const Path& path, const StitchCatalogue& stitches) {
    std::vector<int> all;
    for (const Stretch& stretch : stretchesOn(row, path, stitches)) {
        if (stretch.net == 0) continue;
        if (const auto column = loneOrphan(row, path, stretch)) {
            all.push_back(*column);
            continue;
        }
        const auto units = unitsOf(row, path, stretch, stitches);
        const Segment& first = path[stretch.firstSegment];
        const auto some =
            first.isBox() ? orphansOnRing(units, first.first, first.last) : orphansOnLine(units);
        all.insert(all.end(), some.begin(), some.end());
    }
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
