#pragma once

#include <optional>
#include <vector>

#include "core/count/affine_form.h"
#include "core/count/path.h"

namespace lacewright {

// What a row takes and makes, for every number of repeats at once. The variable of a repeat is its
// index in Chart::repeats.
struct RowForms {
    AffineForm takes;
    AffineForm makes;
    AffineForm net() const { return makes - takes; }
    bool operator==(const RowForms&) const = default;
};

// Adds what a row takes and makes on one segment.
void addTo(RowForms& forms, const Row& row, const Segment& segment);
// Cost: the number of segments, whatever the width. Requires: the path fits the row.
RowForms formsOf(const Row& row, const Path& path);

// How often each repeat is worked, by repeat index; absent where a size does not say.
using Times = std::vector<std::optional<int>>;
Times timesOf(const Chart& chart, const Size& size);

// The forms of a size, its own times filled in and its substitutions counted. Repeats whose times
// are absent stay variables.
RowForms formsOf(const Chart& chart, int rowIndex, const Size& size, const Path& path,
                 const Times& times);

// The stitch that stands in a substituted cell minus the drawn one; nothing when the path does not
// work the cell, the stitch is unknown or spans another number of cells.
std::optional<Tally> substitutionEffect(const Chart& chart, const Substitution& substitution,
                                        const Path& path, const Times& times);

}  // namespace lacewright
