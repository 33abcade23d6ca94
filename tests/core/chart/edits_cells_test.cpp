#include <gtest/gtest.h>

#include <climits>

#include "core/chart/edits.h"
#include "tests/support/drawn_rows.h"

namespace lacewright {
namespace {

using test::cellsOf;
using test::chartOf;
using test::drawn;
using test::stitch;

TEST(DrawStitch, ReplacesOneCellAndSharesTheOtherRows) {
    const Chart chart = chartOf({"k k k", "k k k", "p p p"});
    const auto edited = drawStitch(chart, 1, 1, stitch("yo"));
    ASSERT_TRUE(edited);
    EXPECT_EQ(drawn(*edited, 1), "k k yo");
    EXPECT_EQ(drawn(chart, 1), "k k k");
    EXPECT_EQ(edited->rows[0], chart.rows[0]);
    EXPECT_EQ(edited->rows[2], chart.rows[2]);
    EXPECT_NE(edited->rows[1], chart.rows[1]);
}

TEST(DrawStitch, CoversTheCellsToTheLeftOfAWideStitch) {
    const auto edited = drawStitch(chartOf({"p p p p p"}), 0, 2, stitch("c12r"));
    ASSERT_TRUE(edited);
    EXPECT_EQ(drawn(*edited, 0), "p c12r p");
    EXPECT_EQ(edited->row(0).at(2), stitch("c12r"));
    EXPECT_EQ(edited->row(0).at(3), kCovered);
}

TEST(DrawStitch, LeavesKnitWhereAWideStitchLosesACell) {
    const Chart chart = chartOf({"c22r c11l"});  // columns 3..6 and 1..2
    EXPECT_EQ(drawn(*drawStitch(chart, 0, 1, stitch("yo")), 0), "c22r k yo");
    EXPECT_EQ(drawn(*drawStitch(chart, 0, 2, stitch("yo")), 0), "c22r yo k");
    EXPECT_EQ(drawn(*drawStitch(chart, 0, 4, stitch("yo")), 0), "k k yo k c11l");
    EXPECT_EQ(drawn(*drawStitch(chart, 0, 2, stitch("c11r")), 0), "k k k c11r k");
    EXPECT_EQ(drawn(*drawStitch(chart, 0, 4, stitch("c11r")), 0), "k c11r k c11l");
}

TEST(DrawStitch, ThatIsThereAlreadyChangesNothing) {
    const Chart chart = chartOf({"k c11r"});
    const auto edited = drawStitch(chart, 0, 1, stitch("c11r"));
    ASSERT_TRUE(edited);
    EXPECT_EQ(*edited, chart);
    EXPECT_EQ(edited->rows[0], chart.rows[0]);
}

TEST(DrawStitch, RefusesWhatLiesOutside) {
    const Chart chart = chartOf({"k k k"});
    EXPECT_EQ(drawStitch(chart, 0, 3, stitch("c11r")).error().message,
              "The stitch c11r spans 2 cells and would reach outside the chart.");
    for (const auto& [row, column] : {std::pair{-1, 1}, {1, 1}, {0, 0}, {0, 4}, {0, INT_MAX}}) {
        EXPECT_EQ(drawStitch(chart, row, column, stitch("k")).error().message,
                  "This cell lies outside the chart.");
    }
    EXPECT_EQ(drawStitch(chart, 0, 1, kCovered).error().message,
              "The chart does not have this stitch.");
    EXPECT_EQ(drawStitch(chart, 0, 1, 65535).error().code, ErrorCode::NotFound);
}

TEST(DrawStitch, DropsASubstitutionThatNoLongerFits) {
    Chart chart = chartOf({"k k k yo", "k k k yo"});
    Size size;
    size.name = "M";
    size.reach = {1, 4};
    size.substitutions = {{0, 1, Edge::Start, "k", {}}, {1, 1, Edge::Start, "k", {}}};
    chart.sizes.push_back(size);
    ASSERT_FALSE(frameProblem(chart));
    EXPECT_EQ(drawStitch(chart, 0, 1, stitch("k2tog"))->sizes, chart.sizes);
    const auto wide = drawStitch(chart, 0, 1, stitch("c11r"));
    ASSERT_EQ(wide->sizes[0].substitutions.size(), 1U);
    EXPECT_EQ(wide->sizes[0].substitutions[0].row, 1);
    EXPECT_FALSE(frameProblem(*wide));
}

TEST(CopyCells, CutsWideStitchesToKnitAndClipsToTheChart) {
    const Chart chart = chartOf({"c22r c11l", "p p p p p p"});
    const CellBlock block = copyCells(chart, {0, 7, 2, 4});
    ASSERT_EQ(block.height(), 2);
    EXPECT_EQ(drawn(block.rows[0], *chart.stitches), "k k k");
    EXPECT_EQ(drawn(block.rows[1], *chart.stitches), "p p p");
    EXPECT_EQ(copyCells(chart, {0, 0, 1, 6}).rows[0], chart.row(0).cells());
    EXPECT_EQ(copyCells(chart, {0, 1, 7, 9}), CellBlock{});
    EXPECT_EQ(copyCells(chart, {2, 1, 1, 1}), CellBlock{});
}

TEST(PasteCells, KeepsWideStitchesWholeAndMendsWhatItCuts) {
    const Chart chart = chartOf({"p p p p p p", "c22r c11l"});
    const CellBlock block = copyCells(chart, {0, 0, 1, 2});
    const auto edited = pasteCells(chart, 1, 2, block);
    ASSERT_TRUE(edited);
    EXPECT_EQ(drawn(*edited, 1), "k k k p p k");
    EXPECT_EQ(drawn(*pasteCells(chart, 0, 2, copyCells(chart, {1, 1, 1, 6})), 0), "k k k c11l p");
}

TEST(PasteCells, LeavesAwayWhatReachesOutside) {
    const Chart chart = chartOf({"p p p", "p p p"});
    const CellBlock block{{cellsOf("yo c11r"), cellsOf("yo ssk k"), cellsOf("k k k")}};
    const auto left = pasteCells(chart, 1, 3, block);
    ASSERT_TRUE(left);
    EXPECT_EQ(drawn(*left, 0), "p p p");
    EXPECT_EQ(drawn(*left, 1), "k p p");
    const auto right = pasteCells(chart, -1, 0, block);
    EXPECT_EQ(drawn(*right, 0), "p yo ssk");
    EXPECT_EQ(drawn(*right, 1), "p k k");
    for (const int far : {INT_MIN, -9, 9, INT_MAX}) {
        EXPECT_EQ(*pasteCells(chart, 0, far, block), chart);
        EXPECT_EQ(*pasteCells(chart, far, 1, block), chart);
    }
}

TEST(PasteCells, RefusesStitchesOfAnotherCatalogue) {
    const Chart chart = chartOf({"p p"});
    EXPECT_EQ(pasteCells(chart, 0, 1, CellBlock{{{65535}}}).error().message,
              "The chart does not have this stitch.");
}

TEST(PasteCells, MendsABlockWithBrokenStitches) {
    const Chart chart = chartOf({"p p p p"});
    const CellBlock block{{{kCovered, stitch("c11r"), stitch("yo")}}};
    EXPECT_EQ(drawn(*pasteCells(chart, 0, 1, block), 0), "p yo k k");
}

TEST(FillCells, SetsStitchBesideStitch) {
    const Chart chart = chartOf({"p p p p p p", "p p p p p p"});
    const auto edited = fillCells(chart, {0, 9, 2, 6}, stitch("c11r"));
    ASSERT_TRUE(edited);
    EXPECT_EQ(drawn(*edited, 0), "k c11r c11r p");
    EXPECT_EQ(drawn(*edited, 1), "k c11r c11r p");
    EXPECT_EQ(*fillCells(chart, {0, 1, 1, 6}, stitch("p")), chart);
    EXPECT_EQ(*fillCells(chart, {3, 1, 1, 6}, stitch("k")), chart);
    EXPECT_EQ(fillCells(chart, {0, 1, 1, 6}, kCovered).error().code, ErrorCode::NotFound);
}

TEST(Mirrored, ReversesTheOrderAndEveryLean) {
    const auto& stitches = *builtInStitches();
    const CellBlock block{{cellsOf("yo k2tog p c21r"), cellsOf("k k k ssk yo s2kp")}};
    const CellBlock mirror = mirrored(block, stitches);
    EXPECT_EQ(drawn(mirror.rows[0], stitches), "c21l p ssk yo");
    EXPECT_EQ(drawn(mirror.rows[1], stitches), "s2kp yo k2tog k k k");
    EXPECT_EQ(mirrored(mirror, stitches), block);
}

TEST(Mirrored, LeavesAStitchWhoseMirrorHasAnotherWidth) {
    Stitch odd;
    odd.id = "odd";
    odd.span = 2;
    odd.mirror = "k";
    const auto grown = builtInStitches()->with(odd);
    ASSERT_TRUE(grown);
    const StitchIndex index = (*grown)->find("odd").value();
    const CellBlock block{{{stitch("p"), index, kCovered}}};
    EXPECT_EQ(mirrored(block, **grown), (CellBlock{{{index, kCovered, stitch("p")}}}));
}

TEST(ReplaceRow, TakesWholeStitchesOnly) {
    const Chart chart = chartOf({"p p p"});
    EXPECT_EQ(drawn(*replaceRow(chart, 0, cellsOf("c11r yo")), 0), "c11r yo");
    EXPECT_EQ(replaceRow(chart, 0, cellsOf("p p p"))->rows[0], chart.rows[0]);
    EXPECT_EQ(replaceRow(chart, 0, cellsOf("p p")).error().message,
              "A row of this chart has 3 cells, not 2.");
    EXPECT_EQ(replaceRow(chart, 0, {stitch("p"), kCovered, stitch("p")}).error().message,
              "A stitch that spans several cells must have all of them.");
    EXPECT_EQ(replaceRow(chart, 0, {65535, 1, 1}).error().code, ErrorCode::NotFound);
    EXPECT_EQ(replaceRow(chart, 1, cellsOf("p p p")).error().message, "The chart has no such row.");
}

}  // namespace
}  // namespace lacewright
