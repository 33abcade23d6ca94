#include "app/window/grading_dialog.h"

#include <QCheckBox>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QToolButton>

#include "app/window/length_field.h"
#include "app/window/size_dialog.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

template <class Widget>
Widget& in(QDialog& dialog, const char* name) {
    return *dialog.findChild<Widget*>(QString::fromLatin1(name));
}

Chart graded() {
    Chart chart = blankChart(20, 6);
    chart.grading.rising = true;
    chart.grading.pieces = 2;
    chart.grading.edgeStitches = 1;
    chart.grading.leastEase = -2.0;
    chart.grading.shoulders = {{5, 1, 4, {{"from", "elsewhere"}}}, {5, 17, 20, {}}};
    return chart;
}

TEST(GradingDialog, GivesBackWhatItWasGiven) {
    QSettings().clear();
    for (const Chart& chart : {graded(), blankChart(8, 4)}) {
        GradingDialog dialog(chart, {}, nullptr);
        EXPECT_EQ(dialog.grading(), chart.grading);
        EXPECT_TRUE(in<QPushButton>(dialog, "accept").isEnabled());
    }
}

TEST(GradingDialog, TakesRulesEaseAndShoulders) {
    QSettings().clear();
    const Chart chart = blankChart(20, 6);
    GradingDialog dialog(chart, {5, 5, 3, 7}, nullptr);
    in<QCheckBox>(dialog, "halved").setChecked(true);
    in<QCheckBox>(dialog, "knows-mostEase").setChecked(true);
    in<LengthField>(dialog, "mostEase").setValue(4);
    in<QToolButton>(dialog, "addShoulder").click();
    const Grading grading = dialog.grading();
    EXPECT_TRUE(grading.halved);
    EXPECT_EQ(grading.leastEase, std::nullopt);
    EXPECT_EQ(grading.mostEase, 4.0);
    EXPECT_EQ(grading.shoulders, (std::vector<Shoulder>{{5, 3, 7, {}}}));
    in<QToolButton>(dialog, "removeShoulder").click();
    EXPECT_TRUE(dialog.grading().shoulders.empty());
}

TEST(GradingDialog, RefusesWhatTheChartWould) {
    const Chart chart = graded();
    GradingDialog dialog(chart, {}, nullptr);
    auto& table = in<QTableWidget>(dialog, "shoulders");
    for (const auto& [column, text] :
         {std::pair(0, "9"), std::pair(0, "six"), std::pair(2, "21")}) {
        const QString before = table.item(0, column)->text();
        table.item(0, column)->setText(QString::fromLatin1(text));
        EXPECT_FALSE(in<QPushButton>(dialog, "accept").isEnabled()) << text;
        table.item(0, column)->setText(before);
        EXPECT_TRUE(in<QPushButton>(dialog, "accept").isEnabled()) << text;
    }
    in<QCheckBox>(dialog, "knows-mostEase").setChecked(true);
    in<LengthField>(dialog, "mostEase").setValue(-5);
    EXPECT_FALSE(in<QPushButton>(dialog, "accept").isEnabled()) << "least is more than most";
}

TEST(SizeDialog, TakesTheBodyAndTheShoulder) {
    QSettings().clear();
    const Chart chart = blankChart(20, 6);
    Size now;
    now.name = "M";
    now.reach = {1, 20};
    now.shoulder = 12;
    SizeDialog dialog(chart, now, nullptr);
    EXPECT_EQ(dialog.size(), now);
    in<QCheckBox>(dialog, "knows-body").setChecked(true);
    in<LengthField>(dialog, "body").setValue(86.5);
    in<QSpinBox>(dialog, "shoulder").setValue(14);
    EXPECT_EQ(dialog.size().body, 86.5);
    EXPECT_EQ(dialog.size().shoulder, 14);
}

TEST_F(WindowTest, RulesForTheSizesAreOneStep) {
    prompts_.gradings = [](Grading grading) {
        grading.rising = true;
        return std::optional(grading);
    };
    key(Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(chart().grading.rising);
    EXPECT_EQ(document().undoStack().count(), 1);
    trigger(CommandId::Undo);
    EXPECT_FALSE(chart().grading.rising);
}

}  // namespace
}  // namespace lacewright::app
