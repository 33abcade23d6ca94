#include <QDockWidget>
#include <QLabel>

#include "app/panels/worked_row_strip.h"
#include "app/window/starters.h"
#include "tests/app/window/window_fixture.h"
#include "tests/support/charts.h"

namespace lacewright::app {
namespace {

// A size of 11 stitches: 1 before the repeat of columns 2..5, twice that, 2 after it.
Chart unrolledChart() {
    Chart chart = test::chartOf({"k p k2tog k yo k k", "k*7"});
    test::withRepeat(chart, "A", 2, 5);
    test::withSize(chart, "M", 1, 7, 2);
    return chart;
}

std::vector<std::string> stitchesOf(const Chart& chart, const WorkedRowLayout& row) {
    std::vector<std::string> all;
    for (auto stitch = row.at(0); stitch; stitch = row.at(stitch->place + stitch->span)) {
        all.push_back((*chart.stitches)[row.stitchOf(*stitch)].id);
    }
    return all;
}

TEST(WorkedRowLayout, UnrollsTheRepeatsOfASizeFromTheRight) {
    const Chart chart = unrolledChart();
    const WorkedRowLayout row(chart, 0, &chart.sizes[0]);
    EXPECT_EQ(row.cells(), 11);
    const std::vector<std::string> worked = {"k",  "k", "yo",    "k", "k2tog", "k",
                                             "yo", "k", "k2tog", "p", "k"};
    EXPECT_EQ(stitchesOf(chart, row), worked);
    EXPECT_EQ(row.columnOf(*row.at(6)), 3);
    EXPECT_EQ(row.at(6)->pass, 1);
    EXPECT_FALSE(row.at(11).has_value());
    EXPECT_FALSE(row.at(-1).has_value());
}

TEST(WorkedRowLayout, FindsTheNearestStitchOfAColumn) {
    const Chart chart = unrolledChart();
    const WorkedRowLayout row(chart, 0, &chart.sizes[0]);
    EXPECT_EQ(row.ofColumn(3, 0)->place, 2);
    EXPECT_EQ(row.ofColumn(3, 7)->place, 6);
    EXPECT_EQ(row.ofColumn(7, 0)->place, 10);
    const WorkedRowLayout narrow(chart, 0, nullptr);
    EXPECT_EQ(narrow.cells(), 7);
}

TEST(WorkedRowLayout, ShowsAWrongSideRowAsSeenFromTheRightSide) {
    Chart chart = unrolledChart();
    chart.firstSide = Side::Wrong;
    const WorkedRowLayout row(chart, 0, &chart.sizes[0]);
    EXPECT_EQ(row.columnOf(*row.at(0)), 1);
    EXPECT_EQ(row.columnOf(*row.at(10)), 7);
}

class WorkedRowTest : public WindowTest {
 protected:
    WorkedRowStrip& strip() { return find<WorkedRowStrip>("workedRow"); }
    QString about() { return find<QLabel>("workedRowAbout").text(); }
    void open() {
        window_->showChart(unrolledChart(), {});
        QTest::keyClick(&chartView(), Qt::Key_U, Qt::ControlModifier);
        ASSERT_TRUE(strip().isVisible());
    }
};

TEST_F(WorkedRowTest, ComesAndGoesByKey) {
    EXPECT_FALSE(strip().isVisible());
    open();
    QTest::keyClick(&chartView(), Qt::Key_U, Qt::ControlModifier);
    EXPECT_FALSE(strip().isVisible());
}

TEST_F(WorkedRowTest, FollowsCursorSizeAndChart) {
    open();
    EXPECT_EQ(strip().row().cells(), 7);
    EXPECT_TRUE(about().contains("every repeat shown once"));
    view().chooseSize("M");
    EXPECT_EQ(strip().row().cells(), 11);
    EXPECT_TRUE(about().contains("size M"));
    EXPECT_TRUE(about().contains("takes 11 and makes as many")) << about().toStdString();
    view().moveCursor({1, 3});
    EXPECT_EQ(stitchesOf(chart(), strip().row()), std::vector<std::string>(11, "k"));
    EXPECT_EQ(strip().row().columnOf(*strip().current()), 3);
    draw(1, 3, "p");
    EXPECT_EQ(stitchesOf(chart(), strip().row())[2], "p");
    EXPECT_EQ(stitchesOf(chart(), strip().row())[6], "p");
}

TEST_F(WorkedRowTest, WalksThroughEveryPassByKey) {
    open();
    view().chooseSize("M");
    view().moveCursor({0, 1});
    strip().setFocus();
    std::vector<int> columns;
    for (int i = 0; i < 10; ++i) {
        QTest::keyClick(&strip(), Qt::Key_Left);
        columns.push_back(view().cursor().column);
    }
    EXPECT_EQ(columns, (std::vector<int>{2, 3, 4, 5, 2, 3, 4, 5, 6, 7}));
    QTest::keyClick(&strip(), Qt::Key_End);
    EXPECT_EQ(view().cursor(), (Cell{0, 1}));
    EXPECT_FALSE(strip().accessibleDescription().isEmpty());
}

TEST_F(WorkedRowTest, LeadsFromAClickToTheCell) {
    open();
    view().chooseSize("M");
    const auto stitch = strip().row().at(8);
    QTest::mouseClick(strip().viewport(), Qt::LeftButton, {}, strip().rectOf(*stitch).center());
    EXPECT_EQ(view().cursor(), (Cell{0, 5}));
    EXPECT_EQ(strip().current()->place, 8);
}

}  // namespace
}  // namespace lacewright::app
