#include "core/plan/edge_pairs.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>

#include "core/check/parting.h"
#include "core/count/tally.h"

namespace lacewright {
namespace {

// once + times * each, every repeat working its share.
struct Line {
    std::int64_t once = 0;
    std::int64_t each = 0;
};

Line lineOf(const AffineForm& form, const RepeatShares& shares) {
    Line line{form.constant(), 0};
    for (const auto& term : form.terms()) {
        const RepeatShare& share = shares[static_cast<std::size_t>(term.variable)];
        line.once += term.coefficient * share.fixed;
        line.each += term.coefficient * share.each;
    }
    return line;
}

// The stitches that a repeat takes on its first row, when it is the only one there that is not
// held; nothing when another one is.
std::optional<std::int64_t> widthAlone(const Chart& chart, std::size_t repeat,
                                       const RepeatShares& shares) {
    const int first = chart.repeats[repeat].firstRow;
    for (std::size_t other = 0; other < shares.size(); ++other) {
        if (other == repeat || shares[other].each == 0) continue;
        const Repeat& one = chart.repeats[other];
        if (one.firstRow <= chart.repeats[repeat].lastRow && one.lastRow >= first)
            return std::nullopt;
    }
    const RowForms forms = formsOf(chart.row(first), pathOn(chart, first, nullptr));
    return forms.takes.coefficient(static_cast<Variable>(repeat));
}

// Whether the rows fit at any number of times.
class Fitness {
 public:
    // What a row takes less what the row below leaves is gap.once + times * gap.each.
    void meet(const Line& gap) {
        if (gap.once == 0 && gap.each == 0) return;
        always_ = false;
        const bool at = gap.each != 0 && gap.once % gap.each == 0;
        const std::int64_t times = at ? -gap.once / gap.each : -1;
        const bool agrees = !only_ || *only_ == times;
        if (times < 0 || times > kMaxTimes || !agrees) never_ = true;
        only_ = times;
    }
    void tell(EdgePair& pair) const {
        pair.fitsAlways = always_;
        if (!always_ && !never_) pair.fitsAt = static_cast<int>(*only_);
    }

 private:
    bool always_ = true;
    bool never_ = false;
    std::optional<std::int64_t> only_;
};

int offCentreOf(const Chart& chart, const Path& path, const Reach& reach) {
    const auto isBox = [](const Segment& segment) { return segment.isBox(); };
    const auto firstBox = std::find_if(path.begin(), path.end(), isBox);
    if (firstBox == path.end()) return std::abs((reach.start - 1) - (chart.width - reach.end));
    const auto width = [](auto from, auto to) {
        int columns = 0;
        for (; from != to; ++from) columns += from->last - from->first + 1;
        return columns;
    };
    const auto lastBox = std::find_if(path.rbegin(), path.rend(), isBox);
    return std::abs(width(path.begin(), firstBox) - width(path.rbegin(), lastBox));
}

std::vector<int> partedByEdge(const Chart& chart) {
    std::vector<int> parted(static_cast<std::size_t>(chart.width) + 1);
    for (int row = 0; row < chart.height(); ++row) {
        PairsAcross pairs(chart, row);
        for (int right = 1; right < chart.width; ++right) {
            parted[static_cast<std::size_t>(right)] +=
                static_cast<int>(pairs.partedAt(right).size());
        }
    }
    return parted;
}

EdgePair pairFor(const Chart& chart, const Reach& reach, const RepeatShares& shares) {
    Size size;
    size.reach = reach;
    EdgePair pair;
    pair.reach = reach;
    Fitness fitness;
    Line made;
    for (const PathBand& band : pathBands(chart, &size)) {
        for (int row = band.firstRow; row <= band.lastRow; ++row) {
            const RowForms forms = formsOf(chart.row(row), band.path);
            const Line taken = lineOf(forms.takes, shares);
            if (row == 0) {
                pair.once = taken.once;
                pair.each = taken.each;
                pair.offCentre = offCentreOf(chart, band.path, reach);
            } else {
                fitness.meet({taken.once - made.once, taken.each - made.each});
            }
            made = lineOf(forms.makes, shares);
        }
    }
    fitness.tell(pair);
    return pair;
}

bool mirrorEachOther(const StitchCatalogue& stitches, StitchIndex a, StitchIndex b) {
    const std::string& mirror = stitches[a].mirror;
    return mirror.empty() ? a == b : stitches[b].id == mirror;
}

}  // namespace

std::vector<int> passesAt(const RepeatShares& shares, int times) {
    std::vector<int> passes;
    for (const RepeatShare& share : shares) passes.push_back(share.at(times));
    return passes;
}

RepeatShares repeatShares(const Chart& chart, const std::map<std::string, int>& held) {
    RepeatShares shares(chart.repeats.size());
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (const auto times = held.find(chart.repeats[i].name); times != held.end())
            shares[i] = {times->second, 0};
    }
    std::vector<std::int64_t> widths(shares.size(), 1);
    std::int64_t common = 1;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (shares[i].each == 0) continue;
        const auto width = widthAlone(chart, i, shares);
        if (!width || *width < 1) return shares;
        widths[i] = *width;
        common = std::lcm(common, *width);
        if (common > kMaxWidth) return shares;
    }
    for (std::size_t i = 0; i < shares.size(); ++i)
        shares[i].each *= static_cast<int>(common / widths[i]);
    int divisor = 0;
    for (const RepeatShare& share : shares) divisor = std::gcd(divisor, share.each);
    for (RepeatShare& share : shares) share.each /= std::max(1, divisor);
    return shares;
}

std::vector<EdgePair> edgePairs(const Chart& chart, const RepeatShares& shares) {
    const std::vector<int> parted = partedByEdge(chart);
    std::vector<EdgePair> pairs;
    for (int start = 1; start <= chart.width; ++start) {
        for (int end = start; end <= chart.width; ++end) {
            EdgePair pair = pairFor(chart, {start, end}, shares);
            pair.parted = parted[static_cast<std::size_t>(start - 1)] +
                          (end < chart.width ? parted[static_cast<std::size_t>(end)] : 0);
            pairs.push_back(pair);
        }
    }
    return pairs;
}

bool isMirrored(const Chart& chart, const Reach& reach, const std::vector<int>& passes) {
    Size size;
    size.reach = reach;
    for (const PathBand& band : pathBands(chart, &size)) {
        const std::vector<WorkedCell> cells = unrolled(band.path, passes);
        for (int row = band.firstRow; row <= band.lastRow; ++row) {
            std::vector<StitchIndex> worked;
            worked.reserve(cells.size());
            for (const WorkedCell& cell : cells) {
                const StitchIndex stitch = chart.row(row).at(cell.column);
                if (stitch != kCovered) worked.push_back(stitch);
            }
            for (std::size_t i = 0; i < (worked.size() + 1) / 2; ++i) {
                if (!mirrorEachOther(*chart.stitches, worked[i], worked[worked.size() - 1 - i]))
                    return false;
            }
        }
    }
    return true;
}

}  // namespace lacewright
