#include "core/file/stitch_table.h"

#include <utility>

namespace lacewright {

StitchTable::StitchTable(std::vector<Stitch> own) : changed_(!own.empty()) {
    const StitchCatalogue& builtIn = *builtInStitches();
    stitches_.reserve(builtIn.size() + own.size());
    for (std::size_t i = 1; i <= builtIn.size(); ++i) {
        stitches_.push_back(builtIn[static_cast<StitchIndex>(i)]);
    }
    for (Stitch& stitch : own) {
        if (const auto place = builtIn.find(stitch.id)) {
            stitches_[*place - 1U] = std::move(stitch);
        } else {
            stitches_.push_back(std::move(stitch));
        }
    }
    for (std::size_t i = 0; i < stitches_.size(); ++i) {
        byId_.emplace(stitches_[i].id, static_cast<StitchIndex>(i + 1));
    }
}

StitchIndex StitchTable::find(std::string_view id) const {
    const auto found = byId_.find(id);
    return found == byId_.end() ? kCovered : found->second;
}

StitchIndex StitchTable::addUnknown(std::string_view id) {
    constexpr std::size_t kMost = 0xFFFE;
    if (stitches_.size() >= kMost) return kCovered;
    Stitch stitch;
    stitch.id = id;
    stitch.kind = StitchKind::Unknown;
    stitches_.push_back(std::move(stitch));
    changed_ = true;
    const auto index = static_cast<StitchIndex>(stitches_.size());
    byId_.emplace(id, index);
    return index;
}

StitchCataloguePtr StitchTable::takeCatalogue() {
    if (!changed_) return builtInStitches();
    return std::make_shared<StitchCatalogue>(std::move(stitches_));
}

}  // namespace lacewright
