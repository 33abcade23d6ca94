#include "core/base/disk.h"
#include "tests/app/cli/cli_run.h"

namespace lacewright::cli {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

class WriteVerb : public testing::Test {
 protected:
    void SetUp() override { ASSERT_TRUE(saveChart(soundChart(), file_)); }

    test::TempDir folder_;
    std::string file_ = folder_ / "chart.lacewright";
};

TEST_F(WriteVerb, WritesAllSizesThatCheckProvesAgain) {
    const Ran ran = run({"write", file_});
    EXPECT_EQ(ran.code, kDone) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Row 1"));
    const std::string rows = folder_ / "rows.txt";
    EXPECT_EQ(run({"write", file_, "-o", rows}).out, "");
    EXPECT_EQ(readFile(rows).value(), ran.out);
    EXPECT_EQ(run({"check", rows}).code, kDone);
}

TEST_F(WriteVerb, WritesOneSizeAndAPage) {
    const Ran ran = run({"write", "--size", "large", "--terms=uk", "--html", file_});
    EXPECT_EQ(ran.code, kDone) << ran.err;
    EXPECT_THAT(ran.out, StartsWith("<!DOCTYPE html>"));
    EXPECT_THAT(ran.out, HasSubstr("lang=\"en-GB\""));
    EXPECT_THAT(ran.out, HasSubstr("<dt>Sizes</dt><dd>large</dd>"));
}

TEST_F(WriteVerb, RefusesWhatItDoesNotKnow) {
    expectMisuse(run({"write", "--size", "huge", file_}), "no size \"huge\"");
    expectMisuse(run({"write", "--terms", "de", file_}), "us or uk");
    expectMisuse(run({"write", "--brackets", "curly", file_}), "square or round");
    expectMisuse(run({"write", "--numerals", "roman", file_}), "digits or words");
    expectMisuse(run({"write", file_, file_}), "one chart at a time");
    expectMisuse(run({"write", folder_ / "none.lacewright"}), "none.lacewright");
}

}  // namespace
}  // namespace lacewright::cli
