#include "core/words/compare.h"
#include "core/words/writer.h"
#include "tests/core/words/reading.h"
#include "tests/support/charts.h"

// Rows that are worked again without being written out.
namespace lacewright {
namespace {

const char* const kGrow = "Cast on: 6\nRow 1: k2, yo, k to end\nRow 2: p\n";

TEST(RowsAgain, AreWorkedAsOftenAsSaid) {
    EXPECT_EQ(countsOf(std::string(kGrow) + "Rep last 2 rows 5 more times. (12 sts)"), "7 7 x5");
    EXPECT_EQ(countsOf(std::string(kGrow) + "Rep last 2 rows 5 more times. (13 sts)"), "7 7 x5!");
    EXPECT_EQ(
        countsOf(std::string(kGrow) + "Rep rows 1 and 2 twice more, then rep row 1 once more.\n"
                                      "Next row: k10"),
        "7 7 10 x2 x1");
}

TEST(RowsAgain, ListOneNumberForEverySize) {
    const std::string text = "Sizes: S (M)\n" + std::string(kGrow) +
                             "Rep last 2 rows 2 (4) more times\nRow 7: k9 (11)\n";
    EXPECT_EQ(countsOf(text, 0), "7 7 9 x2");
    EXPECT_EQ(countsOf(text, 1), "7 7 11 x4");
}

TEST(RowsAgain, GoOnUntilACount) {
    const std::string text = "Cast on: 20\nRow 1: k1, ssk, k to last 3 sts, k2tog, k1\nRow 2: p\n";
    EXPECT_EQ(countsOf(text + "Rep last 2 rows until 8 sts remain."), "18 18 x5");
    // Two at a time never make 9.
    EXPECT_EQ(countsOf(text + "Rep last 2 rows until 9 sts remain."), "18 18 x5!");
    EXPECT_EQ(countsOf(text + "Rep last 2 rows until piece measures 20 cm."), "18 18");
}

TEST(RowsAgain, AreDrawnAndComparedAsTheyAreWorked) {
    const std::string text = std::string(kGrow) + "Rep last 2 rows twice more.\nRow 7: k9\n";
    const Chart chart = chartOfText(text);
    EXPECT_EQ(chart.height(), 7);
    EXPECT_TRUE(compareRows(chart, readWritten(text).pattern)->same());
    const std::string other = std::string(kGrow) + "Rep last 2 rows twice more.\nRow 7: p9\n";
    const auto against = compareRows(chart, readWritten(other).pattern);
    ASSERT_EQ(against->differences.size(), 1u);
    EXPECT_EQ(against->differences[0].number, 7);
}

TEST(SameRows, TakeOverTheTextsOfOthersInTurn) {
    const std::string two = "Cast on: 6\nRow 1: k2, yo, k to end\nRow 2: p\n";
    EXPECT_EQ(countsOf(two + "Rows 3 and 4: as rows 1 and 2"), "7 7 8 8");
    EXPECT_EQ(countsOf(two + "Rows 3-6: rep rows 1-2 twice"), "7 7 8 8 9 9");
    EXPECT_EQ(countsOf(two + "Rows 3-6: rep last 2 rows"), "7 7 8 8 9 9");
    EXPECT_EQ(countsOf(two + "Rows 3 to 6: as 1st and 2nd rows."), "7 7 8 8 9 9");
    EXPECT_NE(errorsOf(two + "Rows 3-5: rep rows 1 and 2"), "");
    EXPECT_NE(errorsOf(two + "Rows 3-6: rep rows 1 and 2 three times"), "");
    EXPECT_EQ(
        countsOf("Cast on: 6\nInc row: k1, yo, k to end (7 sts)\nRow 2: p\nRow 3: rep inc row"),
        "7 7 8");
}

TEST(Remarks, WorkNoRow) {
    const std::string text = "Cast on: 6\nRow 1: k2, yo, k to end\n";
    EXPECT_EQ(countsOf(text + "Bind off all stitches loosely.\nBlock to measurements."), "7");
    EXPECT_EQ(countsOf(text + "Note: slip the markers as you come to them.\nRow 2: p"), "7 7");
}

// A chart of right-side rows whose rule says that the rows between keep every stitch as it shows.
TEST(RowsBetween, AreSaidInAKnittersWordsAndProven) {
    const std::string text = "Cast on: 8\nRow 1: k2, p2, k2, yo, k2tog\nRow 3: k2, p2, k4\n";
    const Chart chart = chartOfText(text);
    ASSERT_EQ(chart.uncharted, Uncharted::AsTheyPresent);
    EXPECT_TRUE(compareRows(chart, readWritten(text).pattern)->same());
    const auto written = writeRows(chart);
    ASSERT_TRUE(written) << written.error().message;
    EXPECT_NE(written->text().find("Row 2 and all WS rows: knit the knits and purl the purls."),
              std::string::npos)
        << written->text();
    const auto with = [&](const char* between) {
        return compareRows(chart,
                           readWritten("Cast on: 8\nRow 1: k2, p2, k2, yo, k2tog\nRow 2 and all WS "
                                       "rows: " +
                                       std::string(between) + "\nRow 3: k2, p2, k4\n")
                               .pattern)
            ->same();
    };
    EXPECT_TRUE(with("work sts as they appear"));
    EXPECT_TRUE(with("p4, k2, p2"));
    EXPECT_FALSE(with("purl"));
    EXPECT_FALSE(with("p2, k2, p4"));
}

TEST(RowsAgain, ACommaMayStandBeforeHowOften) {
    const std::string rows = "Cast on 20\nRow 1: k1, m1, k to last st, m1, k1\nRow 2: p\n";
    EXPECT_EQ(countsOf(rows + "Rep rows 1 and 2, 3 more times. 28 sts."), "22 22 x3");
    EXPECT_EQ(countsOf(rows + "Rep rows 1-2, twice more"), "22 22 x2");
    EXPECT_EQ(countsOf("Sizes: S (M, L)\n" + rows + "Rep rows 1 and 2, 1 (2, 3) times more", 1),
              "22 22 x2");
}

TEST(RowsAgain, HowOftenInManyWords) {
    const std::string rows = "Cast on 20\nRow 1: k1, m1, k to last st, m1, k1\nRow 2: p\n";
    for (const char* again :
         {"Rep rows 1-2 three times", "Repeat rows 1 & 2 x3", "Rep rows 1-2, 3 (more) times",
          "Work rows 1-2 a total of 4 times", "Work rows 1-2 four times in total",
          "Continue to rep rows 1-2 until 28 sts", "Then rep rows 1-2 three times more"})
        EXPECT_EQ(countsOf(rows + again), "22 22 x3") << again;
}

TEST(RowsAgain, ACountBehindSeveralRowsIsThatOfTheLast) {
    // 20 + 2 in rows 1 and 3, and 2 more in rows 5 and 7.
    EXPECT_EQ(countsOf("Cast on 20\nRow 1: k1, m1, k to last st, m1, k1. 22 sts\nRow 2: p\n"
                       "Rows 3-8: Rep rows 1 and 2 three times. 28 sts\n"),
              "22 22 24 24 26 26 28 28");
    EXPECT_EQ(countsOf("Cast on 20\nRows 1-2: k1, m1, k to end. 22 sts\n"), "21 22");
    EXPECT_EQ(countsOf("Cast on 20\nRows 1-2: k1, m1, k to end. 23 sts\n"), "21 22!");
}

TEST(RowsAgain, WhatIsNotUnderstoodIsAnError) {
    EXPECT_NE(errorsOf("Cast on 20\nRow 1: k\n\nRepeat the increases three more times.\n"), "");
}

}  // namespace
}  // namespace lacewright
