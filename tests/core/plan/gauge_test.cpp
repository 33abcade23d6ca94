#include "core/plan/gauge.h"

#include "tests/support/charts.h"

namespace lacewright {
namespace {

// 5 and 8 to the inch are 20 and 32 over 4 in, which is 10.16 cm: an inch is 2.54 cm by the
// international yard and pound agreement of 1959.
TEST(GaugeOfAPlan, FourInchesAreLongerThanTenCentimetres) {
    const Gauge gauge = gaugeOverFourInches(20, 32);
    EXPECT_NEAR(gauge.stitches, 19.685, 0.0005);
    EXPECT_NEAR(gauge.rows, 31.496, 0.0005);
    EXPECT_NEAR(lengthOf(20, gauge.stitches), 10.16, 1e-9);
}

TEST(GaugeOfAPlan, ACountIsTheWholeNumberNearestAndAHalfGoesUp) {
    EXPECT_EQ(countNearest(50, 22), 110);
    EXPECT_EQ(countNearest(50.2, 22), 110);  // 110.44
    EXPECT_EQ(countNearest(1.25, 20), 3);    // 2.5
    EXPECT_EQ(countNearest(0, 20), 0);
    for (int count = 0; count <= 400; ++count) {
        for (const double gauge : {17.0, 22.0, 24.5, 31.496}) {
            EXPECT_EQ(countNearest(lengthOf(count, gauge), gauge), count) << gauge;
        }
    }
}

TEST(GaugeOfAPlan, LengthsAreToldInBothUnits) {
    EXPECT_EQ(lengthText(101.6), "101.6 cm (40.0 in)");
    EXPECT_EQ(lengthText(42.55), "42.6 cm (16.8 in)");
    EXPECT_EQ(tenths(-0.04), "0.0");
    EXPECT_EQ(tenths(-0.06), "-0.1");
}

TEST(PlanLength, WorksWholeRowRepeatsAndTheOtherRowsOnce) {
    Chart chart = blankChart(4, 10);
    chart.rowRepeat = RowRepeat{2, 7, 0, {}};  // 4 rows once, 6 again and again
    for (int wanted = 1; wanted <= 200; ++wanted) {
        const LengthPlan plan = planLength(chart, 30, wanted);
        EXPECT_EQ(plan.rows, 4 + 6 * plan.repeats);
        for (int repeats = 1; repeats < 110; ++repeats) {  // no other number comes nearer
            EXPECT_GE(std::abs(lengthOf(4 + 6 * repeats, 30) - wanted) + 1e-9,
                      std::abs(plan.differenceCm));
        }
    }
    chart.uncharted = Uncharted::Purl;  // two rows on the needle for each one drawn
    EXPECT_EQ(planLength(chart, 30, 20).rows, 8 + 12 * 4);
    chart.rowRepeat.reset();
    EXPECT_EQ(planLength(chart, 30, 1).rows, 20);
}

}  // namespace
}  // namespace lacewright
