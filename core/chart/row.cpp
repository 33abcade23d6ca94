#include "core/chart/row.h"

#include <algorithm>
#include <cstring>
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
        std::size_t i = start;
        // Four cells a time: fetching them takes longer than adding them up.
        for (; i + 4 <= end; i += 4) {
            std::uint64_t four = 0;
            std::memcpy(&four, cells.data() + i, sizeof four);
            sum += packed[four & 0xFFFFU] + packed[(four >> 16U) & 0xFFFFU] +
                   packed[(four >> 32U) & 0xFFFFU] + packed[four >> 48U];
        }
        for (; i < end; ++i) sum += packed[cells[i]];
        tally.takes += sum & 0xFFFFU;
        tally.makes += sum >> 16U;
    }
    return tally;
}

namespace {

// A wide stitch without all its cells, or a covered cell without a stitch.
bool isBroken(const std::vector<StitchIndex>& cells, const StitchCatalogue& stitches) {
    int covered = 0;  // cells still owed to the last wide stitch
    for (const StitchIndex index : cells) {
        if ((index == kCovered) != (covered > 0)) return true;
        covered = index == kCovered ? covered - 1 : stitches.spans()[index] - 1;
    }
    return covered > 0;
}

}  // namespace

Row::Row(std::vector<StitchIndex> cells, const StitchCatalogue& stitches)
    : cells_(std::move(cells)) {
    const std::uint32_t* packed = stitches.packedCounts();
    const std::uint8_t* bitsOf = stitches.bits();
    sums_.resize(cells_.size() + 1);
    unsigned bits = 0;
    Tally total;
    for (std::size_t start = 0; start < cells_.size(); start += kSumBlock) {
        const std::size_t end = std::min(start + kSumBlock, cells_.size());
        std::uint32_t sum = 0;
        // No branch in here: opening a large chart spends much of its time in this loop.
        for (std::size_t i = start; i < end; ++i) {
            bits |= bitsOf[cells_[i]];
            sum += packed[cells_[i]];
            sums_[i + 1] = sum;
        }
        if (end - start < kSumBlock) break;
        full_.push_back(total += Tally{sum & 0xFFFFU, sum >> 16U});
        sums_[end] = 0;
    }
    traits_.hasWide = (bits & kWideBit) != 0;
    traits_.hasBroken = (bits & (kWideBit | kCoveredBit)) != 0 && isBroken(cells_, stitches);
    traits_.hasUnknown = (bits & kUnknownBit) != 0;
    traits_.hasBindOff = (bits & kBindOffBit) != 0;
    traits_.hasNoStitch = (bits & kNoStitchBit) != 0;
    traits_.hasYarnOver = (bits & kYarnOverBit) != 0;
    traits_.hasShaping = (bits & kShapingBit) != 0;
}

int Row::ownerOf(int column) const {
    while (column > 1 && at(column) == kCovered) --column;
    return column;
}

RowPtr makeRow(std::vector<StitchIndex> cells, const StitchCatalogue& stitches) {
    return std::make_shared<const Row>(std::move(cells), stitches);
}

}  // namespace lacewright
