#include <gtest/gtest.h>

#include "tests/core/file/chart_sample.h"
#include "tests/core/file/random_chart.h"

namespace lacewright {
namespace {

TEST(RandomCharts, SurviveWritingAndReading) {
    std::mt19937 random(20240607);
    for (int round = 0; round < 200; ++round) {
        const Chart chart = randomChart(random);
        const std::string text = writeChart(chart);
        const Result<Chart> back = readChart(text, "random");
        ASSERT_TRUE(back) << back.error().text() << "\n" << text;
        ASSERT_EQ(*back, chart) << text;
        ASSERT_EQ(writeChart(*back), text);
    }
}

TEST(RandomCharts, UseWhatTheyAreMeantToTest) {
    std::mt19937 random(20240607);
    int jogs = 0, broken = 0, unknown = 0, own = 0, changes = 0, substitutions = 0, extras = 0;
    for (int round = 0; round < 200; ++round) {
        const Chart chart = randomChart(random);
        for (const Repeat& repeat : chart.repeats) jogs += repeat.jogs.empty() ? 0 : 1;
        for (const Size& size : chart.sizes) changes += size.changes.size() > 1 ? 1 : 0;
        for (int i = 0; i < chart.height(); ++i) {
            broken += chart.row(i).traits().hasBroken ? 1 : 0;
            unknown += chart.row(i).traits().hasUnknown ? 1 : 0;
        }
        own += chart.stitches->size() > builtInStitches()->size() ? 1 : 0;
        for (const Size& size : chart.sizes) substitutions += size.substitutions.empty() ? 0 : 1;
        extras += chart.extras.empty() ? 0 : 1;
    }
    for (const int seen : {jogs, broken, unknown, own, changes, substitutions, extras})
        EXPECT_GT(seen, 10);
}

}  // namespace
}  // namespace lacewright
