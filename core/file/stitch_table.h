#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/stitch/catalogue.h"

namespace lacewright {

// The stitches that a file may name while it is being read. An id that no stitch has becomes one of
// kind Unknown.
class StitchTable {
 public:
    // Built-in stitches; a chart's own follow, or take the place of the built-in one with their id.
    explicit StitchTable(std::vector<Stitch> own);

    // kCovered when no stitch has the id.
    StitchIndex find(std::string_view id) const;
    // The index of a new unknown stitch; kCovered when no more fit.
    // Requires: find(id) gives kCovered and stitchProblem has nothing against the id.
    StitchIndex addUnknown(std::string_view id);
    // Requires: index is one that find or addUnknown gave.
    const Stitch& operator[](StitchIndex index) const { return stitches_[index - 1U]; }

    // The catalogue of these stitches; the built-in one itself when nothing was added. Leaves the
    // table empty.
    StitchCataloguePtr takeCatalogue();

 private:
    struct Hash {
        using is_transparent = void;  // look up without making a string
        std::size_t operator()(std::string_view id) const {
            return std::hash<std::string_view>()(id);
        }
    };

    std::vector<Stitch> stitches_;  // [index - 1]
    std::unordered_map<std::string, StitchIndex, Hash, std::equal_to<>> byId_;
    bool changed_ = false;  // differs from the built-in stitches
};

}  // namespace lacewright
