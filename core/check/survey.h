#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/count/needle.h"
#include "core/count/path.h"
#include "core/count/tally.h"

namespace lacewright {

// The free count of a cast-on "multiple of a plus b"; repeats have the variables 0, 1, 2 ...
inline constexpr Variable kCastOnVariable = 1'000'000;

// A repeat that must be worked so many times, whatever else is free.
bool fixesTimes(Variable variable, const AffineForm& solved);
// Repeats that take a fixed number of stitches together. `tie` is one of Fit::ties.
bool fixesTimes(const AffineForm& tie);

// Bands of rows with one path, and which of them each row lies in.
class PathTable {
 public:
    PathTable(const Chart& chart, const Size* size);
    const Path& path(int row) const { return bands_[bandOf_[static_cast<std::size_t>(row)]].path; }
    const Reach& reach(int row) const {
        return bands_[bandOf_[static_cast<std::size_t>(row)]].reach;
    }
    // Both rows are worked along the same path.
    bool sameBand(int row, int other) const {
        return bandOf_[static_cast<std::size_t>(row)] == bandOf_[static_cast<std::size_t>(other)];
    }

 private:
    std::vector<PathBand> bands_;
    std::vector<std::size_t> bandOf_;
};

// One size's numbers, its times filled in (once where it does not say).
struct SizeSurvey {
    SizeSurvey(const Chart& chart, const Size& which);

    Size size;
    Times times;
    PathTable paths;
    std::vector<Tally> counts;  // by row index: what the size takes and makes on that row
};

// Everything the rules look at: the chart and the counts of every row, over the whole width and for
// each size. Rows are measured on a needle only where a row does not simply take what the row
// before made, so most rows cost a comparison.
class Survey {
 public:
    explicit Survey(const Chart& chart);

    // Takes over a chart of the same frame (sameFrame) and works again on the rows that are other
    // objects. Gives the indices of rows whose findings may differ, ascending.
    std::vector<int> refresh(const Chart& chart);

    const Chart& chart() const { return chart_; }
    int height() const { return chart_.height(); }
    const PathTable& whole() const { return whole_; }
    // By row index, over the whole width.
    const std::vector<RowForms>& forms() const { return forms_; }
    const std::vector<SizeSurvey>& sizes() const { return sizes_; }

    // How a row fits the needle, where that needed a closer look; null where it simply fits.
    const Fit* fit(int row) const;
    // Null when the row fits for every allowed number of repeats.
    const Fit* misfit(int row) const;
    bool anyMisfit() const;
    // No row fits for one number of some repeat only.
    bool anyTimes() const;
    // The needle after the last row.
    Needle needleAtEnd() const;

 private:
    struct Step {
        Fit fit;
        Needle after;
    };

    void count(int row);
    bool simplyFits(int row) const;
    Needle needleBefore(int row) const;
    void measure(int row);
    // Measures a row that may have changed; true when later rows see the same solved counts.
    bool remeasure(int row);

    Chart chart_;
    PathTable whole_;
    std::vector<RowForms> forms_;
    std::vector<SizeSurvey> sizes_;
    std::map<int, Step> steps_;  // rows that were measured on the needle
};

}  // namespace lacewright
