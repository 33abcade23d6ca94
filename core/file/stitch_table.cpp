#include "core/file/stitch_table.h"

#include <utility>

namespace lacewright {

std::uint32_t idHash(std::string_view id) {
    std::uint32_t hash = kIdHashStart;
    for (const char byte : id) hash = addToIdHash(hash, byte);
    return hash;
}

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
    rebuild(512);
}

void StitchTable::insert(std::uint32_t hash, StitchIndex index) {
    std::size_t at = hash & mask_;
    while (slots_[at].index != kCovered) at = (at + 1) & mask_;
    slots_[at] = {hash, index};
}

void StitchTable::rebuild(std::size_t slots) {
    while (slots < 2 * stitches_.size()) slots *= 2;
    slots_.assign(slots, {});
    mask_ = slots - 1;
    for (std::size_t i = 0; i < stitches_.size(); ++i) {
        insert(idHash(stitches_[i].id), static_cast<StitchIndex>(i + 1));
    }
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
    if (2 * stitches_.size() > slots_.size()) {
        rebuild(2 * slots_.size());
    } else {
        insert(idHash(id), index);
    }
    return index;
}

StitchCataloguePtr StitchTable::takeCatalogue() {
    if (!changed_) return builtInStitches();
    return std::make_shared<StitchCatalogue>(std::move(stitches_));
}

}  // namespace lacewright
