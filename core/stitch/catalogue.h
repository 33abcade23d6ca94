#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/base/result.h"
#include "core/stitch/stitch.h"

namespace lacewright {

// A stitch within one catalogue. Index 0 is never a stitch: it marks a cell that a wide stitch
// covers beside its own first (rightmost) cell, and counts nothing.
using StitchIndex = std::uint16_t;
inline constexpr StitchIndex kCovered = 0;

// What matters about a stitch when a whole row is summed up, as bits.
enum StitchBits : std::uint8_t {
    kWideBit = 1,       // spans more than one cell
    kUnknownBit = 2,    // of kind Unknown
    kBindOffBit = 4,    // of kind BindOff
    kNoStitchBit = 8,   // of kind NoStitch
    kYarnOverBit = 16,  // of kind YarnOver
    kShapingBit = 32,   // takes and makes differ
    kCoveredBit = 64,   // kCovered
    kCastOnBit = 128    // of kind CastOn
};

class StitchCatalogue;
using StitchCataloguePtr = std::shared_ptr<const StitchCatalogue>;

// The stitches a chart may use: those built in, followed by those the chart defines itself.
// Immutable and shared; indices of a catalogue stay true in every catalogue grown from it.
class StitchCatalogue {
 public:
    // Requires: ids are distinct and not empty, numbers within the limits of stitch.h.
    explicit StitchCatalogue(std::vector<Stitch> stitches);
    // byId_ looks into stitches_: a copy would look into the original.
    StitchCatalogue(const StitchCatalogue&) = delete;
    StitchCatalogue& operator=(const StitchCatalogue&) = delete;

    // Stitches have the indices 1..size().
    std::size_t size() const { return stitches_.size() - 1; }
    // Requires: 0 < index <= size().
    const Stitch& operator[](StitchIndex index) const { return stitches_[index]; }
    std::optional<StitchIndex> find(std::string_view id) const;

    // Loops taken (low 16 bits) and made (high 16 bits) of every index, kCovered included, for
    // loops over many cells.
    const std::uint32_t* packedCounts() const { return packed_.data(); }
    // Cells spanned by every index; 0 for kCovered.
    const std::uint8_t* spans() const { return spans_.data(); }
    // StitchBits of every index.
    const std::uint8_t* bits() const { return bits_.data(); }

    // This catalogue with one more stitch. Refuses an id that exists or a number out of range.
    Result<StitchCataloguePtr> with(Stitch stitch) const;

 private:
    std::vector<Stitch> stitches_;  // [0] is a placeholder for kCovered
    std::vector<std::uint32_t> packed_;
    std::vector<std::uint8_t> spans_;
    std::vector<std::uint8_t> bits_;
    std::unordered_map<std::string_view, StitchIndex> byId_;
};

// The stitches of resources/stitches.json, built into the program.
const StitchCataloguePtr& builtInStitches();

// One sentence when a stitch breaks the limits of stitch.h or lacks an id; nothing when it is fine.
std::optional<Error> stitchProblem(const Stitch& stitch);

}  // namespace lacewright
