#include "core/count/shares.h"

#include <algorithm>
#include <numeric>

namespace lacewright {
namespace {

constexpr std::int64_t kMostCounted = 100'000;  // loops that are shared out one by one
constexpr std::int64_t kMostLarge = 1'000'000;  // of a part, to be multiplied

std::int64_t commonOf(const std::vector<std::int64_t>& parts) {
    return std::accumulate(parts.begin(), parts.end(), std::int64_t{0},
                           [](std::int64_t a, std::int64_t b) { return std::gcd(a, b); });
}

// In how many ways 0 .. loops can be shared out: none, one, or 2 for several.
std::vector<int> waysUpTo(const std::vector<std::int64_t>& parts, std::int64_t loops) {
    std::vector<int> ways(static_cast<std::size_t>(loops) + 1, 0);
    ways[0] = 1;
    for (const std::int64_t part : parts) {
        for (auto at = static_cast<std::size_t>(part); at < ways.size(); ++at) {
            ways[at] = std::min(2, ways[at] + ways[at - static_cast<std::size_t>(part)]);
        }
    }
    return ways;
}

}  // namespace

std::int64_t sharedFrom(const std::vector<std::int64_t>& parts) {
    // Of numbers without a common divisor, the least a and the greatest b, (a - 1)(b - 1) and all
    // above are sums: Schur's bound, in A. Brauer, "On a problem of partitions", American Journal
    // of Mathematics 64, 1942.
    const auto [least, most] = std::minmax_element(parts.begin(), parts.end());
    const std::int64_t common = commonOf(parts);
    if (*most > kMostLarge) return kMostLarge * kMostLarge;
    return (*least / common - 1) * (*most / common - 1) * common;
}

std::optional<std::int64_t> largestShared(const std::vector<std::int64_t>& parts,
                                          std::int64_t loops) {
    if (loops < 0) return std::nullopt;
    const std::int64_t whole = loops / commonOf(parts) * commonOf(parts);
    if (whole >= sharedFrom(parts) || whole > kMostCounted) return whole;
    const std::vector<int> ways = waysUpTo(parts, whole);
    std::size_t at = ways.size() - 1;
    while (ways[at] == 0) --at;
    return static_cast<std::int64_t>(at);
}

std::int64_t nextShared(const std::vector<std::int64_t>& parts, std::int64_t loops) {
    const std::int64_t common = commonOf(parts);
    const std::int64_t next = (loops / common + 1) * common;
    if (next >= sharedFrom(parts) || next > kMostCounted) return next;
    // One time more of any part goes beyond `loops`.
    const std::int64_t least = *std::min_element(parts.begin(), parts.end());
    const std::vector<int> ways = waysUpTo(parts, loops + least);
    auto at = static_cast<std::size_t>(next);
    while (at < ways.size() && ways[at] == 0) at += static_cast<std::size_t>(common);
    return static_cast<std::int64_t>(at);
}

std::optional<std::vector<std::int64_t>> onlyWay(const std::vector<std::int64_t>& parts,
                                                 std::int64_t loops) {
    if (loops < 0 || loops > kMostCounted) return std::nullopt;
    const std::vector<int> ways = waysUpTo(parts, loops);
    auto rest = static_cast<std::size_t>(loops);
    if (ways[rest] != 1) return std::nullopt;
    std::vector<std::int64_t> times;
    for (const std::int64_t part : parts) {
        const auto each = static_cast<std::size_t>(part);
        times.push_back(0);
        for (; rest >= each && ways[rest - each] > 0; rest -= each) ++times.back();
    }
    return times;
}

}  // namespace lacewright
