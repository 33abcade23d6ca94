#pragma once

#include <vector>

#include "core/check/check.h"

// Who is to blame for a fault, and what would mend it.
namespace lacewright {

inline constexpr std::size_t kMaxMends = 3;           // offered for one finding
inline constexpr std::size_t kMaxSuspects = 12;       // named for one finding
inline constexpr std::size_t kMaxSuspectsInAll = 24;  // named for a chart or a text
inline constexpr double kLeastWeight = 0.002;         // suspects below are not named
inline constexpr std::size_t kMaxAdvised = 60;        // findings of one chart that get advice

// Takes faults of two rows apart that were folded as one, where the rest of the chart says that
// both rows are wrong. Fills in suspects and mends of the findings about stitch counts (rules
// "continuity", "cast-on" and "closing", for every size), and mends of those about a size's edge
// that parts companions
// ("size-edge": a stitch worked otherwise, the edge moved). Adds findings of rule "symmetry" for
// cells that count right but contradict the rest of the chart, and the suspects of the whole chart:
// both cells of a pair that only contradict each other, and cells that are likelier right. Every
// mend offered was tried: applied to the chart and checked again, its finding is gone and no fault
// has come up. Only the first kMaxAdvised findings of either kind get advice (fewer in a wide
// chart), and symmetries are looked for only near the first few faults of a large chart.
// Requires: the report is check(chart).
void advise(const Chart& chart, Report& report);

// The same for one finding of a chart.
void advise(const Chart& chart, Finding& finding);

}  // namespace lacewright
