#include <gtest/gtest.h>

#include <cmath>

#include "core/check/balance_habit.h"
#include "core/check/open_ends.h"
#include "core/check/overlay.h"
#include "core/check/turned_rows.h"
#include "tests/support/charts.h"
#include "tests/support/motifs.h"

// What charts mostly do, by which their cells are judged.
namespace lacewright {
namespace {

StitchIndex stitchCalled(const char* id) {
    return builtInStitches()->find(id).value();
}

std::vector<bool> turnedIn(const std::vector<std::string>& rows) {
    return turnedRows(test::motif("", 0, rows), stitchCalled("k"), stitchCalled("p"));
}

TEST(TurnedRows, WrongSideRowsOfGarterStitchAreTurned) {
    EXPECT_EQ(turnedIn({"8*k", "8*p", "2*k yo ssk 4*k", "8*p"}),
              (std::vector<bool>{false, true, false, true}));
}

TEST(TurnedRows, OneStitchWrongDoesNotTurnARow) {
    EXPECT_EQ(turnedIn({"8*k", "3*k p 4*k", "3*p k 4*p", "8*p"}),
              (std::vector<bool>{false, false, true, true}));
}

TEST(TurnedRows, RibsStandOverOneAnother) {
    // Row 1 has more purl than knit, row 2 as much; the ribs go on all the same.
    const auto turned = turnedIn({"3*p k yo k2tog", "3*p 3*k", "3*p 2*k p"});
    EXPECT_EQ(turned[0], turned[1]);
    EXPECT_EQ(turned[1], turned[2]);
}

TEST(TurnedRows, OnlyKnitAndPurlStandForEachOther) {
    EXPECT_EQ(otherGround(*builtInStitches(), stitchCalled("k")), stitchCalled("p"));
    EXPECT_EQ(otherGround(*builtInStitches(), stitchCalled("p")), stitchCalled("k"));
    EXPECT_EQ(otherGround(*builtInStitches(), stitchCalled("yo")), kCovered);
}

class Ends : public testing::Test {
 protected:
    // Two rows of a repeat of 4 over a cast-on of 4 r.
    static Chart chart(bool closed) {
        Chart chart = test::motif("", 0, {"yo k2tog 2*k", "4*k"});
        if (!closed) chart.rowRepeat.reset();
        return chart;
    }
};

TEST_F(Ends, OfAChartThatIsWorkedAgainAreHeldTogether) {
    const Chart closed = chart(true);
    ASSERT_TRUE(closed.rowRepeat);
    const OpenEnds ends(closed, linksOf(closed));
    EXPECT_FALSE(ends.reach(0));
    EXPECT_FALSE(ends.reach(1));
    EXPECT_FALSE(ends.allow(1, 0, {0, 1}));
    EXPECT_TRUE(ends.allow(1, 0, {0, 0}));
}

TEST_F(Ends, TheLastRowMayMakeWhatNothingHoldsItTo) {
    const Chart open = chart(false);
    const OpenEnds ends(open, linksOf(open));
    EXPECT_TRUE(ends.reach(1));
    EXPECT_TRUE(ends.allow(1, 0, {0, 1}));
    EXPECT_FALSE(ends.allow(1, 0, {1, 0}));  // the row below makes 4
    EXPECT_FALSE(ends.allow(0, 0, {0, 1}));  // the row above takes 4
    // Now it ends on the 4 it begins with; with one more it would not.
    EXPECT_LT(ends.closingOdds(1, {{0, {0, 1}}}), -1);
    EXPECT_EQ(ends.closingOdds(1, {}), 0);
}

TEST_F(Ends, TheFirstRowTakesWhatTheCastOnGives) {
    Chart open = chart(false);
    open.castOn = CastOn{4, 0};
    const OpenEnds held(open, linksOf(open));
    EXPECT_FALSE(held.allow(0, 0, {1, 0}));  // 5 of every 4
    EXPECT_TRUE(held.allow(0, 0, {-2, 0}));  // 2: twice as many repeats
    open.castOn.reset();
    const OpenEnds free(open, linksOf(open));
    EXPECT_TRUE(free.allow(0, 0, {1, 0}));
}

TEST(BalanceHabit, SpeaksAgainstTheRowThatNoLongerKeepsItsCount) {
    // Row 3 makes one more than it takes, and row 5 takes one fewer: by counts either may be wrong.
    const Chart chart =
        test::motif("", 0, {"yo k2tog 4*k", "6*k", "k 2*yo k2tog 2*k no-stitch", "3*k yo k2tog k"});
    const BalanceHabit habit(chart, linksOf(chart));
    EXPECT_GT(habit.odds(2, 0, {0, -1}), 0);  // row 3 balanced again
    EXPECT_LT(habit.odds(3, 0, {1, 0}), 0);   // row 5 out of balance
    EXPECT_EQ(habit.odds(3, 0, {1, 1}), 0);
}

TEST(Overlay, TextureMayKeepASymmetryThatShapingBreaks) {
    const Chart chart = test::motif("", 0, {"p yo k2tog 3*k p", "p k yo k2tog 2*k p"});
    const Alphabet alphabet = alphabetOf(chart);
    const auto letter = [&](const char* id) { return alphabet.letterOf[stitchCalled(id)]; };
    // Straight up: the purl columns meet, the eyelets do not.
    Overlay overlay;
    for (int i = 0; i < 8; ++i) {
        overlay.put(alphabet, false, letter("p"), letter("p"));
        overlay.put(alphabet, false, letter("yo"), letter("k"));
        overlay.put(alphabet, false, letter("k"), letter("yo"));
        overlay.put(alphabet, false, letter("k"), letter("k"));
    }
    const auto odds = oddsFrom(overlay, alphabet, false);
    const auto at = [&](const char* image, const char* cell) {
        return odds[static_cast<std::size_t>(letter(image)) *
                        static_cast<std::size_t>(alphabet.size()) +
                    static_cast<std::size_t>(letter(cell))];
    };
    EXPECT_GT(at("p", "p"), 1);
    EXPECT_LT(at("yo", "yo"), at("k", "yo"));
}

TEST(Overlay, AMirrorKeepsLeansWhereThePatternKnowsOneDecreaseOnly) {
    const Chart chart = test::motif("", 0, {"k2tog yo 3*k yo k2tog", "ssk 5*k k2tog"});
    const Alphabet alphabet = alphabetOf(chart);
    const auto k2tog = alphabet.letterOf[stitchCalled("k2tog")];
    const auto ssk = alphabet.letterOf[stitchCalled("ssk")];
    const auto oddsWhere = [&](Alphabet::Letter image) {
        Overlay overlay;
        for (int i = 0; i < 6; ++i) overlay.put(alphabet, true, k2tog, image);
        return oddsFrom(overlay, alphabet, true);
    };
    const auto at = [&](const std::vector<float>& odds, Alphabet::Letter cell) {
        return odds[static_cast<std::size_t>(k2tog) * static_cast<std::size_t>(alphabet.size()) +
                    static_cast<std::size_t>(cell)];
    };
    const auto keeping = oddsWhere(k2tog);
    const auto swapping = oddsWhere(ssk);
    EXPECT_GT(at(keeping, k2tog), at(keeping, ssk));
    EXPECT_GT(at(swapping, ssk), at(swapping, k2tog));
}

}  // namespace
}  // namespace lacewright
