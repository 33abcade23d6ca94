#pragma once

#include <functional>

#include "core/check/culprits.h"
#include "core/check/finding.h"

// Cells that count right and may be wrong all the same, as findings and as suspects.
namespace lacewright {

// Those that the rest of the chart contradicts with some certainty, without mends. A row that is
// shifted is told of once. By weight of the evidence.
struct OddFinding {
    Finding finding;  // of rule "symmetry"
    Repair repair;
};
std::vector<OddFinding> oddFindings(const Chart& chart,
                                    std::vector<CulpritSearch::OddCell> oddCells);

// All of them by how likely they are to be wrong; of one row, a shift and single cells share that.
std::vector<Suspect> oddSuspects(const Chart& chart,
                                 const std::vector<CulpritSearch::OddCell>& oddCells);

}  // namespace lacewright
