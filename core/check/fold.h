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

// Folds what sizes suffer on a row under the wide stitches that their edges cut on the row below.
// Requires: `below` and `findings` are of two rows, one after the other.
void foldUnderCutsBelow(std::vector<Finding>& below, std::vector<Finding>& findings);

// Moves a row's own miscount under the fault of the row below, if that one stands by itself.
void foldUnderRowBelow(std::vector<Finding>& below, std::vector<Finding>& findings);

// True when the row below explains why both rows fail: what it takes too few, the upper one takes
// too many (a stitch dropped or added), one of its stitches would make up for both, or the upper
// row fits the row under it. The upper fault then belongs to the lower.
bool sameCauseAsBelow(const Survey& survey, int row);

}  // namespace lacewright
