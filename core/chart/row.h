#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/stitch/catalogue.h"

namespace lacewright {

// Loops that some stretch of stitches takes off the left needle and makes on the right one.
struct Tally {
    std::int64_t takes = 0;
    std::int64_t makes = 0;

    std::int64_t net() const { return makes - takes; }
    Tally& operator+=(const Tally& other) {
        takes += other.takes;
        makes += other.makes;
        return *this;
    }
    friend Tally operator+(Tally a, const Tally& b) { return a += b; }
    friend Tally operator-(const Tally& a, const Tally& b) {
        return {a.takes - b.takes, a.makes - b.makes};
    }
    bool operator==(const Tally&) const = default;
};

// The sum over a run of cells, without any cache.
Tally tallyOf(std::span<const StitchIndex> cells, const StitchCatalogue& stitches);

// What a row holds besides plain stitches; found once, when the row is built.
struct RowTraits {
    bool hasWide = false;  // a stitch spanning more than one cell
    bool hasBroken =
        false;  // a wide stitch without all its cells, or a covered cell without stitch
    bool hasUnknown = false;  // a stitch of kind Unknown
    bool hasBindOff = false;
    bool hasCastOn = false;
    bool hasNoStitch = false;
    bool hasYarnOver = false;  // any stitch of kind YarnOver
    bool hasShaping = false;   // any stitch whose takes and makes differ
    bool operator==(const RowTraits&) const = default;
};

// Neighbouring columns of a row.
struct ColumnRun {
    int right = 1;
    int left = 1;  // at or beyond `right`
};

// From the first to the last column in which two rows differ; none when they do not.
// Requires: rows of one width.
std::optional<ColumnRun> differingColumns(std::span<const StitchIndex> cells,
                                          std::span<const StitchIndex> others);

class Row;
using RowPtr = std::shared_ptr<const Row>;

// One charted row: an immutable run of cells. Columns are numbered from 1 at the right edge, so
// cells()[0] is column 1. A wide stitch stands in its rightmost cell; the cells to the left of it
// that it spans hold kCovered.
class Row {
 public:
    // Requires: every index belongs to `stitches`.
    Row(std::vector<StitchIndex> cells, const StitchCatalogue& stitches);
    // The same, in less time and room where the row is much like another one of its width: as
    // when a decrease leans the other way.
    Row(std::vector<StitchIndex> cells, const StitchCatalogue& stitches, const Row& like);

    int width() const { return static_cast<int>(cells_.size()); }
    const std::vector<StitchIndex>& cells() const { return cells_; }
    // Requires: 1 <= column <= width().
    StitchIndex at(int column) const { return cells_[static_cast<std::size_t>(column - 1)]; }

    // Sum over the columns first..last, both included; empty when last < first. A wide stitch
    // counts where its rightmost cell is. Constant time.
    // Requires: 1 <= first, last <= width().
    Tally tally(int first, int last) const {
        if (last < first) return {};
        return upTo(last) - upTo(first - 1);
    }
    Tally total() const { return upTo(width()); }
    // Sum over columns 1..column. Requires: 0 <= column <= width().
    Tally upTo(int column) const {
        const auto c = static_cast<std::size_t>(column);
        const std::uint32_t sum = sums_->upTo[c];
        const Tally ofBlock{sum & 0xFFFFU, sum >> 16U};
        return c < kSumBlock ? ofBlock : sums_->full[c / kSumBlock - 1] + ofBlock;
    }
    // What the columns first..c make less what they take, for every c in first..last.
    // Requires: 1 <= first <= last <= width().
    std::vector<int> netsFrom(int first, int last) const;
    const RowTraits& traits() const { return traits_; }

    // The column of the stitch that owns `column`: the column itself, or the one to its right whose
    // wide stitch covers it. Requires: 1 <= column <= width().
    int ownerOf(int column) const;

    bool operator==(const Row& other) const { return cells_ == other.cells_; }

 private:
    // So few stitches that neither half of a packed sum can overflow (kMaxLoops).
    static constexpr std::size_t kSumBlock = 512;

    struct Sums {
        // upTo[c]: columns 1..c without those of blocks that are full, takes in the lower half.
        std::unique_ptr<std::uint32_t[]> upTo;
        std::vector<Tally> full;  // what the first block comes to, the first two ...
    };

    void count(const StitchCatalogue& stitches);
    bool countsLike(const Row& other, const StitchCatalogue& stitches) const;

    std::vector<StitchIndex> cells_;
    std::shared_ptr<const Sums> sums_;  // shared by rows that differ in no count
    RowTraits traits_;
};

RowPtr makeRow(std::vector<StitchIndex> cells, const StitchCatalogue& stitches);
RowPtr makeRow(std::vector<StitchIndex> cells, const StitchCatalogue& stitches, const Row& like);

}  // namespace lacewright
