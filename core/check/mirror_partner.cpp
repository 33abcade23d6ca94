#include "core/check/mirror_partner.h"

namespace lacewright {

bool isPurled(std::string_view id) {
    return id.starts_with("p") || id.starts_with("ssp") || id.starts_with("sssp");
}

StitchIndex mirrorPartner(const StitchCatalogue& stitches, StitchIndex index,
                          const std::vector<int>& cells) {
    const auto mirror = stitches.find(stitches[index].mirror);
    if (!mirror) return index;
    const Stitch& exact = stitches[*mirror];
    const bool leans = exact.kind == StitchKind::Decrease &&
                       (exact.lean == Lean::Left || exact.lean == Lean::Right);
    StitchIndex partner = *mirror;
    for (std::size_t i = 1; leans && i < cells.size(); ++i) {
        const auto other = static_cast<StitchIndex>(i);
        const Stitch& stitch = stitches[other];
        const bool alike = stitch.takes == exact.takes && stitch.makes == exact.makes &&
                           stitch.span == exact.span && stitch.kind == exact.kind &&
                           stitch.lean == exact.lean && isPurled(stitch.id) == isPurled(exact.id);
        if (alike && cells[other] > cells[partner]) partner = other;
    }
    return partner;
}

}  // namespace lacewright
