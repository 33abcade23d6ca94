#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/verdict/slip_trial.h"

namespace lacewright {

// The rows of a text are often worded alike but for the numbers in them: "k2, yo, k2tog, k3" two
// rows above "k2, yo, k2tog, k2"; and these numbers often grow or shrink by equal steps.
class WordingOdds {
 public:
    explicit WordingOdds(const SlipTrial& trial);

    // Log odds that the row says this, from how the others are worded, up to a term that is the
    // same whatever it says.
    double of(std::size_t row, const Elements& elements) const;

 private:
    struct Wording {
        std::string words;         // empty for rows that are one stretch
        std::vector<int> numbers;  // left out of the words
    };
    static Wording wordingOf(const Elements& elements);
    std::optional<std::vector<int>> foreseen(std::size_t row, const std::string& words,
                                             std::size_t without) const;
    double stepOdds(std::size_t row, const Wording& wording) const;
    bool repeatsLikeAnother(std::size_t row, const Elements& elements) const;

    std::vector<Wording> wordings_;                         // by row
    std::vector<std::size_t> textOf_;                       // by row
    std::vector<int> rowNumbers_;                           // by row
    std::map<std::string, std::vector<std::size_t>> rows_;  // first rows of a text, by words
    std::size_t texts_ = 0;
    std::multimap<std::string, std::size_t> repeats_;  // rows by what they repeat, numbers and all
};

}  // namespace lacewright
