#pragma once

#include <optional>
#include <vector>

#include "core/chart/chart.h"
#include "core/words/nested_rows.h"

namespace lacewright {

// Gives `size` the columns between which it works the chart, so that on every row it leaves out the
// stitches that `nested` says: one pair of columns where the rows allow it, and changes on spans of
// rows elsewhere; and the cells it works otherwise. Gives the index of a row that has no such
// columns, if there is one.
// Requires: a row of `nested` for each row of the chart.
std::optional<std::size_t> setReaches(const Chart& chart, const std::vector<NestedRow>& nested,
                                      Size& size);

// Letters the columns at which sizes begin and end, from the right.
void letterReaches(Chart& chart);

}  // namespace lacewright
