#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>

#include "app/window/pick_up_dialog.h"
#include "app/window/spread_dialog.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

template <class Widget>
Widget& in(QDialog& dialog, const char* name) {
    return *dialog.findChild<Widget*>(QString::fromLatin1(name));
}

QString recipe(QDialog& dialog) {
    return in<QPlainTextEdit>(dialog, "recipe").toPlainText();
}

void type(QDialog& dialog, const char* field, const char* text) {
    auto& box = in<QAbstractSpinBox>(dialog, field);
    box.setFocus();
    box.selectAll();
    QTest::keyClicks(&box, QString::fromLatin1(text));
}

// 48 stitches and 6 increases: every 8th; 100 and 7: groups of 14 and 15 (worked example of even
// increases by K. Atherley, moderndailyknitting.com, and arithmetic).
TEST(SpreadDialog, FollowsWhatIsTyped) {
    SpreadDialog dialog(48, true, nullptr);
    type(dialog, "after", "54");
    EXPECT_EQ(recipe(dialog), "[k8, m1] 6 times (48 sts become 54 sts)");
    type(dialog, "after", "42");
    EXPECT_EQ(recipe(dialog), "[k6, k2tog] 6 times (48 sts become 42 sts)");
    EXPECT_FALSE(in<QComboBox>(dialog, "increase").isEnabled());
    type(dialog, "after", "54");
    in<QComboBox>(dialog, "increase").setCurrentIndex(1);
    EXPECT_EQ(recipe(dialog), "[k7, kfb] 6 times (48 sts become 54 sts)");
}

TEST(SpreadDialog, TellsWhyThereIsNoRecipe) {
    SpreadDialog dialog(48, false, nullptr);
    type(dialog, "after", "48");
    EXPECT_TRUE(recipe(dialog).isEmpty());
    EXPECT_TRUE(in<QLabel>(dialog, "problem").text().contains("nothing to spread"));
    EXPECT_FALSE(in<QPushButton>(dialog, "copy").isEnabled());
    type(dialog, "after", "20");
    EXPECT_TRUE(in<QLabel>(dialog, "problem").text().contains("at most 24"));
}

// 3 stitches for every 4 rows where row gauge to stitch gauge is 4 to 3: common practice, no
// source.
TEST(PickUpDialog, FollowsTheGaugeAndTheEdge) {
    PickUpDialog dialog({24, 32, {}}, 60, nullptr);
    EXPECT_TRUE(recipe(dialog).startsWith("45 stitches along 60 rows: pick up 2, skip 1, "));
    EXPECT_TRUE(recipe(dialog).endsWith("By heart: 3 stitches for every 4 rows."));
    type(dialog, "gaugeStitches", "16");
    EXPECT_TRUE(recipe(dialog).endsWith("By heart: 1 stitch for every 2 rows."));
}

// 16 rows over 10 cm: 25 cm, or 9.84 in, are 40 rows.
TEST(PickUpDialog, TakesTheEdgeAsALengthInBothUnits) {
    QSettings().clear();
    PickUpDialog dialog({12, 16, {}}, 60, nullptr);
    EXPECT_EQ(in<QAbstractSpinBox>(dialog, "length").text(), "37.5 cm");
    type(dialog, "length", "25");
    EXPECT_EQ(in<QSpinBox>(dialog, "rows").value(), 40);
    EXPECT_TRUE(recipe(dialog).startsWith("30 stitches along 40 rows"));
    in<QComboBox>(dialog, "unit").setCurrentIndex(1);
    EXPECT_EQ(in<QAbstractSpinBox>(dialog, "length").text(), "9.84 in");
    EXPECT_EQ(in<QSpinBox>(dialog, "rows").value(), 40);
    QSettings().clear();
}

TEST(PickUpDialog, AsksForTheGauge) {
    PickUpDialog dialog({}, 60, nullptr);
    EXPECT_TRUE(in<QLabel>(dialog, "problem").text().contains("gauge"));
    EXPECT_FALSE(in<QPushButton>(dialog, "copy").isEnabled());
}

class RecipesInWindow : public WindowTest {
 protected:
    template <class Dialog>
    Dialog& opened() {
        auto* dialog = window_->findChild<Dialog*>();
        if (!dialog) throw std::runtime_error("no dialog");
        return *dialog;
    }
};

// Eight knit stitches; keyboard only: the number wanted, then Enter copies, Escape closes.
TEST_F(RecipesInWindow, SpreadBeginsWithTheCursorsRowAndIsCopiedByKey) {
    key(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    auto& dialog = opened<SpreadDialog>();
    EXPECT_EQ(in<QSpinBox>(dialog, "before").value(), 8);
    type(dialog, "after", "10");
    QTest::keyClick(&in<QSpinBox>(dialog, "after"), Qt::Key_Return);
    EXPECT_EQ(QGuiApplication::clipboard()->text(), "k2, m1, k4, m1, k2 (8 sts become 10 sts)");
    EXPECT_TRUE(dialog.isVisible());
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(document().undoStack().count(), 0);
}

TEST_F(RecipesInWindow, PickingUpTakesTheSelectedRows) {
    view().select({1, 4, 1, 8});
    key(Qt::Key_U, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(in<QSpinBox>(opened<PickUpDialog>(), "rows").value(), 4);
}

}  // namespace
}  // namespace lacewright::app
