#include "core/chart/row.h"

#include <utility>

namespace lacewright {

Tally tallyOf(std::span<const StitchIndex> cells, const StitchCatalogue& stitches) {
    const std::uint32_t* packed = stitches.packedCounts();
    Tally tally;
    // Both halves of a packed word are at most kMaxLoops, so 512 of them cannot carry over.
    constexpr std::size_t kBlock = 512;
    for (std::size_t start = 0; start < cells.size(); start += kBlock) {
        const std::size_t end = start + kBlock < cells.size() ? start + kBlock : cells.size();
        std::uint32_t sum = 0;
        for (std::size_t i = start; i < end; ++i) sum += packed[cells[i]];
        tally.takes += sum & 0xFFFFU;
        tally.makes += sum >> 16U;
    }
    return tally;
}

namespace {

RowTraits traitsOf(const std::vector<StitchIndex>& cells, const StitchCatalogue& stitches) {
    RowTraits traits;
    int covered = 0;  // cells still owed to the last wide stitch
    StitchIndex last = kCovered;
    for (const StitchIndex index : cells) {
        if (index == kCovered) {
            if (covered-- <= 0) traits.hasBroken = true;
            continue;
        }
        if (covered > 0) traits.hasBroken = true;
        covered = stitches.spans()[index] - 1;
        if (index == last) continue;  // runs of one stitch add no traits
        last = index;
        const Stitch& stitch = stitches[index];
        traits.hasWide = traits.hasWide || stitch.span > 1;
        traits.hasUnknown = traits.hasUnknown || stitch.kind == StitchKind::Unknown;
        traits.hasBindOff = traits.hasBindOff || stitch.kind == StitchKind::BindOff;
        traits.hasNoStitch = traits.hasNoStitch || stitch.kind == StitchKind::NoStitch;
        traits.hasYarnOver = traits.hasYarnOver || stitch.kind == StitchKind::YarnOver;
        traits.hasShaping = traits.hasShaping || stitch.net() != 0;
    }
    if (covered > 0) traits.hasBroken = true;
    return traits;
}

}  // namespace

Row::Row(std::vector<StitchIndex> cells, const StitchCatalogue& stitches)
    : cells_(std::move(cells)), traits_(traitsOf(cells_, stitches)) {
    const std::uint32_t* packed = stitches.packedCounts();
    sums_.resize(cells_.size() + 1);
    Sum sum;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
        const std::uint32_t counts = packed[cells_[i]];
        sum.takes += static_cast<std::int32_t>(counts & 0xFFFFU);
        sum.makes += static_cast<std::int32_t>(counts >> 16U);
        sums_[i + 1] = sum;
    }
}

int Row::ownerOf(int column) const {
    while (column > 1 && at(column) == kCovered) --column;
    return column;
}

RowPtr makeRow(std::vector<StitchIndex> cells, const StitchCatalogue& stitches) {
    return std::make_shared<const Row>(std::move(cells), stitches);
}

}  // namespace lacewright
