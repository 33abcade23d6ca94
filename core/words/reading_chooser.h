#pragma once

#include <map>
#include <utility>
#include <vector>

#include "core/words/row_attempt.h"

namespace lacewright {

// Each row worked brings up to so many variables of its own.
inline constexpr Variable kVariablesPerRow = 100;

// Chooses how the words of a row are meant: so that they use up the loops there are, and of several
// such readings the one that the stated count and then the next rows agree with.
class ReadingChooser {
 public:
    // Requires: the pattern outlives this.
    ReadingChooser(const WrittenPattern& pattern, std::size_t size)
        : pattern_(pattern), size_(size) {}

    // `row` is the row at `index` with its landmarks settled as they lie there; its own counts are
    // numbered from `first`.
    RowAttempt choose(std::size_t index, const WrittenRow& row, const NeedleReach& reach,
                      Variable first);

 private:
    std::vector<RowAttempt> attempts(const NeedleReach& reach, const WrittenRow& row,
                                     Variable first) const;
    bool goesOn(const NeedleReach& reach, std::size_t index, std::size_t rows, Variable first);
    bool nextFits(const NeedleReach& reach, std::size_t index, Variable first);

    const WrittenPattern& pattern_;
    std::size_t size_;
    // Of rows that are worked alike wherever they stand: their readings, by row and first variable.
    std::map<std::pair<std::size_t, Variable>, std::vector<CountedRow>> ahead_;
};

}  // namespace lacewright
