#include "app/cli/nearest.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace lacewright::cli {
namespace {

// Letters to change, put in or leave out.
std::size_t distance(const std::string& a, const std::string& b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = std::exchange(row[0], i + 1);
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({changed, row[j] + 1, diagonal + 1});
        }
    }
    return row.back();
}

}  // namespace

std::string didYouMean(const std::string& word, const std::vector<std::string>& known) {
    constexpr std::size_t kLongest = 64;  // longer words are no slips of the pen
    if (word.size() > kLongest) return {};
    std::size_t least = std::min<std::size_t>(3, word.size());
    std::string nearest;
    for (const std::string& other : known) {
        const std::size_t letters = distance(word, other);
        if (letters >= least) continue;
        least = letters;
        nearest = other;
    }
    return nearest.empty() ? "" : " (did you mean \"" + nearest + "\"?)";
}

}  // namespace lacewright::cli
