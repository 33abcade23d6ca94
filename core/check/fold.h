#pragma once

#include <vector>

#include "core/check/finding.h"
#include "core/check/survey.h"

namespace lacewright {

// A wide stitch that is cut or broken; what its row counts means nothing then.
bool isCut(const Finding& finding);

// One cause, one finding: within a row, what sizes suffer from a row that fails for everyone is
// folded under that row's fault, and any miscount under a wide stitch that is cut.
// Requires: all findings are of one row.
void foldWithinRow(std::vector<Finding>& findings);

// True when one stitch dropped from or added to the row below explains why both rows fail: what the
// lower row takes too few, the upper one takes too many. The upper fault then belongs to the lower.
bool sameCauseAsBelow(const Survey& survey, int row);

}  // namespace lacewright
