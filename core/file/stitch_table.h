#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/stitch/catalogue.h"

namespace lacewright {

// The hash of a stitch id, one byte at a time, so that reading a token hashes it on the way.
inline constexpr std::uint32_t kIdHashStart = 2166136261U;
inline std::uint32_t addToIdHash(std::uint32_t hash, char byte) {
    return (hash ^ static_cast<unsigned char>(byte)) * 16777619U;
}
std::uint32_t idHash(std::string_view id);

// The stitches that a file may name while it is being read: ids are looked up without allocating,
// and an id that no stitch has becomes a stitch of kind Unknown.
class StitchTable {
 public:
    // Built-in stitches; a chart's own follow, or take the place of the built-in one with their id.
    explicit StitchTable(std::vector<Stitch> own);

    // Requires: hash == idHash(id).
    StitchIndex find(std::string_view id, std::uint32_t hash) const {
        for (std::size_t at = hash & mask_;; at = (at + 1) & mask_) {
            const Slot& slot = slots_[at];
            if (slot.index == kCovered) return kCovered;
            if (slot.hash == hash && stitches_[slot.index - 1U].id == id) return slot.index;
        }
    }
    // The index of a new unknown stitch; kCovered when no more fit.
    // Requires: find(id) gives kCovered and stitchProblem has nothing against the id.
    StitchIndex addUnknown(std::string_view id);
    // Requires: index is one that find or addUnknown gave.
    const Stitch& operator[](StitchIndex index) const { return stitches_[index - 1U]; }

    // The catalogue of these stitches; the built-in one itself when nothing was added. Leaves the
    // table empty.
    StitchCataloguePtr takeCatalogue();

 private:
    struct Slot {
        std::uint32_t hash = 0;
        StitchIndex index = kCovered;  // kCovered: free
    };
    void insert(std::uint32_t hash, StitchIndex index);
    void rebuild(std::size_t slots);

    std::vector<Stitch> stitches_;  // [index - 1]
    std::vector<Slot> slots_;       // a power of two, at most half full
    std::size_t mask_ = 0;
    bool changed_ = false;  // differs from the built-in stitches
};

}  // namespace lacewright
