#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/words/row_phrases.h"

namespace lacewright::app {

// Where every stitch of a worked row stands when the row is laid out from right to left, as seen
// from the right side. Places are cells counted from 0 at the right end; a wide stitch takes as
// many as it spans. Nothing is unrolled: a pass is found by reckoning.
class WorkedRowLayout {
 public:
    struct Stretch {
        WorkedStretch worked;      // stitches from the right
        std::vector<int> offsets;  // of each stitch in one pass
        int width = 0;             // cells of one pass
        std::int64_t first = 0;    // place of its first cell
    };
    struct Stitch {
        std::size_t stretch = 0;
        int pass = 0;
        std::size_t index = 0;   // in the stretch
        std::int64_t place = 0;  // of its right cell
        int span = 1;
    };

    WorkedRowLayout() = default;
    // Requires: 0 <= row < height.
    WorkedRowLayout(const Chart& chart, int row, const Size* size);

    std::int64_t cells() const { return cells_; }
    const std::vector<Stretch>& stretches() const { return stretches_; }
    // The stitch that lies over that place. Nothing beyond the ends.
    std::optional<Stitch> at(std::int64_t place) const;
    // The stitch of that column nearest to a place; nothing when the row does not work it.
    std::optional<Stitch> ofColumn(int column, std::int64_t near) const;
    StitchIndex stitchOf(const Stitch& stitch) const {
        return stretches_[stitch.stretch].worked.stitches[stitch.index];
    }
    int columnOf(const Stitch& stitch) const {
        return stretches_[stitch.stretch].worked.columns[stitch.index];
    }

 private:
    Stitch stitchIn(std::size_t stretch, std::int64_t pass, std::size_t index) const;

    std::vector<Stretch> stretches_;  // from the right
    StitchCataloguePtr stitches_;
    std::int64_t cells_ = 0;
};

}  // namespace lacewright::app
