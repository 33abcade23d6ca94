#include "app/window/plan_dialog.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <set>

#include "app/window/plan_fields.h"
#include "app/window/starters.h"
#include "core/plan/gauge.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

Chart starter(const char* file) {
    for (const Starter& one : starters()) {
        if (QString(one.file) == file) return *chartOf(one);
    }
    throw std::runtime_error(file);
}

// Every stitch of a row is knit, one repeat of 4 between edges of 2: 4n + 4 stitches.
Chart plainChart() {
    Chart chart = blankChart(8, 4);
    Repeat repeat;
    repeat.right = 3;
    repeat.left = 6;
    repeat.lastRow = 3;
    return *addRepeat(chart, repeat);
}

class PlanDialogTest : public testing::Test {
 protected:
    void open(Chart chart) {
        QSettings().clear();
        chart_ = std::move(chart);
        dialog_ = std::make_unique<PlanDialog>(chart_, nullptr);
        dialog_->show();
        dialog_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(dialog_.get()));
    }
    template <class Widget>
    Widget& in(const char* name) {
        auto* widget = dialog_->findChild<Widget*>(QString::fromLatin1(name));
        if (!widget) throw std::runtime_error(std::string("no widget ") + name);
        return *widget;
    }
    void type(const char* field, const char* text) {
        auto& box = in<QAbstractSpinBox>(field);
        box.setFocus();
        box.selectAll();
        QTest::keyClicks(&box, QString::fromLatin1(text));
    }
    QString cell(int row, PlanModel::Column column) {
        return in<QTableView>("planTable").model()->index(row, column).data().toString();
    }
    bool comesTo(int row, PlanModel::Column column, const char* text) {
        return QTest::qWaitFor([&] { return cell(row, column) == QString::fromUtf8(text); }, 3000);
    }
    bool usable() { return in<QPushButton>("accept").isEnabled(); }
    QString problem() {
        auto& label = in<QLabel>("problem");
        return label.isVisible() ? label.text() : QString();
    }

    Chart chart_;
    std::unique_ptr<PlanDialog> dialog_;
};

TEST_F(PlanDialogTest, AsksForTheGaugeBeforeItPlans) {
    open(plainChart());
    EXPECT_FALSE(usable());
    EXPECT_TRUE(problem().contains("gauge"));
    EXPECT_EQ(cell(0, PlanModel::kWidth), QStringLiteral("–"));
    type("gaugeStitches", "20");
    type("gaugeRows", "28");
    ASSERT_TRUE(QTest::qWaitFor([this] { return usable(); }, 3000));
    EXPECT_TRUE(problem().isEmpty());
}

// Women's bust XS is 71 to 76 cm in the table of the trade (resources/body_sizes.json); half of
// that with 5 cm of ease is 39.25 cm, 78.5 stitches at 20 over 10 cm.
TEST_F(PlanDialogTest, PlansAHalfWithEaseFromTheBust) {
    Chart chart = plainChart();
    chart.gauge = {20, 28, {}};
    open(chart);
    EXPECT_TRUE(in<QComboBox>("widthsFrom").currentText().endsWith("bust"));
    type("ease", "5");
    in<QComboBox>("part").setFocus();
    QTest::keyClick(&in<QComboBox>("part"), Qt::Key_Down);
    ASSERT_TRUE(comesTo(0, PlanModel::kWanted, "39.3"));
    const int stitches = cell(0, PlanModel::kStitches).toInt();
    EXPECT_LE(std::abs(stitches - 78.5), 0.5);
    EXPECT_EQ(cell(0, PlanModel::kWidth), QString::fromStdString(tenths(stitches / 2.0)));
    EXPECT_EQ(cell(8, PlanModel::kName), "5X");
}

TEST_F(PlanDialogTest, CountsEdgeStitchesIntoTheWidth) {
    Chart chart = plainChart();
    chart.gauge = {20, 28, {}};
    open(chart);
    const int before = cell(3, PlanModel::kStitches).toInt();
    type("edgeStitches", "3");
    EXPECT_TRUE(comesTo(3, PlanModel::kStitches, std::to_string(before - 6).c_str()));
}

TEST_F(PlanDialogTest, KeepsGaugeAndLengthsExactInEveryUnit) {
    Chart chart = plainChart();
    chart.gauge = {23, 31, {}};
    open(chart);
    auto& over = in<QComboBox>("gaugeOver");
    QTest::keyClick(&over, Qt::Key_Down);
    EXPECT_EQ(in<QDoubleSpinBox>("gaugeStitches").text(), "23.37 sts");
    QTest::keyClick(&in<QComboBox>("unit"), Qt::Key_Down);
    EXPECT_TRUE(comesTo(0, PlanModel::kWanted, "28.9"));
    QTest::keyClick(&over, Qt::Key_Up);
    EXPECT_EQ(in<QDoubleSpinBox>("gaugeStitches").text(), "23 sts");
    in<QPushButton>("accept").click();
    EXPECT_EQ(dialog_->plan().gauge, (Gauge{23, 31, {}}));
}

TEST_F(PlanDialogTest, LeavesOutSizesWhoseTickIsTakenOffByKey) {
    Chart chart = plainChart();
    chart.gauge = {20, 28, {}};
    open(chart);
    auto& table = in<QTableView>("planTable");
    table.setFocus();
    table.setCurrentIndex(table.model()->index(1, PlanModel::kName));
    QTest::keyClick(&table, Qt::Key_Space);
    EXPECT_EQ(cell(1, PlanModel::kWidth), QStringLiteral("–"));
    in<QPushButton>("accept").click();
    ASSERT_EQ(dialog_->plan().sizes.size(), 8U);
    EXPECT_EQ(dialog_->plan().sizes[1].wanted.name, "M");
}

TEST_F(PlanDialogTest, TakesAWidthTypedInTheTable) {
    Chart chart = plainChart();
    chart.gauge = {20, 28, {}};
    open(chart);
    auto& table = in<QTableView>("planTable");
    table.setCurrentIndex(table.model()->index(0, PlanModel::kWanted));
    table.edit(table.currentIndex());
    QWidget* editor = QApplication::focusWidget();
    QTest::keyClick(editor, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(editor, "62");
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_TRUE(comesTo(0, PlanModel::kWidth, "62.0"));
    EXPECT_EQ(cell(0, PlanModel::kStitches), "124");
}

TEST_F(PlanDialogTest, TellsInPlaceWhenNothingFits) {
    Chart chart = plainChart();
    chart.gauge = {20, 28, {}};
    open(chart);
    type("multiple", "4");
    type("remainder", "9");
    ASSERT_TRUE(QTest::qWaitFor([this] { return !usable(); }, 3000));
    EXPECT_TRUE(problem().contains("multiple"));
    type("remainder", "2");
    ASSERT_TRUE(QTest::qWaitFor([this] { return usable(); }, 3000));
    for (int row = 0; row < 9; ++row) {
        EXPECT_EQ(cell(row, PlanModel::kStitches).toInt() % 4, 2);
    }
    chart = plainChart();
    chart.gauge = {20, 28, {}};
    chart = *fillCells(chart, {1, 1, 1, 8}, *chart.stitches->find("k2tog"));
    open(chart);
    EXPECT_FALSE(usable());
    EXPECT_TRUE(problem().contains("fit"));
}

TEST_F(PlanDialogTest, PlansTheLengthInWholeRepeats) {
    open(starter("leaf-scarf"));
    EXPECT_TRUE(in<QTableView>("planTable").isColumnHidden(PlanModel::kRows));
    type("length", "40");
    ASSERT_TRUE(QTest::qWaitFor(
        [this] { return !in<QTableView>("planTable").isColumnHidden(PlanModel::kRows); }, 3000));
    const LengthPlan length = planLength(chart_, chart_.gauge.rows, 40);
    EXPECT_EQ(cell(0, PlanModel::kRows).toInt(), length.rows);
    EXPECT_TRUE(in<QLabel>("about").text().contains(QString("%1 rows").arg(length.rows)));
}

TEST_F(PlanDialogTest, StartsFromTheSizesOfTheChart) {
    open(starter("leaf-scarf"));
    ASSERT_EQ(cell(0, PlanModel::kName), "Narrow");
    EXPECT_EQ(cell(0, PlanModel::kWanted), cell(0, PlanModel::kWidth));
    EXPECT_EQ(cell(0, PlanModel::kStitches), "35");
}

TEST_F(PlanDialogTest, NamesEveryFieldForTheKeyboardAndForScreenReaders) {
    open(plainChart());
    std::set<QWidget*> labelled;
    for (const QLabel* label : dialog_->findChildren<QLabel*>()) labelled.insert(label->buddy());
    const auto fields =
        in<PlanFields>("fields").findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly);
    int asked = 0;
    for (QWidget* field : fields) {
        if (qobject_cast<QLabel*>(field)) continue;
        ++asked;
        EXPECT_TRUE(labelled.contains(field)) << field->objectName().toStdString();
        EXPECT_TRUE(field->focusPolicy() & Qt::TabFocus) << field->objectName().toStdString();
    }
    EXPECT_EQ(asked, 12);
}

TEST_F(WindowTest, WritesAPlanIntoTheChartInOneStep) {
    window_->showChart(starter("leaf-scarf"), {});
    const Chart before = chart();
    prompts_.plans = [](const Chart& now) -> std::optional<Plan> {
        PlanRequest request;
        request.gauge = now.gauge;
        request.sizes = {{"Small", 40}, {"Large", 60}};
        return *planSizes(now, request);
    };
    trigger(CommandId::PlanSizes);
    ASSERT_EQ(chart().sizes.size(), 2U);
    EXPECT_EQ(chart().sizes[1].name, "Large");
    EXPECT_EQ(document().undoStack().count(), 1);
    trigger(CommandId::Undo);
    EXPECT_TRUE(chart() == before);
    prompts_.plans = [](const Chart&) { return std::optional<Plan>(); };
    trigger(CommandId::PlanSizes);
    EXPECT_TRUE(chart() == before);
}

// Ground, a motif of three that stands once, ground: 6 + 2n stitches, 40 at n = 17.
TEST_F(PlanDialogTest, HoldsARepeatWhileOthersArePlanned) {
    Chart chart = blankChart(9, 2);
    for (const auto& [right, left] : {std::pair(2, 2), {4, 6}, {8, 8}}) {
        Repeat repeat;
        repeat.right = right;
        repeat.left = left;
        repeat.lastRow = 1;
        chart = *addRepeat(chart, repeat);
    }
    chart.gauge = {10, 10, {}};
    chart.grading.edgeStitches = 1;
    chart.grading.pieces = 2;
    open(chart);
    EXPECT_EQ(in<QSpinBox>("edgeStitches").value(), 1) << "what the chart says already";
    EXPECT_EQ(in<QComboBox>("part").currentData().toInt(), 2);
    type("held-B", "1");
    ASSERT_TRUE(QTest::qWaitFor([this] { return usable(); }, 3000));
    QTest::qWait(200);
    const Plan plan = dialog_->plan();
    EXPECT_EQ(plan.shares[1], (RepeatShare{1, 0}));
    const Result<Chart> used = usePlan(chart_, plan);
    ASSERT_TRUE(used);
    for (const Size& size : used->sizes) EXPECT_EQ(size.times.at("B"), 1);
}

}  // namespace
}  // namespace lacewright::app
