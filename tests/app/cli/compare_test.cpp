#include "core/base/disk.h"
#include "tests/app/cli/cli_run.h"

namespace lacewright::cli {
namespace {

using testing::HasSubstr;

class CompareVerb : public testing::Test {
 protected:
    void SetUp() override {
        ASSERT_TRUE(saveChart(soundChart(), chart_));
        rows_ = run({"write", chart_}).out;
        ASSERT_TRUE(writeFile(text_, rows_));
    }

    test::TempDir folder_;
    std::string chart_ = folder_ / "chart.lacewright";
    std::string text_ = folder_ / "rows.txt";
    std::string rows_;
};

TEST_F(CompareVerb, ProvesAChartAndItsRowsTheSame) {
    const Ran ran = run({"compare", chart_, text_});
    EXPECT_EQ(ran.code, kDone) << ran.out << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("are the same knitting, proven for every size"));
}

TEST_F(CompareVerb, ShowsTheFirstDifferenceOfARow) {
    const std::size_t yarnOver = rows_.find("yo", rows_.find("Row 1 "));
    ASSERT_NE(yarnOver, std::string::npos);
    ASSERT_TRUE(writeFile(text_, rows_.substr(0, yarnOver) + "m1" + rows_.substr(yarnOver + 2)));
    const Ran ran = run({"compare", "--size=large", chart_, text_});
    EXPECT_EQ(ran.code, kFound) << ran.out << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("the chart has yo (column "));
    EXPECT_THAT(ran.out, HasSubstr("|yo|"));
    EXPECT_THAT(ran.out, HasSubstr("1 row differs."));
}

TEST_F(CompareVerb, RefusesWhatItCannotRead) {
    expectMisuse(run({"compare", chart_}), "a chart and a file of written rows");
    expectMisuse(run({"compare", "--size", "huge", chart_, text_}), "no size \"huge\"");
    ASSERT_TRUE(writeFile(text_, "Row 1: k2tgo."));
    EXPECT_EQ(run({"compare", chart_, text_}).code, kMisuse);
}

}  // namespace
}  // namespace lacewright::cli
