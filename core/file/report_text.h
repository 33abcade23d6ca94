#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "core/check/check.h"

namespace lacewright {

// A report as one JSON object on one line, without the line's end:
//   file, knittable, closes (true, false or null),
//   findings: [{rule, severity, row, columns, sizes, message,
//               mends: [{label, reason, cells: [{row, column, stitch}],
//                        rows: [{row, stitches}]}],
//               suspects: [{row, column, weight, rather}], folded: [findings]}],
//   suspects: [{row, column, weight, rather}],
//   rows: [{row, takes: {const, repeats: {NAME: count}}, makes: {the same}}]
// `cells` are those a mend draws anew; in written rows, the stitches it puts in or works otherwise,
// by their places in the row as worked; `rows` are the written rows as they then stand, as ids of
// stitches in working order, what repeats once. `suspects` are cells that may be wrong, the
// likeliest first; those of the report are of the whole chart and no verdict: a correct chart has
// some as well, of little weight. `rather` is the stitch that symmetry suggests. `folded` are
// findings that follow from the same cause. Lists that are empty are left out but for the first
// three, like a reason and a `rather` that is not known. `nameOf` names the counts of the forms:
// the repeats of a chart.
std::string reportText(std::string_view file, const Report& report,
                       const std::function<std::string(Variable)>& nameOf);

// "fault", "warning" or "note".
std::string_view severityName(Severity severity);

}  // namespace lacewright
