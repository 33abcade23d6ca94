#pragma once

#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "core/check/finding.h"

// What a mend must take away, and what it must not bring.
namespace lacewright {

// Miscounts of rows, which have culprits among cells, unless they concern some sizes only.
bool isAboutCounts(const Finding& finding);
// A size's edge that parts companions.
bool isAboutEdge(const Finding& finding);

// What may not come up anew when a chart is mended, one by one for the sizes concerned. The two
// edges of a size are problems of their own, and a fault is another one than a warning.
struct Problem {
    std::string rule;
    int row = 0;
    std::string size;          // empty: every one
    std::vector<int> columns;  // of the pairs an edge parts
    bool fault = false;
    bool operator<(const Problem& other) const {
        return std::tie(rule, row, size, columns, fault) <
               std::tie(other.rule, other.row, other.size, other.columns, other.fault);
    }
};

std::vector<Problem> problemsOf(const Finding& finding);
// Adds those of all findings and of what is folded under them.
void collectProblems(const std::vector<Finding>& findings, std::set<Problem>& problems);

}  // namespace lacewright
