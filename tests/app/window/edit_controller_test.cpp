#include <QClipboard>

#include "app/document/cell_text.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

using EditTest = WindowTest;

TEST_F(EditTest, NamesTheStepThatUndoTakesBack) {
    EXPECT_FALSE(action(CommandId::Undo).isEnabled());
    view().select({0, 1, 1, 3});
    trigger(CommandId::InsertRowsAbove);
    EXPECT_EQ(action(CommandId::Undo).text(), "&Undo: Insert 2 rows");
    EXPECT_EQ(chart().height(), 8);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(chart().height(), 6);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(chart().height(), 8);
}

TEST_F(EditTest, CopiesCellsAndPastesThemAtTheSelection) {
    draw(0, 1, "yo");
    draw(0, 2, "k2tog");
    view().select({0, 0, 1, 2});
    trigger(CommandId::Copy);
    EXPECT_EQ(QApplication::clipboard()->text(), "k2tog yo");
    view().moveCursor({3, 4});
    trigger(CommandId::Paste);
    EXPECT_EQ(stitchAt(3, 4), "yo");
    EXPECT_EQ(stitchAt(3, 5), "k2tog");
    EXPECT_EQ(view().selection(), (CellArea{3, 3, 4, 5}));
}

TEST_F(EditTest, CutLeavesKnitBehind) {
    draw(2, 2, "yo");
    view().select({2, 2, 2, 2});
    trigger(CommandId::Cut);
    EXPECT_EQ(stitchAt(2, 2), "k");
    view().moveCursor({0, 1});
    trigger(CommandId::Paste);
    EXPECT_EQ(stitchAt(0, 1), "yo");
}

TEST_F(EditTest, PastesTypedStitchesAndRefusesOtherText) {
    QApplication::clipboard()->setText("ssk yo\nk yo");
    view().moveCursor({0, 1});
    trigger(CommandId::Paste);
    EXPECT_EQ(stitchAt(1, 2), "ssk");
    EXPECT_EQ(stitchAt(0, 2), "k");
    const int steps = document().undoStack().count();
    QApplication::clipboard()->setText("good morning");
    trigger(CommandId::Paste);
    EXPECT_EQ(document().undoStack().count(), steps);
}

TEST_F(EditTest, MirrorsTheSelection) {
    draw(0, 1, "k2tog");
    draw(0, 2, "yo");
    view().select({0, 0, 1, 4});
    key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(stitchAt(0, 4), "ssk");
    EXPECT_EQ(stitchAt(0, 3), "yo");
    EXPECT_EQ(stitchAt(0, 1), "k");
}

TEST_F(EditTest, SelectsAllAndClears) {
    draw(5, 8, "yo");
    key(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(view().selection(), (CellArea{0, 5, 1, 8}));
    trigger(CommandId::Clear);
    EXPECT_EQ(stitchAt(5, 8), "k");
}

TEST_F(EditTest, WidensTheSelectionToRowsAndColumns) {
    view().select({1, 2, 3, 4});
    trigger(CommandId::SelectRows);
    EXPECT_EQ(view().selection(), (CellArea{1, 2, 1, 8}));
    view().select({1, 2, 3, 4});
    trigger(CommandId::SelectColumns);
    EXPECT_EQ(view().selection(), (CellArea{0, 5, 3, 4}));
}

TEST_F(EditTest, InsertsAndRemovesColumns) {
    draw(0, 3, "yo");
    view().select({0, 0, 3, 4});
    trigger(CommandId::InsertColumnsRight);
    EXPECT_EQ(chart().width, 10);
    EXPECT_EQ(stitchAt(0, 5), "yo");
    EXPECT_EQ(view().selection(), (CellArea{0, 0, 3, 4}));
    trigger(CommandId::RemoveColumns);
    EXPECT_EQ(chart().width, 8);
    trigger(CommandId::InsertColumnsLeft);
    EXPECT_EQ(stitchAt(0, 3), "yo");
}

TEST_F(EditTest, RemovesTheSelectedRows) {
    draw(3, 1, "yo");
    view().select({0, 2, 1, 1});
    trigger(CommandId::RemoveRows);
    EXPECT_EQ(chart().height(), 3);
    EXPECT_EQ(stitchAt(0, 1), "yo");
}

TEST_F(EditTest, ChangesTheChartsProperties) {
    prompts_.properties = [](ChartProperties now) {
        now.name = "Fern";
        now.worked = Worked::InTheRound;
        return std::optional(now);
    };
    trigger(CommandId::ChartProperties);
    EXPECT_EQ(chart().name, "Fern");
    EXPECT_EQ(chart().worked, Worked::InTheRound);
    prompts_.properties = [](const ChartProperties&) { return std::nullopt; };
    trigger(CommandId::ChartProperties);
    EXPECT_EQ(document().undoStack().count(), 1);
}

TEST_F(EditTest, DefinesAStitchAndChoosesIt) {
    prompts_.stitches = [] {
        Stitch stitch;
        stitch.id = "nupp-5";
        stitch.name = "nupp 5";
        stitch.rightSide.abbreviation = "nupp";
        return std::optional(stitch);
    };
    trigger(CommandId::DefineStitch);
    EXPECT_TRUE(chart().stitches->find("nupp-5").has_value());
    EXPECT_EQ(view().stitch(), "nupp-5");
}

TEST(CellText, ReadsWhatItWrites) {
    const Chart chart = blankChart(7, 2);
    const auto wide = chart.stitches->find("c22r");
    ASSERT_TRUE(wide.has_value());
    const Result<Chart> drawn = drawStitch(chart, 1, 2, *wide);
    ASSERT_TRUE(drawn.has_value());
    const CellBlock block = copyCells(*drawn, {0, 1, 1, 7});
    const QString text = textOf(block, *chart.stitches);
    EXPECT_EQ(text, "k k . . . c22r k\nk k k k k k k");
    EXPECT_EQ(*cellsFrom(text, *chart.stitches), block);
}

TEST(CellText, RefusesRowsOfUnequalLength) {
    EXPECT_FALSE(cellsFrom("k k\nk", *builtInStitches()).has_value());
    EXPECT_FALSE(cellsFrom("", *builtInStitches()).has_value());
}

}  // namespace
}  // namespace lacewright::app
