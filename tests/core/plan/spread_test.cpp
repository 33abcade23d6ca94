#include "core/plan/spread.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <numeric>

#include "core/plan/pick_up.h"

namespace lacewright {
namespace {

std::map<int, int> tallied(const std::vector<int>& parts) {
    std::map<int, int> many;
    for (const int part : parts) ++many[part];
    return many;
}

// 48 into 6 is printed in a guide to even increases (Modern Daily Knitting); the others follow from
// division: 100 = 5 x 14 + 2 x 15, 120 = 10 x 11 + 10.
TEST(SharedEvenly, GivesTheGroupsOfTheHandbooks) {
    EXPECT_EQ(tallied(sharedEvenly(48, 6)), (std::map<int, int>{{8, 6}}));
    EXPECT_EQ(tallied(sharedEvenly(100, 7)), (std::map<int, int>{{14, 5}, {15, 2}}));
    EXPECT_EQ(tallied(sharedEvenly(120, 11)), (std::map<int, int>{{11, 10}, {10, 1}}));
}

TEST(SharedEvenly, IsAsEvenAsCanBeOverEveryRunOfShares) {
    for (int shares = 1; shares <= 12; ++shares) {
        for (int things = 0; things <= 40; ++things) {
            const auto parts = sharedEvenly(things, shares);
            ASSERT_EQ(std::accumulate(parts.begin(), parts.end(), 0), things);
            for (int run = 1; run <= shares; ++run) {  // sums of neighbours differ by at most one
                int low = things;
                int high = 0;
                for (int first = 0; first + run <= shares; ++first) {
                    const int sum =
                        std::accumulate(parts.begin() + first, parts.begin() + first + run, 0);
                    low = std::min(low, sum);
                    high = std::max(high, sum);
                }
                EXPECT_LE(high - low, 1) << things << " in " << shares;
            }
        }
    }
}

struct Worked {
    int before = 0;
    int after = 0;
};

// Reads a recipe as a knitter would.
Worked workRecipe(std::string recipe) {
    Worked all;
    const auto one = [](const std::string& text) {
        Worked some;
        std::size_t at = 0;
        while (at < text.size()) {
            const std::size_t end = std::min(text.find(", ", at), text.size());
            const std::string stitch = text.substr(at, end - at);
            at = end + 2;
            if (stitch == "m1") {
                some.after += 1;
            } else if (stitch == "kfb") {
                some.before += 1, some.after += 2;
            } else if (stitch == "k2tog") {
                some.before += 2, some.after += 1;
            } else {
                EXPECT_EQ(stitch[0], 'k') << stitch;
                some.before += std::stoi(stitch.substr(1));
                some.after += std::stoi(stitch.substr(1));
            }
        }
        return some;
    };
    while (!recipe.empty()) {
        std::string part;
        int times = 1;
        if (recipe[0] == '[') {
            const std::size_t close = recipe.find(']');
            part = recipe.substr(1, close - 1);
            times = std::stoi(recipe.substr(close + 2));
            const std::size_t end = recipe.find(" times", close) + 6;
            recipe = end + 2 <= recipe.size() ? recipe.substr(end + 2) : "";
        } else {
            const std::size_t open = recipe.find(", [");
            part = recipe.substr(0, open);
            recipe = open == std::string::npos ? "" : recipe.substr(open + 2);
        }
        const Worked some = one(part);
        all.before += some.before * times;
        all.after += some.after * times;
    }
    return all;
}

TEST(SpreadChanges, WritesRecipesThatComeOutForEveryCount) {
    for (int stitches = 2; stitches <= 40; ++stitches) {
        for (int changes = 1; changes <= stitches; ++changes) {
            for (const Change change : {Change::MakeOne, Change::FrontAndBack, Change::Together}) {
                for (const SpreadEnds ends :
                     {SpreadEnds::Half, SpreadEnds::Whole, SpreadEnds::Grouped}) {
                    const auto spread = spreadChanges(stitches, changes, change, ends);
                    const int most = change == Change::Together       ? stitches / 2
                                     : change == Change::FrontAndBack ? stitches
                                     : ends == SpreadEnds::Grouped    ? stitches
                                                                      : stitches - 1;
                    ASSERT_EQ(spread.has_value(), changes <= most) << stitches << "/" << changes;
                    if (!spread) continue;
                    const Worked worked = workRecipe(spread->recipe);
                    EXPECT_EQ(worked.before, stitches) << spread->recipe;
                    EXPECT_EQ(worked.after, spread->after) << spread->recipe;
                    EXPECT_EQ(spread->after,
                              stitches + (change == Change::Together ? -changes : changes));
                    const auto inner =
                        std::minmax_element(spread->plain.begin() + 1, spread->plain.end() - 1);
                    if (changes == 1) continue;
                    EXPECT_LE(*inner.second - *inner.first, 1) << spread->recipe;
                }
            }
        }
    }
}

TEST(SpreadChanges, BeginsAndEndsWithHalfAGapOrAWholeOneOrNone) {
    EXPECT_EQ(spreadChanges(48, 6, Change::MakeOne, SpreadEnds::Half)->recipe,
              "k4, m1, [k8, m1] 5 times, k4");
    EXPECT_EQ(spreadChanges(48, 6, Change::MakeOne, SpreadEnds::Grouped)->recipe,
              "[k8, m1] 6 times");
    EXPECT_EQ(spreadChanges(48, 6, Change::Together, SpreadEnds::Grouped)->recipe,
              "[k6, k2tog] 6 times");
    EXPECT_EQ(spreadChanges(120, 10, Change::MakeOne, SpreadEnds::Whole)->recipe,
              "k10, m1, [k11, m1] 9 times, k11");
    EXPECT_FALSE(spreadChanges(0, 1, Change::MakeOne, SpreadEnds::Half));
}

// The nearest fractions are facts of the Python library: Fraction(22, 30).limit_denominator(9).
TEST(NearestRatio, AgreesWithALibraryOfFractions) {
    struct Case {
        int stitches, rows;
        Ratio four, five, nine;
    };
    const Case cases[] = {
        {22, 30, {3, 4}, {3, 4}, {3, 4}}, {18, 24, {3, 4}, {3, 4}, {3, 4}},
        {20, 28, {3, 4}, {3, 4}, {5, 7}}, {28, 36, {3, 4}, {4, 5}, {7, 9}},
        {16, 22, {3, 4}, {3, 4}, {5, 7}}, {20, 32, {2, 3}, {3, 5}, {5, 8}},
        {24, 31, {3, 4}, {3, 4}, {7, 9}}, {26, 38, {2, 3}, {2, 3}, {2, 3}},
    };
    for (const Case& c : cases) {
        const double value = static_cast<double>(c.stitches) / c.rows;
        EXPECT_EQ(nearestRatio(value, 4), c.four) << value;
        EXPECT_EQ(nearestRatio(value, 5), c.five) << value;
        EXPECT_EQ(nearestRatio(value, 9), c.nine) << value;
    }
}

// 3 stitches for 4 rows at 21 to 28 and 5 for 8 at 5 and 8 to the inch: published knitting guides,
// the first also common practice wherever row gauge to stitch gauge is 4 to 3.
TEST(PlanPickUp, FindsTheRatiosKnittersUse) {
    EXPECT_EQ(planPickUp(21, 28, 100)->ratio, (Ratio{3, 4}));
    EXPECT_EQ(planPickUp(21, 28, 100)->simple, (Ratio{3, 4}));
    EXPECT_EQ(planPickUp(20, 32, 100)->ratio, (Ratio{5, 8}));
    EXPECT_EQ(planPickUp(22, 30, 60)->ratio, (Ratio{8, 11}));
    EXPECT_EQ(planPickUp(22, 30, 120)->ratio, (Ratio{11, 15}));
    EXPECT_EQ(planPickUp(21, 28, 8)->recipe, "pick up 2, skip 1, pick up 3, skip 1, pick up 1");
}

TEST(PlanPickUp, SpreadsSkipsEvenlyAndPicksUpAsManyAsItSays) {
    for (int rows = 1; rows <= 90; ++rows) {
        for (const double gauge : {14.0, 20.0, 22.0, 27.0, 30.0}) {
            const auto plan = planPickUp(gauge, 30, rows);
            ASSERT_TRUE(plan);
            EXPECT_EQ(std::count(plan->picked.begin(), plan->picked.end(), true), plan->stitches);
            EXPECT_NEAR(plan->stitches, plan->exact * rows, 0.5 + 1e-9);
            EXPECT_NEAR(plan->exact, 1.0 * plan->ratio.stitches / plan->ratio.rows,
                        0.5 / rows + 1e-9);
        }
    }
    EXPECT_EQ(planPickUp(40, 30, 6)->recipe,
              "[pick up 1 in a row, pick up 1 in a row, pick up 2 in a row] 2 times");
    EXPECT_FALSE(planPickUp(0, 30, 6));
    EXPECT_FALSE(planPickUp(20, 30, 0));
}

}  // namespace
}  // namespace lacewright
