#include "core/count/ties.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

AffineForm form(std::int64_t constant, std::map<Variable, std::int64_t> terms = {}) {
    AffineForm f(constant);
    for (const auto& [v, c] : terms) f.add(v, c);
    return f;
}

// Repeats 0 of 4 and 1 of 6 stitches on a cast-on of 10 for each count 2.
Ties tenEach() {
    Ties ties;
    ties.add(form(0, {{0, 4}, {1, 6}, {2, -10}}));
    return ties;
}

TEST(Ties, KnowWhatComesToOneNumber) {
    EXPECT_EQ(tenEach().constantOf(form(3, {{0, 4}, {1, 6}, {2, -10}})), 3);
    EXPECT_EQ(tenEach().constantOf(form(0, {{0, 2}, {1, 3}, {2, -5}})), 0);
    EXPECT_EQ(tenEach().constantOf(form(0, {{0, 4}, {1, 6}, {2, -9}})), std::nullopt);
    EXPECT_EQ(Ties().constantOf(form(7)), 7);
}

TEST(Ties, FindFormsThatAreDivisible) {
    // 4A + 6B is 10r, so a repeat of 5 is worked 2r times.
    const auto found = tenEach().divisible(form(0, {{0, 4}, {1, 6}}), 5);
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front(), form(0, {{2, 10}}));
    EXPECT_TRUE(tenEach().divisible(form(0, {{0, 4}, {1, 6}}), 3).empty());
}

TEST(Ties, GiveExamplesThatHold) {
    const Ties::Values least{{0, 0}, {1, 0}, {2, 1}};
    const auto example = tenEach().example(form(0, {{0, 4}, {1, 6}}), least,
                                           [](std::int64_t loops) { return loops % 3 != 0; });
    ASSERT_TRUE(example);
    EXPECT_EQ(4 * example->at(0) + 6 * example->at(1), 10 * example->at(2));
    EXPECT_NE(10 * example->at(2) % 3, 0);
    // No counts that are tied so leave an odd number.
    EXPECT_FALSE(tenEach().example(form(0, {{0, 4}, {1, 6}}), least,
                                   [](std::int64_t loops) { return loops % 2 != 0; }));
}

TEST(Ties, OfTwoHoldBoth) {
    Ties ties = tenEach();
    ties.add(form(-30, {{0, 1}, {3, 2}}));  // count 0 and twice count 3 are 30
    EXPECT_EQ(ties.constantOf(form(0, {{0, 1}, {3, 2}})), 30);
    const auto example = ties.example(form(0, {{3, 1}}), {{0, 0}, {1, 0}, {2, 1}, {3, 0}},
                                      [](std::int64_t) { return true; });
    ASSERT_TRUE(example);
    EXPECT_EQ(example->at(0) + 2 * example->at(3), 30);
    EXPECT_EQ(4 * example->at(0) + 6 * example->at(1), 10 * example->at(2));
}

}  // namespace
}  // namespace lacewright
