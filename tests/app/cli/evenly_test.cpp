// Even spreading and picking up through the command line; the arithmetic has its tests in
// core/plan.

#include "tests/app/cli/cli_run.h"

namespace lacewright::cli {
namespace {

TEST(SpreadVerb, TellsWhereToIncreaseAndDecrease) {
    EXPECT_EQ(run({"spread", "48", "54", "--ends", "grouped"}).out,
              "[k8, m1] 6 times (48 sts become 54 sts)\n");
    EXPECT_EQ(run({"spread", "48", "42", "--ends", "grouped"}).out,
              "[k6, k2tog] 6 times (48 sts become 42 sts)\n");
    EXPECT_EQ(run({"spread", "48", "54", "--ends", "grouped", "--increase", "kfb"}).out,
              "[k7, kfb] 6 times (48 sts become 54 sts)\n");
}

TEST(SpreadVerb, RefusesMisuse) {
    expectMisuse(run({"spread", "48"}), "two numbers");
    expectMisuse(run({"spread", "48", "48"}), "differ");
    expectMisuse(run({"spread", "48", "many"}), "two numbers");
    expectMisuse(run({"spread", "48", "54", "--ends", "none"}), "half, whole, grouped");
    expectMisuse(run({"spread", "48", "42", "--increase", "kfb"}), "fewer");
    expectMisuse(run({"spread", "4", "1"}), "");
}

// 3 stitches for every 4 rows where row gauge to stitch gauge is 4 to 3: common practice, no
// source.
TEST(PickUpVerb, TellsTheRatioAndTheRows) {
    const Ran ran = run({"pick-up", "60", "--gauge", "24x32"});
    EXPECT_EQ(ran.code, kDone);
    EXPECT_THAT(ran.out, testing::HasSubstr("45 stitches along 60 rows: pick up 2, skip 1, "
                                            "[pick up 3, skip 1] 14 times, pick up 1.\n"));
    EXPECT_THAT(ran.out, testing::EndsWith("By heart: 3 stitches for every 4 rows.\n"));
    EXPECT_EQ(run({"pick-up", "60", "--gauge", "24x32/4in"}).out, ran.out);
}

TEST(PickUpVerb, RefusesMisuse) {
    expectMisuse(run({"pick-up", "60"}), "--gauge");
    expectMisuse(run({"pick-up", "all", "--gauge", "24x32"}), "\"all\"");
    expectMisuse(run({"pick-up", "0", "--gauge", "24x32"}), "rows");
    expectMisuse(run({"pick-up", "60", "--gauge", "24"}), "--gauge");
}

}  // namespace
}  // namespace lacewright::cli
