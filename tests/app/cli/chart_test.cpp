// Written rows drawn as a chart through the command line.

#include "core/base/disk.h"
#include "tests/app/cli/cli_run.h"

namespace lacewright::cli {
namespace {

using testing::HasSubstr;

class ChartVerb : public testing::Test {
 protected:
    std::string save(const std::string& text) const {
        const std::string path = folder_ / "rows.txt";
        EXPECT_TRUE(writeFile(path, text));
        return path;
    }
    std::string out() const { return folder_ / "out.lacewright"; }
    test::TempDir folder_;
};

TEST_F(ChartVerb, WritesAChartThatChecksAndReads) {
    const std::string rows = save(
        "Title: Reeds\nCast on: multiple of 6 plus 2\n"
        "Row 1: k1, *yo, k2tog, k4; rep from * to last st, k1\nRow 2 and all WS rows: purl\n");
    const Ran ran = run({"chart", rows, "-o", out()});
    EXPECT_EQ(ran.code, kDone) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("2 rows, 8 columns, 1 repeat"));
    const auto chart = loadChart(out());
    ASSERT_TRUE(chart);
    EXPECT_EQ(chart->name, "Reeds");
    EXPECT_EQ(test::drawn(*chart, 0), "k k k k k k2tog yo k");
    EXPECT_EQ(run({"check", out()}).code, kDone);
}

TEST_F(ChartVerb, DrawsAFaultAndSaysSo) {
    const std::string rows = save(
        "Cast on: multiple of 6 plus 2\n"
        "Row 1: k1, *yo, k2tog, k3; rep from * to last st, k1\n");
    const Ran ran = run({"chart", rows, "-o", out()});
    EXPECT_EQ(ran.code, kFound);
    EXPECT_TRUE(loadChart(out()));
    EXPECT_EQ(run({"check", out()}).code, kFound);
}

TEST_F(ChartVerb, WritesNothingWhenTheTextIsNotUnderstood) {
    const std::string rows = save("Row 1: k1, yoo, k2tgo\nRow 2: xyz\n");
    const Ran ran = run({"chart", rows, "-o", out()});
    EXPECT_EQ(ran.code, kMisuse);
    EXPECT_THAT(ran.err, HasSubstr(":1:"));
    EXPECT_THAT(ran.err, HasSubstr(":2:"));
    EXPECT_THAT(ran.err, HasSubstr("k2tog"));
    EXPECT_FALSE(loadChart(out()));
}

TEST_F(ChartVerb, RefusesMisuse) {
    const std::string rows = save("Sizes: S (M)\nCast on: 8 (9)\nRow 1: k8 (9)\n");
    expectMisuse(run({"chart", rows}), "-o");
    expectMisuse(run({"chart", rows, "-o", folder_ / "out.svg"}), ".lacewright");
    expectMisuse(run({"chart", rows, "-o", out(), "--size", "L"}), "no size \"L\"");
    EXPECT_EQ(run({"chart", rows, "-o", out()}).code, kDone);
    // Another repeat in each size.
    const std::string other =
        save("Sizes: S (M)\nCast on: 16 (20)\nRow 1: *k2 (3), yo, k2tog; rep from * to end\n");
    expectMisuse(run({"chart", other, "-o", out()}), "one size at a time");
    EXPECT_EQ(run({"chart", other, "-o", out(), "--size", "M"}).code, kDone);
}

}  // namespace
}  // namespace lacewright::cli
