#include "core/base/text.h"
#include "core/sheet/cuts.h"
#include "tests/core/sheet/sheet_probe.h"

namespace lacewright {
namespace {

using test::textsOf;
using test::wordsOf;
using testing::Contains;
using testing::HasSubstr;

Chart wide(int width, int height, int repeatWidth) {
    Chart chart = blankChart(width, height);
    chart.name = "Wide";
    Repeat repeat;
    repeat.name = "A";
    repeat.right = 3;
    repeat.left = 2 + repeatWidth;
    repeat.lastRow = height - 1;
    chart.repeats = {repeat};
    return chart;
}

TEST(Cuts, AChartThatFitsIsOnePiece) {
    const Cuts cuts = cutChart(blankChart(30, 20), 30, 20, 5);
    EXPECT_EQ(cuts.count(), 1);
    EXPECT_EQ(cuts.piece(0, 0), (Piece{1, 30, 0, 19}));
}

TEST(Cuts, ColumnsAreCutAtARepeatsEdge) {
    const Cuts cuts = cutChart(wide(50, 4, 20), 30, 20, 5);
    EXPECT_EQ(cuts.columns, (std::vector<int>{22, 50}));
    EXPECT_EQ(cuts.piece(1, 0), (Piece{23, 50, 0, 3}));
}

TEST(Cuts, WithoutARepeatInReachAHeavyLineIsTheCut) {
    EXPECT_EQ(cutChart(blankChart(50, 70), 33, 31, 5).columns, (std::vector<int>{30, 50}));
    EXPECT_EQ(cutChart(blankChart(50, 70), 33, 31, 5).rows, (std::vector<int>{29, 59, 69}));
}

TEST(Cuts, RowsAreCutAtTheRowRepeat) {
    Chart chart = blankChart(10, 40);
    chart.rowRepeat = RowRepeat{2, 17, 0, {}};
    EXPECT_EQ(cutChart(chart, 30, 25, 5).rows.front(), 17);
}

TEST(Cuts, NeverThroughASymbolOfSeveralCells) {
    Chart chart = blankChart(40, 2);
    std::vector<StitchIndex> cells = chart.row(1).cells();
    const StitchIndex cross = test::stitch("c22r");  // columns 19 to 22
    cells[18] = cross;
    cells[19] = cells[20] = cells[21] = kCovered;
    chart.rows.replace(1, makeRow(cells, *chart.stitches));
    EXPECT_EQ(cutChart(chart, 21, 9, 5).columns.front(), 15);
    EXPECT_EQ(cutChart(chart, 20, 9, 7).columns.front(), 14);
}

TEST(Cuts, CoverEveryCellOnce) {
    for (const int most : {1, 3, 7, 16, 49}) {
        const Chart chart = wide(50, 23, 13);
        const Cuts cuts = cutChart(chart, most, most, 5);
        int cells = 0;
        for (int j = 0; j < cuts.upward(); ++j) {
            for (int i = 0; i < cuts.across(); ++i) {
                const Piece piece = cuts.piece(i, j);
                EXPECT_LE(piece.columns(), most);
                EXPECT_LE(piece.rows(), most);
                EXPECT_GE(piece.columns(), 1);
                cells += piece.columns() * piece.rows();
            }
        }
        EXPECT_EQ(cells, 50 * 23);
    }
}

SheetOptions onPaper(const Paper& paper) {
    SheetOptions options;
    options.paper = paper;
    return options;
}

TEST(Pages, AreAsLargeAsThePaper) {
    const Sheet sheet = layOut(test::panel(), onPaper(kA4));
    ASSERT_EQ(sheet.pages.size(), 1U);
    EXPECT_NEAR(sheet.pages[0].width * sheet.unitMm, 210, sheet.unitMm);
    EXPECT_NEAR(sheet.pages[0].height * sheet.unitMm, 297, sheet.unitMm);
}

TEST(Pages, PieceAfterPieceFromTheRightWithJoinsAndNumbersOnEach) {
    const Sheet sheet = layOut(wide(110, 60, 30), onPaper(kA4));
    ASSERT_GE(sheet.pages.size(), 4U);
    std::multiset<std::string> numbers;
    for (const Page& page : sheet.pages) {
        for (const std::string& number : wordsOf(page, Role::RowNumber)) numbers.insert(number);
    }
    const std::size_t across = numbers.count("1");
    EXPECT_GE(across, 2U);
    for (int row = 1; row <= 60; ++row) {
        EXPECT_EQ(numbers.count(std::to_string(row)), across) << row;
    }
    const auto first = wordsOf(sheet.pages[0], Role::JoinMark);
    EXPECT_THAT(first, Contains("\u2190 sheet 2"));
    EXPECT_THAT(wordsOf(sheet.pages[1], Role::JoinMark), Contains("sheet 1 \u2192"));
    EXPECT_THAT(first.back(), HasSubstr("Sheet 1 of " + std::to_string(sheet.pages.size())));
    EXPECT_THAT(first.back(), HasSubstr("columns 1\u2013"));
}

TEST(Pages, NothingReachesIntoTheMargins) {
    for (const Paper& paper : {kA4, kLetter, kA5}) {
        Chart chart = wide(75, 90, 12);
        chart.notes = std::string(5000, 'n');
        chart.sizes = test::panel().sizes;
        chart.points = test::panel().points;
        chart.rowRepeat = RowRepeat{0, 89, 0, {}};
        SheetOptions options = onPaper(paper);
        options.size = "large";
        const Sheet sheet = layOut(chart, options);
        const Drawing drawing{chart, options, nullptr, sheet.unitMm, {}, true};
        for (const Page& page : sheet.pages) {
            const Extent extent = extentOf(drawing, {page.groups.begin() + 1, page.groups.end()});
            const int margin = static_cast<int>(paper.marginMm / sheet.unitMm) - 1;
            EXPECT_LE(extent.right, page.width - margin);
            EXPECT_LE(extent.bottom, page.height - margin);
            for (const Role role :
                 {Role::RowNumber, Role::Body, Role::SizeName, Role::RepeatName}) {
                for (const Text& text : textsOf(page, role)) EXPECT_GE(text.at.x, margin);
            }
        }
    }
}

TEST(Pages, AChartABitTooWideIsShrunkToOneSheet) {
    const Sheet sheet = layOut(blankChart(36, 20), onPaper(kA4));
    EXPECT_EQ(test::runsOf(sheet.pages[0], Role::Frame).size(), 1U);
    Chart taller = blankChart(36, 45);
    const Sheet shrunk = layOut(taller, onPaper(kA4));
    EXPECT_LT(shrunk.unitMm, kStandardCellMm / kCellUnits);
    EXPECT_GE(shrunk.unitMm, 4.0 / kCellUnits);
}

TEST(Pages, PaperTooSmallForTextStillEnds) {
    SheetOptions options = onPaper({40, 40, 5});
    const Sheet sheet = layOut(blankChart(3, 3), options);
    EXPECT_GE(sheet.pages.size(), 1U);
    EXPECT_LT(sheet.pages.size(), 100U);
}

}  // namespace
}  // namespace lacewright
