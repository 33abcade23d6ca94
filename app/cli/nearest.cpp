#include "app/cli/nearest.h"

#include <algorithm>

#include "core/words/edit_distance.h"

namespace lacewright::cli {

std::string didYouMean(const std::string& word, const std::vector<std::string>& known) {
    constexpr std::size_t kLongest = 64;  // longer words are no slips of the pen
    if (word.size() > kLongest) return {};
    std::size_t least = std::min<std::size_t>(3, word.size());
    std::string nearest;
    for (const std::string& other : known) {
        const std::size_t letters = editDistance(word, other, least);
        if (letters >= least) continue;
        least = letters;
        nearest = other;
    }
    return nearest.empty() ? "" : " (did you mean \"" + nearest + "\"?)";
}

}  // namespace lacewright::cli
