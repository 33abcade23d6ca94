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

std::optional<ColumnRun> differingColumns(std::span<const StitchIndex> cells,
                                          std::span<const StitchIndex> others) {
    // Many cells a time: comparing a run of memory is faster than looking for where it differs.
    constexpr std::size_t kStep = 64;
    const std::size_t size = cells.size();
    const auto sameFrom = [&](std::size_t at, std::size_t count) {
        return std::memcmp(&cells[at], &others[at], count * sizeof(StitchIndex)) == 0;
    };
    std::size_t first = 0;
    while (first + kStep <= size && sameFrom(first, kStep)) first += kStep;
    while (first < size && cells[first] == others[first]) ++first;
    if (first == size) return std::nullopt;
    std::size_t end = size;
    while (end >= first + kStep && sameFrom(end - kStep, kStep)) end -= kStep;
    while (cells[end - 1] == others[end - 1]) --end;
    return ColumnRun{static_cast<int>(first) + 1, static_cast<int>(end)};
}

Row::Row(std::vector<StitchIndex> cells, const StitchCatalogue& stitches)
    : cells_(std::move(cells)) {
    count(stitches);
}

Row::Row(std::vector<StitchIndex> cells, const StitchCatalogue& stitches, const Row& like)
    : cells_(std::move(cells)) {
    if (countsLike(like, stitches)) {
        sums_ = like.sums_;
        traits_ = like.traits_;
    } else {
        count(stitches);
    }
}

bool Row::countsLike(const Row& other, const StitchCatalogue& stitches) const {
    if (width() != other.width()) return false;
    const auto differing = differingColumns(cells_, other.cells_);
    if (!differing) return true;
    for (int column = differing->right; column <= differing->left; ++column) {
        const StitchIndex here = at(column);
        const StitchIndex there = other.at(column);
        const unsigned bits = stitches.bits()[here];
        if (bits != stitches.bits()[there] || (bits & (kWideBit | kCoveredBit)) != 0) return false;
        if (stitches.packedCounts()[here] != stitches.packedCounts()[there]) return false;
    }
    return true;
}

void Row::count(const StitchCatalogue& stitches) {
    const std::uint32_t* packed = stitches.packedCounts();
    const std::uint8_t* bitsOf = stitches.bits();
    auto sums = std::make_shared<Sums>();
    sums->upTo = std::make_unique_for_overwrite<std::uint32_t[]>(cells_.size() + 1);
    std::uint32_t* upTo = sums->upTo.get();
    upTo[0] = 0;
    unsigned bits = 0;
    Tally total;
    for (std::size_t start = 0; start < cells_.size(); start += kSumBlock) {
        const std::size_t end = std::min(start + kSumBlock, cells_.size());
        std::uint32_t sum = 0;
        // No branch in here: opening a large chart spends much of its time in this loop.
        for (std::size_t i = start; i < end; ++i) {
            bits |= bitsOf[cells_[i]];
            sum += packed[cells_[i]];
            upTo[i + 1] = sum;
        }
        if (end - start < kSumBlock) break;
        sums->full.push_back(total += Tally{sum & 0xFFFFU, sum >> 16U});
        upTo[end] = 0;
    }
    sums_ = std::move(sums);
    traits_.hasWide = (bits & kWideBit) != 0;
    traits_.hasBroken = (bits & (kWideBit | kCoveredBit)) != 0 && isBroken(cells_, stitches);
    traits_.hasUnknown = (bits & kUnknownBit) != 0;
    traits_.hasBindOff = (bits & kBindOffBit) != 0;
    traits_.hasCastOn = (bits & kCastOnBit) != 0;
    traits_.hasNoStitch = (bits & kNoStitchBit) != 0;
    traits_.hasYarnOver = (bits & kYarnOverBit) != 0;
    traits_.hasShaping = (bits & kShapingBit) != 0;
}

std::vector<int> Row::netsFrom(int first, int last) const {
    std::vector<int> nets(static_cast<std::size_t>(last - first) + 1);
    const std::uint32_t* sums = sums_->upTo.get() + first;
    const auto before = static_cast<int>(upTo(first - 1).net());
    for (std::size_t i = 0; i < nets.size();) {
        const std::size_t column = static_cast<std::size_t>(first) + i;
        const std::size_t block = column / kSumBlock;
        const std::size_t end = std::min(nets.size(), i + kSumBlock - column % kSumBlock);
        const int base = block == 0 ? 0 : static_cast<int>(sums_->full[block - 1].net());
        for (; i < end; ++i)
            nets[i] = base - before + static_cast<int>(sums[i] >> 16U) -
                      static_cast<int>(sums[i] & 0xFFFFU);
    }
    return nets;
}

int Row::ownerOf(int column) const {
    while (column > 1 && at(column) == kCovered) --column;
    return column;
}

RowPtr makeRow(std::vector<StitchIndex> cells, const StitchCatalogue& stitches) {
    return std::make_shared<const Row>(std::move(cells), stitches);
}

RowPtr makeRow(std::vector<StitchIndex> cells, const StitchCatalogue& stitches, const Row& like) {
    return std::make_shared<const Row>(std::move(cells), stitches, like);
}

}  // namespace lacewright
