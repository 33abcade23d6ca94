#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "core/check/check.h"

namespace lacewright {

// A report as one JSON object on one line, without the line's end:
//   file, knittable, closes (true, false or null),
//   findings: [{rule, severity, row, columns, sizes, message, mends: [{label, reason}]}],
//   rows: [{row, takes: {const, repeats: {NAME: count}}, makes: {the same}}]
// Findings that follow from the same cause stand in `folded` of the first, which is left out when
// there are none, like the `suspects` (columns, most likely first) and the reason of a mend.
// `nameOf` names the counts of the forms: the repeats of a chart.
std::string reportText(std::string_view file, const Report& report,
                       const std::function<std::string(Variable)>& nameOf);

// "fault", "warning" or "note".
std::string_view severityName(Severity severity);

}  // namespace lacewright
