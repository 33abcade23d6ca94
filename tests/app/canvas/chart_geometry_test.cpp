#include "app/canvas/chart_geometry.h"

#include <gtest/gtest.h>

namespace lacewright::app {
namespace {

constexpr ChartGeometry::Border kBorder{4, 17};

TEST(ChartGeometry, PutsRowOneAtTheBottomAndColumnOneAtTheRight) {
    const ChartGeometry geometry(5, 3, 10, kBorder);
    EXPECT_EQ(geometry.rectOf(Cell{0, 1}), QRect(4 + 40, 17 + 20, 10, 10));
    EXPECT_EQ(geometry.rectOf(Cell{2, 5}), QRect(4, 17, 10, 10));
    EXPECT_EQ(geometry.size(), QSize(58, 51));
}

// Every pixel of small sheets, at every cell size from one pixel up.
TEST(ChartGeometry, FindsForEveryPixelTheCellThatCoversIt) {
    for (const int size : {1, 2, 3, 7, 20}) {
        const ChartGeometry geometry(6, 4, size, kBorder);
        for (int y = -3; y < geometry.size().height() + 3; ++y) {
            for (int x = -3; x < geometry.size().width() + 3; ++x) {
                const QPoint point(x, y);
                const std::optional<Cell> cell = geometry.cellAt(point);
                ASSERT_EQ(cell.has_value(), geometry.cells().contains(point));
                if (cell) {
                    ASSERT_TRUE(geometry.rectOf(*cell).contains(point));
                }
            }
        }
    }
}

TEST(ChartGeometry, GivesTheNearestCellForPointsOutside) {
    const ChartGeometry geometry(6, 4, 7, kBorder);
    for (int y = -30; y < geometry.size().height() + 30; ++y) {
        for (int x = -30; x < geometry.size().width() + 30; ++x) {
            const QRect cells = geometry.cells();
            const QPoint nearest(std::clamp(x, cells.left(), cells.right()),
                                 std::clamp(y, cells.top(), cells.bottom()));
            ASSERT_EQ(geometry.nearestCell({x, y}), geometry.cellAt(nearest));
        }
    }
}

TEST(ChartGeometry, CoversAnAreaExactlyByItsCells) {
    const ChartGeometry geometry(6, 4, 7, kBorder);
    for (int right = 1; right <= 6; ++right) {
        for (int left = right; left <= 6; ++left) {
            for (int first = 0; first < 4; ++first) {
                for (int last = first; last < 4; ++last) {
                    const CellArea area{first, last, right, left};
                    const QRect rect = geometry.rectOf(area);
                    ASSERT_EQ(rect, geometry.rectOf(Cell{first, right}) |
                                        geometry.rectOf(Cell{last, left}));
                    ASSERT_EQ(geometry.cellsIn(rect), area);
                    // One pixel more touches the cells around, where there are any.
                    const CellArea grown{std::max(0, first - 1), std::min(3, last + 1),
                                         std::max(1, right - 1), std::min(6, left + 1)};
                    ASSERT_EQ(geometry.cellsIn(rect.adjusted(-1, -1, 1, 1)), grown);
                }
            }
        }
    }
}

TEST(ChartGeometry, FindsNoCellsInTheBorder) {
    const ChartGeometry geometry(6, 4, 7, kBorder);
    EXPECT_EQ(geometry.cellsIn(QRect(0, 0, 4, 100)), std::nullopt);
    EXPECT_EQ(geometry.cellsIn(QRect()), std::nullopt);
}

TEST(ChartGeometry, NamesTheNearestLineByTheColumnOnItsRight) {
    const ChartGeometry geometry(6, 4, 8, kBorder);
    for (int line = 0; line <= 6; ++line) {
        const int x = geometry.leftOf(line + 1) + geometry.cell();
        for (int shift = -4; shift < 4; ++shift) ASSERT_EQ(geometry.lineNear(x + shift), line);
    }
    EXPECT_EQ(geometry.lineNear(-1000), 6);
    EXPECT_EQ(geometry.lineNear(1000), 0);
}

}  // namespace
}  // namespace lacewright::app
