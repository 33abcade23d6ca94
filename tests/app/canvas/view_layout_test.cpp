#include "app/canvas/view_layout.h"

#include <gtest/gtest.h>

namespace lacewright::app {
namespace {

constexpr MarginSizes kMargins{30, 50, 80};

TEST(ViewLayout, HugsASmallChartInTheMiddle) {
    const ViewLayout layout = layOut({500, 400}, {100, 60}, kMargins, 1);
    EXPECT_EQ(layout.scrollRange, QSize(0, 0));
    EXPECT_EQ(layout.grid.size(), QSize(100, 60));
    EXPECT_EQ(layout.left.right() + 1, layout.grid.left());
    EXPECT_EQ(layout.right.left(), layout.grid.right() + 1);
    EXPECT_EQ(layout.foot.top(), layout.grid.bottom() + 1);
    const int before = layout.left.left();
    const int after = 500 - 1 - layout.right.right();
    EXPECT_LE(std::abs(before - after), 1);
}

TEST(ViewLayout, GivesALargeChartTheWholeViewAndScrollsTheRest) {
    const ViewLayout layout = layOut({500, 400}, {1000, 900}, kMargins, 1);
    EXPECT_EQ(layout.grid, QRect(30, 0, 420, 320));
    EXPECT_EQ(layout.scrollRange, QSize(580, 580));
    EXPECT_EQ(layout.foot, QRect(0, 320, 500, 80));
    EXPECT_EQ(layout.origin({580, 0}), QPoint(-550, 0));
}

TEST(ViewLayout, StaysSoundInAViewSmallerThanItsMargins) {
    const ViewLayout layout = layOut({20, 10}, {1000, 900}, kMargins, 1);
    EXPECT_TRUE(layout.grid.isEmpty());
    EXPECT_EQ(layout.scrollRange, QSize(1000, 900));
}

TEST(ViewLayout, StartsTheGridOnWholeLogicalPixels) {
    for (int width = 300; width < 320; ++width) {
        const ViewLayout layout = layOut({width, 301}, {101, 51}, {30, 50, 80}, 2);
        EXPECT_EQ(layout.grid.left() % 2, 0);
        EXPECT_EQ(layout.grid.top() % 2, 0);
    }
}

TEST(ViewLayout, ScrollsNoFurtherThanNeeded) {
    const ViewLayout layout = layOut({500, 400}, {1000, 900}, kMargins, 1);
    const QRect seen(100, 100, 20, 20);
    EXPECT_EQ(scrolledTo(layout, {0, 0}, seen, 10), QPoint(0, 0));
    const QPoint scrolled = scrolledTo(layout, {0, 0}, QRect(600, 100, 20, 20), 10);
    EXPECT_EQ(scrolled, QPoint(600 + 20 + 10 - 420, 0));
    EXPECT_EQ(scrolledTo(layout, {580, 580}, seen, 10), QPoint(90, 90));
    EXPECT_EQ(scrolledTo(layout, {0, 0}, QRect(990, 880, 10, 20), 10), QPoint(580, 580));
}

}  // namespace
}  // namespace lacewright::app
