#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/words/row_phrases.h"

// A row of one size on its way to words: what stands before and behind the repeat that gets the
// star.
namespace lacewright {

inline constexpr int kNoRepeat = -1;

// A run of words with the columns they stand for and the loops they take and make.
struct WordRun {
    std::vector<WordIndex> words = {};
    std::vector<int> columns = {};
    std::int64_t takes = 0;
    std::int64_t makes = 0;
};

struct CountedRun {
    WordRun run;
    int times = 1;
    std::string count = {};  // the name of how often, instead of `times`
    bool open = false;       // nothing says how often, or it does not matter
    bool kept = false;       // a repeat that sizes work another number of times
};

struct PartedRow {
    std::vector<CountedRun> before;
    std::optional<CountedRun> star;
    std::vector<CountedRun> after;
    std::int64_t takes = 0;  // all of it, repeats as often as the size works them
    std::int64_t makes = 0;

    // One after the other, neighbours that are worked once as one.
    std::vector<CountedRun> all() const;
};

// The repeat that gets the star: of those that every size works, the one worked most often in any;
// kNoRepeat if none is worked twice.
int starredRepeat(const std::vector<std::vector<WorkedStretch>>& bySize);

// How a row's repeats are told.
struct ToldRepeats {
    int starred = kNoRepeat;
    std::set<int> kept = {};              // stay together in every size, whatever their times
    std::vector<std::string> names = {};  // of all of the chart's: open stretches are counted so
};

// Repeats other than the starred one that the sizes work another number of times. Those of one
// plain stitch are written out among what stands beside them instead.
std::set<int> keptRepeats(const Chart& chart, Side side, int starred,
                          std::vector<std::vector<WorkedStretch>>& bySize, StitchWords& words);

// Parts the row at the starred repeat.
PartedRow partedRow(const Chart& chart, Side side, const std::vector<WorkedStretch>& stretches,
                    const ToldRepeats& told, StitchWords& words);

// The parts between those that are kept, and those themselves: for all sizes the same number, in
// the same order. Nothing when a size does not have them all.
std::optional<std::vector<std::vector<CountedRun>>> sectionsOf(const std::vector<CountedRun>& parts,
                                                               std::size_t kept);

// The row with several repeats and what stands between them as one open stretch, where all of it is
// the same plain stitch: "p to last 2 sts".
std::optional<std::vector<WorkedStretch>> joinedIfPlain(const Chart& chart, Side side,
                                                        const std::vector<WorkedStretch>& stretches,
                                                        StitchWords& words);

// A plain repeat takes in the stitches beside it that are the same: "k2, *k4; rep from *" becomes
// "k to ..". What it takes in need not be a whole number of repeats. Requires: every row has a
// star.
void absorbPlain(std::vector<PartedRow>& rows, const StitchWords& words);

}  // namespace lacewright
