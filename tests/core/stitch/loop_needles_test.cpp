#include "tests/core/stitch/loop_needles.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

// The simulator must not agree with the catalogue by chance: it is checked here on its own, against
// results any knitter can see on the needles.
TEST(LoopNeedles, CountsWhatLeavesAndWhatIsMade) {
    const std::optional<WorkedLoops> worked = workOut("k2, yo, sl1, k2tog, psso, yo twice, BO 1");
    ASSERT_TRUE(worked);
    EXPECT_EQ(worked->takes, 6);
    EXPECT_EQ(worked->makes, 6);
}

TEST(LoopNeedles, KnowsWhichLoopLiesOnTop) {
    EXPECT_EQ(workOut("k3tog")->onTop, 2);
    EXPECT_EQ(workOut("k3tog tbl")->onTop, 0);
    EXPECT_EQ(workOut("sl1, k2tog, psso")->onTop, 0);
    EXPECT_EQ(workOut("sl2, k1, p2sso")->onTop, 1);
}

TEST(LoopNeedles, RefusesWhatItCannotWork) {
    EXPECT_FALSE(workOut("wave"));
    EXPECT_FALSE(workOut("psso"));
    EXPECT_FALSE(workOut("k1, psso"));
    EXPECT_FALSE(workOut("(k1, k2tog) in next st"));
    EXPECT_FALSE(workOut("return"));
}

// common practice, no source: binding off 4 works 5 stitches, the fifth stays on the right needle.
TEST(LoopNeedles, BindsOffByPassingOver) {
    const auto worked = workOut("k1, k1, psso, k1, psso, k1, psso, k1, psso");
    ASSERT_TRUE(worked);
    EXPECT_EQ(worked->takes, 5);
    EXPECT_EQ(worked->makes, 1);
    const auto inSymbols = workOut("BO 1, BO 1, BO 1, BO 1, 1 st left from BO");
    ASSERT_TRUE(inSymbols);
    EXPECT_EQ(inSymbols->takes, worked->takes);
    EXPECT_EQ(inSymbols->makes, worked->makes);
}

}  // namespace
}  // namespace lacewright
