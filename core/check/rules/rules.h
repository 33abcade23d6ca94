#pragma once

#include <vector>

#include "core/check/finding.h"
#include "core/check/survey.h"

// One rule per file. A rule reads the survey and adds findings; it never looks at what other rules
// found. Row rules see one row (and may look at the one below), so that their findings can be kept
// while neither changes. Row arguments are row indices.
namespace lacewright {

using RowRule = void (*)(const Survey& survey, int row, std::vector<Finding>& findings);
using ChartRule = void (*)(const Survey& survey, std::vector<Finding>& findings);

// continuity.cpp: a row takes exactly what the row before made; row 1 what is cast on ("cast-on").
void checkContinuity(const Survey& survey, int row, std::vector<Finding>& findings);
// size_rows.cpp: the same along each size's own path ("continuity", or "size-edge" where the edge
// of the size parts a pair of companions).
void checkSizeRows(const Survey& survey, int row, std::vector<Finding>& findings);
// balance.cpp: a row that changes the count ("balance"), by design or not.
void checkBalance(const Survey& survey, int row, std::vector<Finding>& findings);
// geometry.cpp: wide stitches that are cut or broken ("wide-stitch"), unknown stitches
// ("unknown-stitch").
void checkGeometry(const Survey& survey, int row, std::vector<Finding>& findings);
// edge_yarn_over.cpp: a yarn over with no stitch beside it to hold it ("edge-yarn-over").
void checkEdgeYarnOvers(const Survey& survey, int row, std::vector<Finding>& findings);
// markers.cpp: the knitter's marker between repeats must move ("marker").
void checkMarkers(const Survey& survey, int row, std::vector<Finding>& findings);

// Frame rules look at no cell, so their findings hold while the frame does.
// boxes.cpp: repeats that overlap, jogs that leave the chart ("repeat-box").
void checkBoxes(const Survey& survey, std::vector<Finding>& findings);
// size_counts.cpp: times a size does not give or gives in vain ("size-times"), columns outside the
// chart ("size-reach").
void checkSizeTimes(const Survey& survey, std::vector<Finding>& findings);

// expected_counts.cpp: the count a size expects ("size-count").
void checkExpectedCounts(const Survey& survey, std::vector<Finding>& findings);
// size_counts.cpp: the cast-on that a size must fit ("size-count").
void checkSizeCounts(const Survey& survey, std::vector<Finding>& findings);
// Rules that compare sizes with one another, or with what the chart says of them (chart/grading.h).
// What it does not say is not judged. They warn: each size by itself can be knitted.
// size_rise.cpp: a larger size has more stitches, at its beginning and its end ("size-rise").
void checkSizeRise(const Survey& survey, std::vector<Finding>& findings);
// size_halves.cpp: all counts are even, or all odd, where sizes are halved ("size-halves").
void checkSizeHalves(const Survey& survey, std::vector<Finding>& findings);
// size_shoulders.cpp: shoulders that are joined have equal counts ("size-shoulders").
void checkSizeShoulders(const Survey& survey, std::vector<Finding>& findings);
// size_ease.cpp: the ease lies in its range ("size-ease").
void checkSizeEase(const Survey& survey, std::vector<Finding>& findings);
// closing.cpp: the last row of the row repeat fits below its first ("closing").
void checkClosing(const Survey& survey, std::vector<Finding>& findings);
// Whether it does; nothing when a row is at fault.
std::optional<bool> closes(const Survey& survey);

}  // namespace lacewright
