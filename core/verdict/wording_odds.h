#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/verdict/slip_trial.h"

namespace lacewright {

// The rows of a text are often worded alike but for the lengths of their plain stretches: "k2, yo,
// k2tog, k3" two rows above "k2, yo, k2tog, k2".
class WordingOdds {
 public:
    explicit WordingOdds(const SlipTrial& trial);

    // Log odds that the row says this, from how the others are worded, up to a term that is the
    // same whatever it says.
    double of(std::size_t row, const Elements& elements) const;

 private:
    std::vector<std::string> wordings_;  // by row; empty for rows that are one stretch
    std::vector<std::size_t> textOf_;    // by row
    std::map<std::string, std::vector<std::size_t>> rows_;  // first rows of a text, by wording
    std::size_t texts_ = 0;
};

}  // namespace lacewright
