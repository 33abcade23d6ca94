#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/check/finding.h"
#include "core/words/written.h"

namespace lacewright {

inline constexpr char kNumberPlace = '\1';  // stands for a number of stitches in a sentence

// Findings about written rows of all sizes, the same sentence about the same row kept once. A
// sentence may leave places for numbers: sizes that differ in them alone share it, "61 (71, 81)
// become 57 (66, 75)".
class ToldFindings {
 public:
    explicit ToldFindings(const WrittenPattern& pattern) : pattern_(pattern) {}

    // Without a size it concerns the text itself. `numbers`: one for each place in the sentence.
    void add(Finding finding, std::optional<std::size_t> size = {},
             const std::vector<std::int64_t>& numbers = {});
    // By row; a finding that every asked size shares concerns no size in particular, others say
    // whose they are. What is wrong with one row in several sizes is one fault.
    std::vector<Finding> take(std::size_t asked);

 private:
    struct Told {
        Finding finding;
        std::vector<std::vector<std::int64_t>> numbers;  // one list for each size
    };

    const WrittenPattern& pattern_;
    std::vector<Told> all_;
};

}  // namespace lacewright
