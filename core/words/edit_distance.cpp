#include "core/words/edit_distance.h"

#include <algorithm>
#include <vector>

namespace lacewright {

std::size_t editDistance(std::string_view a, std::string_view b, std::size_t limit) {
    const std::size_t difference = a.size() > b.size() ? a.size() - b.size() : b.size() - a.size();
    if (difference >= limit) return limit;
    // Three rows of the table of costs: two letters ago, one letter ago, now.
    const std::size_t width = b.size() + 1;
    std::vector<std::size_t> cost(3 * width);
    std::size_t* before = cost.data();
    std::size_t* last = before + width;
    std::size_t* now = last + width;
    for (std::size_t j = 0; j < width; ++j) last[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        now[0] = i;
        std::size_t least = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            now[j] = std::min(
                {last[j] + 1, now[j - 1] + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                now[j] = std::min(now[j], before[j - 2] + 1);
            least = std::min(least, now[j]);
        }
        // A swap may still come from the row before.
        if (least > limit) return limit;
        std::size_t* const oldest = before;
        before = last;
        last = now;
        now = oldest;
    }
    return std::min(limit, last[b.size()]);
}

}  // namespace lacewright
