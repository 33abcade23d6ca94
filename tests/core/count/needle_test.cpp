#include "core/count/needle.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

constexpr Variable kR = 100;  // the cast-on's own variable

AffineForm form(std::int64_t constant, std::map<Variable, std::int64_t> terms = {}) {
    AffineForm f(constant);
    for (const auto& [v, c] : terms) f.add(v, c);
    return f;
}

TEST(Needle, TheFirstRowDecidesWithoutACastOn) {
    Needle needle;
    const Fit first = needle.fit(form(3, {{0, 6}}));
    ASSERT_TRUE(first.fits());
    needle.work({form(3, {{0, 6}}), form(3, {{0, 6}})}, first);
    EXPECT_TRUE(needle.fit(form(3, {{0, 6}})).fits());
    EXPECT_EQ(needle.fit(form(4, {{0, 6}})).kind, FitKind::Edges);
}

TEST(Needle, ADriftShowsInPlainNumbersAtTheSmallestCount) {
    Needle needle;
    needle.work({form(1, {{0, 32}}), form(1, {{0, 32}})}, needle.fit(form(1, {{0, 32}})));
    const Fit fit = needle.fit(form(1, {{0, 34}}));
    EXPECT_EQ(fit.kind, FitKind::Drift);
    EXPECT_EQ(fit.exampleAvailable, 33);
    EXPECT_EQ(fit.exampleRequired, 35);
}

TEST(Needle, SaysAtWhichCountAMisfitWouldHold) {
    Needle needle;
    needle.work({form(4, {{0, 6}}), form(4, {{0, 6}})}, needle.fit(form(4, {{0, 6}})));
    const Fit fit = needle.fit(form(1, {{0, 7}}));
    EXPECT_EQ(fit.kind, FitKind::Drift);
    EXPECT_EQ(fit.onlyAt, 3);
    EXPECT_EQ(fit.example.at(0), 1);
}

// Worked from a cast-on "multiple of 12 plus 5" with a printed row "k2, *12 sts*, k3".
TEST(Needle, SolvesTheRepeatsOfARowFromTheCastOn) {
    Needle needle({12, 5}, kR);
    const Fit fit = needle.fit(form(5, {{0, 12}}));
    ASSERT_TRUE(fit.fits());
    EXPECT_EQ(fit.solved.at(0), AffineForm::of(kR));
}

// Mrs Lambert, My Knitting Book (1843), "Fish-bone": cast on an odd number, the row takes 4m + 5.
TEST(Needle, NamesTheCountsForWhichARepeatDivides) {
    Needle needle({2, 1}, kR);
    const Fit fit = needle.fit(form(5, {{0, 4}}));
    EXPECT_EQ(fit.kind, FitKind::NotWhole);
    ASSERT_TRUE(fit.onlyWhen);
    EXPECT_EQ(*fit.onlyWhen, std::make_pair(std::int64_t{0}, std::int64_t{2}));
    EXPECT_EQ(fit.exampleAvailable, 3);
}

TEST(Needle, RaisesTheSmallestCountInsteadOfWorkingANegativeNumber) {
    Needle needle({2, 0}, kR);
    const Fit fit = needle.fit(form(6, {{0, 2}}));  // m = r - 3
    ASSERT_TRUE(fit.fits());
    EXPECT_EQ(fit.raised.at(kR), 3);
    needle.work({form(6, {{0, 2}}), form(6, {{0, 2}})}, fit);
    EXPECT_EQ(needle.smallest(kR), 3);
}

TEST(Needle, RefusesANegativeNumberOfRepeats) {
    Needle needle({0, 4}, kR);
    EXPECT_EQ(needle.fit(form(6, {{0, 2}})).kind, FitKind::TooFew);
    // Nor is it a matter of what is left over where there are fewer loops than lie outside.
    EXPECT_EQ(Needle({0, 5}, kR).fit(form(6, {{0, 2}})).kind, FitKind::TooFew);
}

TEST(Needle, ADemandSettlesASecondStarredRepeat) {
    // *k1, p1; rep from * to last 20 sts, **k2; rep from **
    Needle needle({2, 0}, kR);
    const Fit fit = needle.fit(form(0, {{0, 2}, {1, 2}}), {{form(0, {{1, 2}}), 20}});
    ASSERT_TRUE(fit.fits());
    EXPECT_EQ(fit.solved.at(1), AffineForm(10));
    EXPECT_EQ(fit.solved.at(0), form(-10, {{kR, 1}}));
    EXPECT_EQ(fit.raised.at(kR), 10);
}

TEST(Needle, TwoStackedRepeatsFitWhenOneDividesTheOther) {
    Needle needle;
    needle.work({form(2, {{0, 6}}), form(2, {{0, 6}})}, needle.fit(form(2, {{0, 6}})));
    const Fit narrow = needle.fit(form(2, {{1, 3}}));
    ASSERT_TRUE(narrow.fits());
    EXPECT_EQ(narrow.solved.at(1), form(0, {{0, 2}}));
    const Fit wide = needle.fit(form(2, {{1, 12}}));
    EXPECT_EQ(wide.kind, FitKind::NotWhole);
    EXPECT_EQ(*wide.onlyWhen, std::make_pair(std::int64_t{0}, std::int64_t{2}));
}

TEST(Needle, CountsAfreshAfterAMisfit) {
    Needle needle({6, 0}, kR);
    needle.work({form(2, {{0, 6}}), form(2, {{0, 6}})}, needle.fit(form(2, {{0, 6}})));
    const Fit next = needle.fit(form(2, {{1, 6}}));
    ASSERT_TRUE(next.fits());
    EXPECT_EQ(next.solved.at(1), AffineForm::of(0));
}

TEST(Needle, RefusesLoopsThatTwoRepeatsNeverMakeUp) {
    // Repeats of 4 and of 6 make up even numbers only, and not 2.
    EXPECT_EQ(Needle({0, 15}, kR).fit(form(0, {{0, 4}, {1, 6}})).kind, FitKind::NotWhole);
    EXPECT_EQ(Needle({0, 2}, kR).fit(form(0, {{0, 4}, {1, 6}})).kind, FitKind::NotWhole);
    EXPECT_EQ(Needle({0, 3}, kR).fit(form(5, {{0, 4}, {1, 6}})).kind, FitKind::TooFew);
    EXPECT_TRUE(Needle({0, 16}, kR).fit(form(0, {{0, 4}, {1, 6}})).fits());
    const Fit odd = Needle({6, 1}, kR).fit(form(0, {{0, 4}, {1, 6}}));
    EXPECT_EQ(odd.kind, FitKind::NotWhole);
    EXPECT_EQ(odd.exampleAvailable, 7);
    EXPECT_EQ(odd.exampleRequired, 6);
    // 9r + 1 is even for odd r only.
    const Fit some = Needle({9, 1}, kR).fit(form(0, {{0, 4}, {1, 6}}));
    EXPECT_EQ(some.onlyWhen, std::make_pair(std::int64_t{1}, std::int64_t{2}));
}

TEST(Needle, SolvesTwoRepeatsThatShareTheLoopsInOneWay) {
    const Fit fit = Needle({0, 12}, kR).fit(form(2, {{0, 4}, {1, 6}}));
    ASSERT_TRUE(fit.fits());
    EXPECT_EQ(fit.solved.at(0), AffineForm(1));
    EXPECT_EQ(fit.solved.at(1), AffineForm(1));
}

TEST(Needle, AsksForAsManyAsTwoRepeatsCanShare) {
    // 2r stitches in repeats of 4 and 6: not 2, but 4, 6, 8 ...
    const Fit fit = Needle({2, 0}, kR).fit(form(0, {{0, 4}, {1, 6}}));
    ASSERT_TRUE(fit.fits());
    EXPECT_EQ(fit.raised.at(kR), 2);
    // r stitches in repeats of 5 and 7: 23 is the last that cannot be had.
    EXPECT_EQ(Needle({1, 0}, kR).fit(form(0, {{0, 5}, {1, 7}})).raised.at(kR), 24);
}

TEST(Needle, RemembersWhatTwoRepeatsShare) {
    Needle needle({10, 0}, kR);
    const RowForms two{form(0, {{0, 4}, {1, 6}}), form(0, {{0, 4}, {1, 6}})};
    needle.work(two, needle.fit(two.takes));
    EXPECT_TRUE(needle.fit(two.takes).fits());
    const Fit five = needle.fit(form(0, {{2, 5}}));
    ASSERT_TRUE(five.fits());
    EXPECT_EQ(five.solved.at(2), form(0, {{kR, 2}}));
    const Fit three = needle.fit(form(0, {{2, 3}}));
    EXPECT_EQ(three.kind, FitKind::NotWhole);
    EXPECT_EQ(three.exampleAvailable, 20);  // 5 times 4 on 2 times 10
    EXPECT_EQ(needle.settled(form(1, {{0, 4}, {1, 6}, {kR, -10}})), AffineForm(1));
    // One stitch more in each repeat of 4 is a drift for all that.
    EXPECT_EQ(needle.fit(form(0, {{0, 5}, {1, 6}})).kind, FitKind::Drift);
}

TEST(AffineForm, IsWrittenAsAPersonWould) {
    const auto name = [](Variable v) { return v == 0 ? std::string("n") : std::string("m"); };
    EXPECT_EQ(form(2, {{0, 6}}).text(name), "6n + 2");
    EXPECT_EQ(form(-1, {{0, 1}, {1, -2}}).text(name), "n - 2m - 1");
    EXPECT_EQ(form(0).text(name), "0");
}

}  // namespace
}  // namespace lacewright
