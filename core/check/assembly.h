#pragma once

#include <set>
#include <vector>

#include "core/check/finding.h"
#include "core/check/survey.h"

namespace lacewright {

// Puts the findings of rows and of the whole chart together: what has one cause becomes one
// finding, and all stand by row from the bottom, those of the whole chart before those of the row.
// After a change only the rows that differ, and rows folded with them, are put together again.
class Assembly {
 public:
    // `together` receives the result and must live as long as the assembly.
    Assembly(int height, std::vector<Finding>& together);

    // What the rules say of a row (index), before folding.
    void setRow(int row, std::vector<Finding> findings);
    // Looks again which rows hang on the one below. `rows`: indices of those whose counts or
    // findings may differ since the last time.
    void relink(const Survey& survey, const std::vector<int>& rows);
    // What the rules say of the whole chart.
    void setChart(const Chart& chart, std::vector<Finding> findings);
    // Whether the result is to be brought up to date.
    bool isDue() const { return !due_.empty(); }
    void update();

 private:
    // How a row hangs on the one below.
    enum class Link : std::uint8_t {
        None,
        Cuts,    // what sizes suffer may come of wide stitches cut on the row below
        Follows  // its own miscount comes of the row below as well
    };
    // What the result holds for a row; the place above the last row is for the whole chart alone.
    struct Place {
        std::vector<Finding> ofChart;
        std::vector<Finding> ofRow;  // before folding
        Link link = Link::None;
        std::size_t size = 0;  // findings in the result
    };

    Place& place(int row) { return places_[static_cast<std::size_t>(row)]; }
    const Place& place(int row) const { return places_[static_cast<std::size_t>(row)]; }
    Link linkOf(const Survey& survey, int row) const;
    bool isLinked(int row) const;
    std::vector<std::vector<Finding>> folded(int first, int last) const;
    void putAt(std::size_t at, int row, std::vector<Finding> findings);

    std::vector<Place> places_;
    std::vector<Finding> ofChart_;  // by row
    std::set<int> due_;             // rows whose part of the result differs
    std::vector<Finding>& together_;
};

}  // namespace lacewright
