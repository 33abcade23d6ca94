#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include "app/window/new_chart_dialog.h"
#include "app/window/properties_dialog.h"
#include "app/window/repeat_dialogs.h"
#include "app/window/size_dialog.h"
#include "app/window/stitch_dialog.h"

namespace lacewright::app {
namespace {

template <class Widget>
Widget& in(QDialog& dialog, const char* name) {
    return *dialog.findChild<Widget*>(QString::fromLatin1(name));
}

void type(QDialog& dialog, const char* field, const QString& text) {
    auto& edit = in<QLineEdit>(dialog, field);
    edit.clear();
    QTest::keyClicks(&edit, text);
}

bool accepts(QDialog& dialog) {
    return in<QPushButton>(dialog, "accept").isEnabled();
}

TEST(NewChartDialog, MakesTheChartThatWasAskedFor) {
    NewChartDialog dialog(nullptr);
    type(dialog, "name", "Fern");
    in<QSpinBox>(dialog, "width").setValue(20);
    in<QSpinBox>(dialog, "rows").setValue(8);
    in<QComboBox>(dialog, "worked").setCurrentIndex(1);
    in<QComboBox>(dialog, "castOn").setCurrentIndex(2);
    in<QSpinBox>(dialog, "castOnMultiple").setValue(6);
    in<QSpinBox>(dialog, "castOnPlus").setValue(2);
    const Chart chart = dialog.chart();
    EXPECT_EQ(chart.name, "Fern");
    EXPECT_EQ(chart.width, 20);
    EXPECT_EQ(chart.height(), 8);
    EXPECT_EQ(chart.worked, Worked::InTheRound);
    EXPECT_EQ(chart.castOn, (CastOn{6, 2, {}}));
}

TEST(NewChartDialog, RefusesMoreCellsThanAChartMayHave) {
    NewChartDialog dialog(nullptr);
    EXPECT_TRUE(accepts(dialog));
    in<QSpinBox>(dialog, "width").setValue(kMaxWidth);
    in<QSpinBox>(dialog, "rows").setValue(kMaxRows);
    EXPECT_FALSE(accepts(dialog));
}

TEST(PropertiesDialog, GivesBackWhatItWasGiven) {
    ChartProperties now;
    now.name = "Fern";
    now.notes = "two\nlines";
    now.source = "a book";
    now.firstSide = Side::Wrong;
    now.uncharted = Uncharted::Purl;
    now.castOn = CastOn{6, 4, {{"edge", "\"long tail\""}}};
    // Over 4 in: no short decimal, and still the same when nobody types.
    now.gauge = {22 / 1.016, 30.5, {{"needle", "4"}}};
    EXPECT_EQ(PropertiesDialog(now, nullptr).properties(), now);
    now.castOn.reset();
    EXPECT_EQ(PropertiesDialog(now, nullptr).properties(), now);
}

TEST(PropertiesDialog, LetsRoundsBeginOnTheRightSideOnly) {
    ChartProperties now;
    now.firstSide = Side::Wrong;
    PropertiesDialog dialog(now, nullptr);
    in<QComboBox>(dialog, "worked").setCurrentIndex(1);
    EXPECT_EQ(dialog.properties().firstSide, Side::Right);
    EXPECT_FALSE(in<QComboBox>(dialog, "firstSide").isEnabled());
}

TEST(RepeatDialog, AsksForRowsByTheirNumbers) {
    Chart chart = blankChart(10, 6);
    chart.uncharted = Uncharted::Purl;
    RepeatPlan plan;
    plan.repeat.name = "A";
    plan.repeat.right = 2;
    plan.repeat.left = 5;
    plan.repeat.firstRow = 1;
    plan.repeat.lastRow = 4;
    RepeatDialog dialog(chart, plan, nullptr);
    EXPECT_EQ(in<QSpinBox>(dialog, "firstRow").value(), 3);
    EXPECT_EQ(dialog.plan(), plan);
    in<QSpinBox>(dialog, "firstRow").setValue(4);
    EXPECT_FALSE(accepts(dialog));
    in<QSpinBox>(dialog, "firstRow").setValue(5);
    EXPECT_TRUE(accepts(dialog));
    in<QSpinBox>(dialog, "left").setValue(1);
    EXPECT_FALSE(accepts(dialog));
}

TEST(JogDialog, GivesBothShifts) {
    JogDialog dialog("row 5", {1, -1, {}}, nullptr);
    EXPECT_EQ(dialog.jog(), (Jog{1, -1, {}}));
    in<QSpinBox>(dialog, "left").setValue(2);
    EXPECT_EQ(dialog.jog(), (Jog{1, 2, {}}));
}

TEST(SizeDialog, AsksHowOftenEachRepeatIsWorked) {
    Chart chart = blankChart(10, 2);
    Repeat repeat;
    repeat.name = "A";
    repeat.lastRow = 1;
    chart.repeats = {repeat};
    SizeDialog dialog(chart, {}, nullptr);
    EXPECT_FALSE(accepts(dialog));
    type(dialog, "name", "M");
    in<QSpinBox>(dialog, "end").setValue(10);
    in<QSpinBox>(dialog, "times-A").setValue(6);
    EXPECT_TRUE(accepts(dialog));
    const Size size = dialog.size();
    EXPECT_EQ(size.name, "M");
    EXPECT_EQ(size.reach, (Reach{1, 10}));
    EXPECT_EQ(size.times.at("A"), 6);
    EXPECT_FALSE(size.stitches.has_value());
}

TEST(StitchDialog, RefusesANameThatIsTaken) {
    const Chart chart = blankChart(4, 2);
    StitchDialog dialog(chart, nullptr);
    EXPECT_FALSE(accepts(dialog));
    type(dialog, "name", "k2tog");
    EXPECT_FALSE(accepts(dialog));
    type(dialog, "name", "Nupp 5");
    in<QSpinBox>(dialog, "takes").setValue(5);
    in<QSpinBox>(dialog, "span").setValue(2);
    EXPECT_TRUE(accepts(dialog));
    const Stitch stitch = dialog.stitch();
    EXPECT_EQ(stitch.id, "nupp-5");
    EXPECT_EQ(stitch.takes, 5);
    EXPECT_EQ(stitch.kind, StitchKind::Decrease);
    EXPECT_FALSE(stitch.glyph.empty());
    EXPECT_FALSE(stitchProblem(stitch).has_value());
}

// Typing goes into the first field; Tab reaches the buttons last.
TEST(FormDialog, BeginsWithItsFirstField) {
    const Chart chart = blankChart(8, 4);
    Size size;
    size.name = "M";
    size.reach = {1, 8};
    SizeDialog dialog(chart, size, nullptr);
    dialog.show();
    dialog.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    auto& name = in<QLineEdit>(dialog, "name");
    EXPECT_EQ(dialog.focusWidget(), &name);
    QTest::keyClicks(dialog.focusWidget(), "L");
    EXPECT_EQ(name.text(), "L") << "the name was selected";
    int steps = 0;
    while (!qobject_cast<QPushButton*>(dialog.focusWidget()) && steps < 30) {
        QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab);
        ++steps;
    }
    EXPECT_EQ(dialog.focusWidget(), &in<QPushButton>(dialog, "accept"));
    EXPECT_GE(steps, 5) << "start, end, and three boxes to tick";
}

}  // namespace
}  // namespace lacewright::app
