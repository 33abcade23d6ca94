#pragma once

#include <optional>

#include "core/check/finding.h"
#include "core/verdict/slip_trial.h"
#include "core/words/prove.h"

namespace lacewright {

// The rows from one that may hold a slip up to those that fail because of it, to be proven without
// the rest of the text: many slips are tried, and few make these rows fit.
class SlipWindow {
 public:
    // Nothing when these rows do not stand alone: they go to landmarks, are worked again together
    // with others, or begin behind a turn or over a count that a cast-on cannot give.
    static std::optional<SlipWindow> make(const SlipTrial& trial, const WrittenProof& proof,
                                          std::size_t row, const Finding& finding,
                                          std::size_t size);

    std::size_t rows() const { return rows_.rows.size(); }
    // Whether the row with these elements takes the finding away, as far as the window shows.
    bool mayExplain(const Elements& elements);

 private:
    SlipWindow() = default;

    WrittenPattern rows_;
    std::size_t size_ = 0;
    std::vector<std::size_t> worded_;   // rows with the text of the first
    std::vector<bool> fails_;           // by row: it fails already, and may go on failing
    std::optional<AffineForm> leaves_;  // what the last row must leave, for rows to close
};

}  // namespace lacewright
