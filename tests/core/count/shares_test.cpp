#include "core/count/shares.h"

#include <gtest/gtest.h>

#include <numeric>

namespace lacewright {
namespace {

// In how many ways, by trying all.
int waysOf(const std::vector<std::int64_t>& parts, std::size_t from, std::int64_t loops) {
    if (from == parts.size()) return loops == 0 ? 1 : 0;
    int ways = 0;
    for (; loops >= 0; loops -= parts[from]) ways += waysOf(parts, from + 1, loops);
    return ways;
}

// The numbers that 6, 9 and 20 do not make up are well known: 43 is the last.
TEST(Shares, KnowTheLastNumberThatCannotBeHad) {
    EXPECT_EQ(largestShared({6, 9, 20}, 43), 42);
    EXPECT_EQ(nextShared({6, 9, 20}, 42), 44);
    EXPECT_GE(sharedFrom({6, 9, 20}), 44);
}

TEST(Shares, OfAWidthAndItsDoubleAreAllMultiples) {
    EXPECT_EQ(sharedFrom({4, 8}), 0);
    EXPECT_EQ(largestShared({4, 8}, 15), 12);
    EXPECT_EQ(nextShared({4, 8}, 0), 4);
}

TEST(Shares, HaveOneWayOrSeveral) {
    // 10 = 4 + 6 in no other way; 12 = 3 x 4 = 2 x 6; 2 is neither.
    EXPECT_EQ(onlyWay({4, 6}, 10), (std::vector<std::int64_t>{1, 1}));
    EXPECT_EQ(onlyWay({4, 6}, 12), std::nullopt);
    EXPECT_EQ(onlyWay({4, 6}, 2), std::nullopt);
    EXPECT_EQ(onlyWay({5, 5}, 0), (std::vector<std::int64_t>{0, 0}));
    EXPECT_EQ(onlyWay({5}, -5), std::nullopt);
}

TEST(Shares, AgreeWithTryingAllWays) {
    const std::vector<std::vector<std::int64_t>> all = {{1},     {7},         {4, 6},     {3, 5},
                                                        {5, 7},  {6, 10, 15}, {9, 4, 6},  {8, 8},
                                                        {12, 7}, {10, 4, 25}, {2, 11, 13}};
    for (const auto& parts : all) {
        const std::int64_t common =
            std::accumulate(parts.begin(), parts.end(), std::int64_t{0},
                            [](std::int64_t a, std::int64_t b) { return std::gcd(a, b); });
        std::int64_t last = 0;  // that can be had
        for (std::int64_t loops = 0; loops <= 120; ++loops) {
            const int ways = waysOf(parts, 0, loops);
            if (ways > 0) last = loops;
            EXPECT_EQ(largestShared(parts, loops), last) << loops;
            EXPECT_EQ(onlyWay(parts, loops).has_value(), ways == 1) << loops;
            if (loops >= sharedFrom(parts)) {
                EXPECT_EQ(ways > 0, loops % common == 0) << loops;
            }
            std::int64_t next = loops + 1;
            while (waysOf(parts, 0, next) == 0) ++next;
            EXPECT_EQ(nextShared(parts, loops), next) << loops;
        }
    }
}

}  // namespace
}  // namespace lacewright
