#include <gmock/gmock.h>

#include "core/check/advice.h"
#include "core/check/mend.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

// A row whose own repeat does not go into the loops there are can be out in its repeat, at its
// edges or in both: whichever it is, the wrong cell is named.
namespace lacewright {
namespace {

using test::chartOf;
using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::SizeIs;

Finding onlyFaultOf(const Chart& chart) {
    Report report = check(chart);
    advise(chart, report);
    const auto faults = test::faultsOf(report);
    EXPECT_THAT(faults, SizeIs(1));
    return faults.empty() ? Finding{} : faults.front();
}

auto isAt(int row, int column) {
    return AllOf(Field(&Suspect::row, row), Field(&Suspect::column, column));
}

bool restores(const Chart& wrong, const Finding& fault, const Chart& right) {
    return std::any_of(fault.mends.begin(), fault.mends.end(), [&](const Mend& mend) {
        const auto mended = applyMend(wrong, mend);
        return mended && mended->rows == right.rows;
    });
}

// Cornelia Mee, Exercises in Knitting, 1846, "Two pretty Fringes", No. 1.
Chart fringe(const std::string& row1) {
    Chart chart = chartOf({row1, "p2tog yo"});
    chart.castOn = CastOn{2, 0};
    return test::withRepeat(chart, "A", 1, 2);
}

TEST(WholeRepeats, ARepeatThatTakesNothingFitsNoCastOn) {
    const Chart wrong = fringe("yo yo");
    const Finding fault = onlyFaultOf(wrong);
    EXPECT_EQ(fault.row, 1);
    EXPECT_THAT(fault.suspects, Contains(isAt(1, 1)));
    EXPECT_THAT(fault.suspects, Contains(isAt(1, 2)));
    EXPECT_TRUE(restores(wrong, fault, fringe("p2tog yo")));
}

// Isabella Beeton, Beeton's Book of Needlework, 1870, No. 299, "Knotted Stitch": 11 cast on, 33
// after every first row and 11 after every second.
Chart knotted(const std::string& row1) {
    Chart chart = chartOf({row1, "no-stitch sk2p", "k yo2", "no-stitch sk2p"});
    chart.castOn = CastOn{0, 11};
    return test::withRepeat(chart, "A", 1, 2);
}

TEST(WholeRepeats, AFixedCastOnAndTheRowAboveSpeakOfOneWrongCell) {
    const Chart wrong = knotted("k k2tog");  // 3 taken in the repeat, 2 made
    const Finding fault = onlyFaultOf(wrong);
    EXPECT_EQ(fault.rule, "cast-on");
    ASSERT_FALSE(fault.suspects.empty());
    EXPECT_THAT(fault.suspects.front(), isAt(1, 1));
    EXPECT_THAT(fault.folded, ElementsAre(Field(&Finding::row, 2)));
    EXPECT_TRUE(restores(wrong, fault, knotted("k yo2")));
}

// Cornelia Mee, Exercises in Knitting, 1846, "German Pattern of Open Double Knitting": 71 cast on,
// *p1, yo, sl 1; rep from * to last st, p1.
Chart openDouble(const std::string& row1) {
    Chart chart = chartOf({row1, "p2tog yo slwyf p"});
    chart.castOn = CastOn{0, 71};
    chart.rowRepeat = RowRepeat{1, 1, 0};
    return test::withRepeat(chart, "A", 2, 4);
}

TEST(WholeRepeats, AStitchLostAtTheEdgeMovesTheRepeatAsWell) {
    const Chart right = openDouble("p slwyb yo p");
    ASSERT_THAT(test::faultsOf(check(right)), SizeIs(0));
    const Chart wrong = openDouble("k p slwyb yo");  // 0 taken at the edge, 3 in the repeat
    const Finding fault = onlyFaultOf(wrong);
    EXPECT_EQ(fault.row, 1);
    ASSERT_FALSE(fault.suspects.empty());
    EXPECT_THAT(fault.suspects.front(), isAt(1, 1));
    EXPECT_TRUE(restores(wrong, fault, right));
}

}  // namespace
}  // namespace lacewright
