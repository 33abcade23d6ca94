#include "core/chart/shaping.h"

#include <gtest/gtest.h>

#include <random>

#include "core/chart/edits.h"

namespace lacewright {
namespace {

// 20 columns, 8 rows, size S from column 5 to 10.
Chart plain() {
    Size size;
    size.name = "S";
    size.reach = {5, 10};
    return *addSize(blankChart(20, 8), size);
}

// "2-4: 6-10, 5-5: 7-10" in row indices.
std::string shapingOf(const Chart& chart) {
    std::string text;
    for (const ReachChange& change : chart.sizes[0].changes) {
        if (!text.empty()) text += ", ";
        text += std::to_string(change.firstRow) + "-" + std::to_string(change.lastRow) + ": " +
                std::to_string(change.reach.start) + "-" + std::to_string(change.reach.end);
    }
    return text;
}

TEST(ShapeSize, GivesRowsTheirOwnColumns) {
    const Chart chart = *shapeSize(plain(), "S", 2, 4, {6, 10});
    EXPECT_EQ(shapingOf(chart), "2-4: 6-10");
    EXPECT_EQ(shapingOf(*shapeSize(chart, "S", 0, 1, {6, 10})), "0-4: 6-10");
    EXPECT_EQ(shapingOf(*shapeSize(chart, "S", 5, 5, {7, 10})), "2-4: 6-10, 5-5: 7-10");
}

TEST(ShapeSize, DividesWhatStandsAroundIt) {
    const Chart chart = *shapeSize(plain(), "S", 1, 6, {6, 10});
    EXPECT_EQ(shapingOf(*shapeSize(chart, "S", 3, 4, {7, 9})), "1-2: 6-10, 3-4: 7-9, 5-6: 6-10");
    EXPECT_EQ(shapingOf(*shapeSize(chart, "S", 3, 4, {5, 10})), "1-2: 6-10, 5-6: 6-10");
    EXPECT_EQ(shapingOf(*shapeSize(chart, "S", 0, 7, {5, 10})), "");
}

TEST(ShapeSize, RefusesWhatIsOutside) {
    EXPECT_FALSE(shapeSize(plain(), "M", 0, 1, {6, 10}));
    EXPECT_FALSE(shapeSize(plain(), "S", 6, 8, {6, 10}));
    EXPECT_FALSE(shapeSize(plain(), "S", 4, 3, {6, 10}));
    EXPECT_FALSE(shapeSize(plain(), "S", 4, 5, {6, 21}));
    EXPECT_FALSE(shapeSize(plain(), "S", 4, 5, {6, 5}));
}

TEST(WorkedReaches, NamesEachOnceWithItsRows) {
    Chart chart = *shapeSize(plain(), "S", 2, 3, {6, 10});
    chart = *shapeSize(chart, "S", 4, 4, {7, 10});
    chart = *shapeSize(chart, "S", 6, 7, {6, 10});
    const std::vector<WorkedReach> reaches = workedReaches(chart, chart.sizes[0]);
    ASSERT_EQ(reaches.size(), 3U);
    EXPECT_EQ(reaches[0], (WorkedReach{{5, 10}, {{0, 1}, {5, 5}}}));
    EXPECT_EQ(reaches[1], (WorkedReach{{6, 10}, {{2, 3}, {6, 7}}}));
    EXPECT_EQ(reaches[2], (WorkedReach{{7, 10}, {{4, 4}}}));
    EXPECT_EQ(workedReaches(plain(), plain().sizes[0]),
              (std::vector<WorkedReach>{{{5, 10}, {{0, 7}}}}));
}

// Row by row, whatever was shaped before.
TEST(ShapeSize, ChangesTheseRowsAndNoOthers) {
    std::mt19937 random(7);
    const auto below = [&](int end) {
        return static_cast<int>(random() % static_cast<unsigned>(end));
    };
    Chart chart = plain();
    for (int step = 0; step < 500; ++step) {
        const int first = below(8);
        const int last = first + below(8 - first);
        const Reach reach{4 + below(3), 9 + below(3)};
        const Chart after = *shapeSize(chart, "S", first, last, reach);
        for (int row = 0; row < 8; ++row) {
            EXPECT_EQ(after.sizes[0].on(row),
                      row >= first && row <= last ? reach : chart.sizes[0].on(row));
        }
        chart = after;
    }
}

}  // namespace
}  // namespace lacewright
