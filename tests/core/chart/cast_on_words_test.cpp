#include "core/chart/cast_on_words.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

TEST(CastOnWords, SayAFixedCountOrAMultiple) {
    EXPECT_EQ(castOnText({0, 29}), "29 stitches");
    EXPECT_EQ(castOnText({0, 1}), "1 stitch");
    EXPECT_EQ(castOnText({6, 5}), "a multiple of 6 plus 5");
    EXPECT_EQ(castOnText({6, 0}), "a multiple of 6");
}

TEST(CastOnWords, FewerThanTheMultipleAreTakenAway) {
    EXPECT_EQ(castOnText({6, -1}), "a multiple of 6 minus 1");
}

}  // namespace
}  // namespace lacewright
