#include "app/window/edge_controller.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

#include "app/window/point_dialog.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

// Pairs stand in columns 3 and 4 of row 2: line 3 parts them.
class EdgeTest : public WindowTest {
 protected:
    void SetUp() override {
        WindowTest::SetUp();
        Chart chart = blankChart(8, 6);
        chart = *drawStitch(chart, 1, 3, *chart.stitches->find("yo"));
        chart = *drawStitch(chart, 1, 4, *chart.stitches->find("k2tog"));
        for (const char* name : {"S", "M"}) {
            Size size;
            size.name = name;
            size.reach = {2, 7};
            chart = *addSize(chart, size);
        }
        window_->showChart(chart, {});
        chartView().setFocus();
    }
    Reach reach() { return chart().sizes[0].reach; }
};

TEST_F(EdgeTest, LooksAtSizesByKey) {
    EXPECT_FALSE(action(CommandId::StartLeft).isEnabled());
    key(Qt::Key_F8);
    EXPECT_EQ(view().size(), "S");
    key(Qt::Key_F8);
    EXPECT_EQ(view().size(), "M");
    key(Qt::Key_F8);
    EXPECT_EQ(view().size(), QString());
    key(Qt::Key_F8, Qt::ShiftModifier);
    EXPECT_EQ(view().size(), "M");
    EXPECT_EQ(find<QComboBox>("sizeChooser").currentText(), "M");
}

TEST_F(EdgeTest, MovesStartAndEndByKeyPastWhatWouldBeParted) {
    view().chooseSize("S");
    key(Qt::Key_F6);
    EXPECT_EQ(reach(), (Reach{3, 7}));
    key(Qt::Key_F6);
    EXPECT_EQ(reach(), (Reach{5, 7})) << "column 4 would part the pair";
    key(Qt::Key_F6, Qt::ShiftModifier);
    EXPECT_EQ(reach(), (Reach{3, 7}));
    key(Qt::Key_F7);
    EXPECT_EQ(reach(), (Reach{3, 8}));
    key(Qt::Key_F7, Qt::ShiftModifier);
    EXPECT_EQ(reach(), (Reach{3, 7}));
    EXPECT_EQ(document().undoStack().count(), 5);
    EXPECT_EQ(chart().sizes[1].reach, (Reach{2, 7}));
}

TEST_F(EdgeTest, TellsWhenThereIsNoFurtherColumn) {
    view().chooseSize("S");
    QSignalSpy refused(&document(), &Document::refused);
    key(Qt::Key_F7);
    EXPECT_EQ(refused.count(), 0);
    key(Qt::Key_F7);
    ASSERT_EQ(refused.count(), 1);
    EXPECT_TRUE(refused[0][0].toString().contains("further"));
    EXPECT_EQ(reach(), (Reach{2, 8}));
}

TEST_F(EdgeTest, BeginsAndEndsAtTheCursorWhateverThatParts) {
    view().chooseSize("S");
    view().moveCursor({0, 4});
    key(Qt::Key_F6, Qt::ControlModifier);
    EXPECT_EQ(reach(), (Reach{4, 7}));
    view().moveCursor({0, 5});
    key(Qt::Key_F7, Qt::ControlModifier);
    EXPECT_EQ(reach(), (Reach{4, 5}));
}

TEST_F(EdgeTest, RenamesThePointAtTheCursor) {
    view().moveCursor({0, 1});
    EXPECT_FALSE(action(CommandId::RenamePoint).isEnabled());
    view().moveCursor({0, 2});
    prompts_.pointNames = [](const QString& now) {
        EXPECT_EQ(now, "A");
        return std::optional<QString>("armhole");
    };
    key(Qt::Key_F2);
    EXPECT_NE(chart().findPoint("armhole"), nullptr);
    EXPECT_EQ(document().undoStack().count(), 1);
}

TEST_F(EdgeTest, RefusesANameThatAnotherPointHas) {
    PointDialog dialog(chart(), "A", nullptr);
    auto& name = *dialog.findChild<QLineEdit*>("name");
    auto& accept = *dialog.findChild<QPushButton*>("accept");
    EXPECT_TRUE(accept.isEnabled());
    name.clear();
    EXPECT_FALSE(accept.isEnabled());
    QTest::keyClicks(&name, "B");
    EXPECT_FALSE(accept.isEnabled());
    QTest::keyClicks(&name, "2");
    EXPECT_TRUE(accept.isEnabled());
    EXPECT_EQ(dialog.name(), "B2");
}

// Rows that are selected are shaped, the others stay; the line under the chart follows the cursor.
TEST_F(EdgeTest, ShapesSelectedRowsByKey) {
    view().chooseSize("S");
    view().select({2, 3, 1, 8});
    key(Qt::Key_F6);
    EXPECT_EQ(reach(), (Reach{2, 7}));
    const Size& size = chart().sizes[0];
    EXPECT_EQ(size.on(1), (Reach{2, 7}));
    EXPECT_EQ(size.on(2), (Reach{3, 7}));
    EXPECT_EQ(size.on(3), (Reach{3, 7}));
    EXPECT_EQ(size.on(4), (Reach{2, 7}));
    EXPECT_EQ(find<QLabel>("sizeLine").text(),
              "Size S. On rows 3\u20134 begin at column 3, end at B: 5 sts.");
    key(Qt::Key_F6, Qt::ShiftModifier);
    EXPECT_TRUE(chart().sizes[0].changes.empty());
}

TEST_F(EdgeTest, TellsUnderTheChartHowTheSizeIsWorked) {
    EXPECT_TRUE(find<QLabel>("sizeLine").text().contains("F8"));
    key(Qt::Key_F8);
    EXPECT_EQ(find<QLabel>("sizeLine").text(), "Size S: begin at A, end at B: 6 sts.");
    window_->showChart(blankChart(4, 4), {});
    EXPECT_FALSE(find<QLabel>("sizeLine").isVisible());
}

}  // namespace
}  // namespace lacewright::app
