#include "app/panels/worked_row_layout.h"

#include <algorithm>
#include <cstdlib>

namespace lacewright::app {

WorkedRowLayout::WorkedRowLayout(const Chart& chart, int row, const Size* size) {
    std::vector<WorkedStretch> worked = workedStretches(chart, row, size);
    if (chart.sideOf(row) == Side::Wrong) {
        std::reverse(worked.begin(), worked.end());
        for (WorkedStretch& stretch : worked) {
            std::reverse(stretch.stitches.begin(), stretch.stitches.end());
            std::reverse(stretch.columns.begin(), stretch.columns.end());
        }
    }
    stitches_ = chart.stitches;
    for (WorkedStretch& one : worked) {
        if (one.stitches.empty()) continue;
        Stretch stretch;
        stretch.first = cells_;
        for (const StitchIndex stitch : one.stitches) {
            stretch.offsets.push_back(stretch.width);
            stretch.width += stitches_->spans()[stitch];
        }
        stretch.worked = std::move(one);
        cells_ += std::int64_t{stretch.width} * stretch.worked.times;
        stretches_.push_back(std::move(stretch));
    }
}

WorkedRowLayout::Stitch WorkedRowLayout::stitchIn(std::size_t stretch, std::int64_t pass,
                                                  std::size_t index) const {
    const Stretch& whole = stretches_[stretch];
    Stitch stitch{stretch, static_cast<int>(pass), index, 0,
                  stitches_->spans()[whole.worked.stitches[index]]};
    stitch.place = whole.first + pass * whole.width + whole.offsets[index];
    return stitch;
}

std::optional<WorkedRowLayout::Stitch> WorkedRowLayout::at(std::int64_t place) const {
    if (place < 0 || place >= cells_) return std::nullopt;
    const auto after = std::upper_bound(
        stretches_.begin(), stretches_.end(), place,
        [](std::int64_t value, const Stretch& stretch) { return value < stretch.first; });
    const auto stretch = static_cast<std::size_t>(after - stretches_.begin()) - 1;
    const Stretch& whole = stretches_[stretch];
    const std::int64_t within = place - whole.first;
    const auto offset = std::upper_bound(whole.offsets.begin(), whole.offsets.end(),
                                         static_cast<int>(within % whole.width));
    return stitchIn(stretch, within / whole.width,
                    static_cast<std::size_t>(offset - whole.offsets.begin()) - 1);
}

std::optional<WorkedRowLayout::Stitch> WorkedRowLayout::ofColumn(int column,
                                                                 std::int64_t near) const {
    std::optional<Stitch> nearest;
    for (std::size_t i = 0; i < stretches_.size(); ++i) {
        const Stretch& stretch = stretches_[i];
        const auto& columns = stretch.worked.columns;
        const auto found = std::find(columns.begin(), columns.end(), column);
        if (found == columns.end()) continue;
        const auto pass = std::clamp<std::int64_t>((near - stretch.first) / stretch.width, 0,
                                                   stretch.worked.times - 1);
        const Stitch stitch = stitchIn(i, pass, static_cast<std::size_t>(found - columns.begin()));
        if (!nearest || std::abs(stitch.place - near) < std::abs(nearest->place - near)) {
            nearest = stitch;
        }
    }
    return nearest;
}

}  // namespace lacewright::app
