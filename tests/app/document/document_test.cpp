#include "app/document/document.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "core/chart/edits.h"

namespace lacewright::app {
namespace {

// A chart with one cell of row `row` drawn as a yarn over, built without the edits under test
// elsewhere.
Chart withYarnOver(const Chart& chart, int row, int column) {
    std::vector<StitchIndex> cells = chart.row(row).cells();
    cells[static_cast<std::size_t>(column - 1)] = *chart.stitches->find("yo");
    Chart changed = chart;
    changed.rows.replace(static_cast<std::size_t>(row), makeRow(cells, *chart.stitches));
    return changed;
}

TEST(Document, TellsWhichCellsAnEditChanged) {
    Document document;
    ChartChange seen;
    QObject::connect(&document, &Document::changed, &document,
                     [&seen](const ChartChange& change) { seen = change; });
    EXPECT_TRUE(document.apply("Draw yarn over", withYarnOver(document.chart(), 3, 2)));
    EXPECT_FALSE(seen.frame);
    EXPECT_EQ(seen.cells, (std::vector<CellArea>{{3, 3, 2, 2}}));
}

TEST(Document, TellsThatTheFrameChanged) {
    Document document;
    Chart renamed = document.chart();
    renamed.name = "Fern";
    ChartChange seen;
    QObject::connect(&document, &Document::changed, &document,
                     [&seen](const ChartChange& change) { seen = change; });
    document.apply("Rename", renamed);
    EXPECT_TRUE(seen.frame);
    EXPECT_EQ(document.displayName(), "Fern");
}

TEST(Document, UndoesAndRedoesByName) {
    Document document;
    const Chart before = document.chart();
    const Chart after = withYarnOver(before, 0, 1);
    document.apply("Draw yarn over", after);
    EXPECT_EQ(document.undoStack().undoText(), "Draw yarn over");
    EXPECT_TRUE(document.isModified());
    document.undoStack().undo();
    EXPECT_EQ(document.chart(), before);
    EXPECT_FALSE(document.isModified());
    document.undoStack().redo();
    EXPECT_EQ(document.chart(), after);
}

TEST(Document, MergesAStrokeIntoOneStepAndDropsOneThatEndsWhereItBegan) {
    Document document;
    const Chart before = document.chart();
    const int stroke = document.newStroke();
    document.apply("Draw", withYarnOver(before, 0, 1), stroke);
    document.apply("Draw", withYarnOver(document.chart(), 0, 2), stroke);
    EXPECT_EQ(document.undoStack().count(), 1);
    document.apply("Draw", before, stroke);
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_FALSE(document.isModified());
}

TEST(Document, KeepsDifferentStrokesApart) {
    Document document;
    document.apply("Draw", withYarnOver(document.chart(), 0, 1), document.newStroke());
    document.apply("Draw", withYarnOver(document.chart(), 0, 2), document.newStroke());
    EXPECT_EQ(document.undoStack().count(), 2);
}

TEST(Document, TellsARefusalAndChangesNothing) {
    Document document;
    QSignalSpy refusals(&document, &Document::refused);
    EXPECT_FALSE(document.apply("Draw", Error{ErrorCode::Refused, "It does not fit.", {}}));
    ASSERT_EQ(refusals.count(), 1);
    EXPECT_EQ(refusals[0][0].toString(), "It does not fit.");
    EXPECT_EQ(document.undoStack().count(), 0);
}

TEST(Document, LeavesNoStepForAnEditThatChangesNothing) {
    Document document;
    EXPECT_TRUE(document.apply("Draw", document.chart()));
    EXPECT_EQ(document.undoStack().count(), 0);
}

TEST(Document, StartsAfreshWithAnotherChart) {
    Document document;
    QSignalSpy replaced(&document, &Document::replaced);
    document.apply("Draw", withYarnOver(document.chart(), 0, 1));
    document.replaceWith(blankChart(4, 4), "/somewhere/fern.lacewright");
    EXPECT_EQ(replaced.count(), 1);
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_EQ(document.displayName(), "fern.lacewright");
}

TEST(Document, IsUnmodifiedOnceSavedAndModifiedByTheNextEdit) {
    Document document;
    document.apply("Draw", withYarnOver(document.chart(), 0, 1));
    document.markSaved("/somewhere/fern.lacewright");
    EXPECT_FALSE(document.isModified());
    document.undoStack().undo();
    EXPECT_TRUE(document.isModified());
}

}  // namespace
}  // namespace lacewright::app
