#include "core/check/nearest_cast_ons.h"

#include <gmock/gmock.h>

#include "core/check/advice.h"
#include "core/check/mend.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

namespace lacewright {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

AffineForm form(int constant, std::initializer_list<int> each) {
    AffineForm takes(constant);
    Variable repeat = 0;
    for (const int loops : each) takes.add(repeat++, loops);
    return takes;
}

TEST(NearestCastOns, OfAFixedCountAreTheNearestThatARowUsesUp) {
    EXPECT_THAT(castOnsFor({0, 27}, form(5, {6})), ElementsAre(CastOn{0, 29}, CastOn{0, 23}));
    EXPECT_THAT(castOnsFor({0, 4}, form(5, {6})), ElementsAre(CastOn{0, 11}));
    EXPECT_THAT(castOnsFor({0, 27}, form(29, {})), ElementsAre(CastOn{0, 29}));
    // 5 + 4a + 6b: 25 and 27 but not 26.
    EXPECT_THAT(castOnsFor({0, 26}, form(5, {4, 6})), ElementsAre(CastOn{0, 27}, CastOn{0, 25}));
}

TEST(NearestCastOns, OfAMultipleIsTheOneOfEveryNumberOfRepeats) {
    EXPECT_THAT(castOnsFor({6, 2}, form(3, {6})), ElementsAre(CastOn{6, 3}));
    EXPECT_THAT(castOnsFor({6, 2}, form(3, {4, 6})), IsEmpty());
    EXPECT_THAT(castOnsFor({6, 2}, form(3, {})), IsEmpty());
}

// Row 1 takes 6 in the repeat and 3 beside it, as every other row does.
Chart eyelets(CastOn castOn) {
    Chart chart = test::chartOf({"k*2 yo k*2 k2tog k*3", "k*9", "k*4 k2tog yo k*3", "k*9"});
    chart.castOn = castOn;
    return test::withRepeat(chart, "A", 3, 8);
}

TEST(NearestCastOns, WhereAllRowsFitOneAnotherTheCastOnIsMended) {
    for (const CastOn& wrong : {CastOn{6, 2}, CastOn{5, 3}, CastOn{0, 28}}) {
        const Chart chart = eyelets(wrong);
        Report report = check(chart);
        advise(chart, report);
        const auto faults = test::faultsOf(report);
        ASSERT_EQ(faults.size(), 1U);
        ASSERT_FALSE(faults[0].mends.empty());
        const Mend& mend = faults[0].mends[0];
        EXPECT_EQ(mend.label,
                  wrong.multiple == 0 ? "Cast on 27 stitches" : "Cast on a multiple of 6 plus 3");
        EXPECT_THAT(test::faultsOf(check(applyMend(chart, mend).value())), IsEmpty());
    }
}

TEST(NearestCastOns, AWrongCellOfTheFirstRowIsNoWrongCastOn) {
    Chart chart = eyelets({6, 3});
    chart.rows.replace(0, test::rowOf("k*2 k k*2 k2tog k*3"));  // knit for the yarn over: 10 taken
    Report report = check(chart);
    advise(chart, report);
    const auto faults = test::faultsOf(report);
    ASSERT_EQ(faults.size(), 1U);
    ASSERT_FALSE(faults[0].mends.empty());
    EXPECT_THAT(faults[0].mends[0].label, testing::HasSubstr("in row 1, column"));
}

}  // namespace
}  // namespace lacewright
