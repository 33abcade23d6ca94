#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/chart/chart.h"
#include "core/check/finding.h"
#include "core/count/tally.h"

namespace lacewright {

// What a row takes and makes over the whole width, by its own repeats.
struct RowCount {
    int number = 1;  // as the knitter reads it
    RowForms forms;
    bool operator==(const RowCount&) const = default;
};

// The verdict on a chart.
struct Report {
    bool knittable = false;      // no row is at fault, for any allowed number of repeats
    bool anyTimes = false;       // ... and no row asks for one number of some repeat
    std::optional<bool> closes;  // the last row of the row repeat fits below its first; absent when
                                 // a row is at fault, so that nothing can be said
    std::vector<Finding> findings;  // by row from the bottom, whole-chart findings first
    std::vector<RowCount> rows;     // by row from the bottom
    std::vector<Suspect> suspects;  // cells of the whole chart, likeliest first: those the findings
                                    // suspect, and such as count right but look out of place, also
                                    // where that is too little for a finding. Filled by advise().

    bool hasFault() const;
    bool operator==(const Report&) const = default;
};

// Checks everything. A pure function of the chart.
Report check(const Chart& chart);

// Checks chart after chart and works again only on what changed since the last one. Gives the same
// report as check().
class Checker {
 public:
    Checker();
    ~Checker();
    Checker(Checker&&) noexcept;
    Checker& operator=(Checker&&) noexcept;

    const Report& update(const Chart& chart);
    const Report& report() const;

 private:
    class Memory;
    std::unique_ptr<Memory> memory_;
};

}  // namespace lacewright
