#pragma once

#include <cstddef>
#include <vector>

#include "core/words/row_proof.h"

namespace lacewright {

// One step from a charted row to a written one, in working order. The other side's position is
// where the stitch would have to go.
struct AlignedStep {
    enum class Kind { Same, Replaced, OnlyInChart, OnlyInText };
    Kind kind = Kind::Same;
    std::size_t charted = 0;  // position in the charted row
    std::size_t written = 0;  // position in the written row
    bool operator==(const AlignedStep&) const = default;
};

// The cheapest alignment: a stitch that counts as the other is replaced for 1, another stitch for
// 2; put in or left out for 2 and twice what that changes the count by. Of equals the one that
// keeps to the chart longest. Rows of more than kMostAligned pairs, what they share at both ends
// set aside, are aligned place by place.
inline constexpr std::size_t kMostAligned = 16'000'000;
std::vector<AlignedStep> aligned(const std::vector<ChartedStitch>& charted,
                                 const std::vector<UnrolledStitch>& written);

}  // namespace lacewright
