#pragma once

#include <optional>
#include <vector>

#include "core/check/companions.h"

namespace lacewright {

// The companions of one row over the whole width, as drawn once across, and which of them an edge
// parts. They are paired when first asked for and kept: all sizes share them.
class PairsAcross {
 public:
    // The chart must live longer. Requires: 0 <= row < height.
    PairsAcross(const Chart& chart, int row);

    // Those that an edge between the columns `right` and `right + 1` parts; none at the edges of
    // the chart.
    std::vector<CompanionPair> partedAt(int right);

 private:
    bool nonePartedAt(int right);
    Path across() const;

    const Chart& chart_;
    const Row& cells_;
    std::optional<std::vector<int>> orphans_;
    std::optional<std::vector<CompanionPair>> pairs_;
};

// The size works another stitch in place of one of the pair at that edge, so nothing is parted.
// `row` is a row index.
bool isSubstituted(const Size& size, int row, Edge edge, const CompanionPair& pair);

}  // namespace lacewright
