#include <sstream>

#include "tests/core/words/reading.h"

// What single rows take and make, worked out by hand from the definitions of the stitches (Craft
// Yarn Council abbreviations).
namespace lacewright {
namespace {

TEST(RowWords, TakeAndMakeAsByHand) {
    const std::pair<const char*, const char*> rows[] = {
        {"sl 1, k2, psso over 2 sts", "3 / 2"},
        {"sl 1, k2, pass slipped st over both", "3 / 2"},
        {"dec 1 over next 2 sts", "2 / 1"},
        {"k1, drop 2 yos", "3 / 1"},
        {"p1, drop 1 yo, p1", "3 / 2"},
        {"k1, drop yo from prev row, k1", "3 / 2"},
        {"k1, [k2, p2] across, k1", "4n + 2 / 4n + 2"},
        {"k5 in garter st, k to last 5 sts, k5", "n + 10 / n + 10"},
        {"k into front, back and front of next st", "1 / 3"},
        {"knit in front and back of next st, k1", "2 / 3"},
        {"bind off 3 (1 st on needle), k4", "8 / 5"},
        {"bo 3, k5 (including st on needle after bo)", "8 / 5"},
        {"*k1, p1; rep from * for a total of 5 times", "10 / 10"},
        {"k1, (k2, p2) * 4, k1", "18 / 18"},
        {"k all but last 2 sts, k2tog", "n + 2 / n + 1"},
        {"k up to last 2 sts, k2tog", "n + 2 / n + 1"},
        {"k3, (k1, yo, k1) in next st, turn, p3, turn, sk2p, k3", "7 / 7"},
        {"k2, inc 4 sts evenly to last 2 sts, k2", "n + 4 / n + 8"},
        {"k, dec 4 sts evenly across", "n + 8 / n + 4"},
        {"first 5 sts in garter st, p to last 5 sts, last 5 sts in garter st", "n + 10 / n + 10"},
        {"k to last 3 sts, k2tog, k1. +2 sts", "n + 3 / n + 2"},
        {"work 5 sts, yo, k2tog, work to end", "n + 7 / n + 7"},
        {"k2tog, k into same st again", "2 / 2"},
        {"dec 1 st at end of row", "n + 2 / n + 1"},
        {"inc 1 st at beg of row", "n + 1 / n + 2"},
        {"keeping patt correct, dec 1 st at each end", "n + 4 / n + 2"},
        {"k2tog at each end", "n + 4 / n + 2"},
        {"p across, dec 1 st in the first and last st", "n + 4 / n + 2"},
        {"2x2 rib to last 2 sts, k2", "n + 2 / n + 2"},
    };
    for (const auto& [row, forms] : rows) EXPECT_EQ(formsOfRow(row), forms) << row;
}

TEST(RowWords, ARepeatWithoutAnEndIsToldWhenAnotherFollows) {
    EXPECT_NE(errorsOf("Row 1: *k2, p2*; **k1, p1**; rep from * to end"), "");
}

TEST(RowWords, ChangesAreNoCounts) {
    const std::string text = "Cast on 20\nRow 1: k1, m1, k to last st, m1, k1";
    for (const char* said : {" +2 sts", " (+2 sts)", " 2 sts increased; 22 sts", ", [+2 sts = 22]",
                             ". Stitch count: 22", ". Total: 22 sts"})
        EXPECT_EQ(countsOf(text + said), "22") << said;
    EXPECT_EQ(countsOf(text + ". Stitch count: 23"), "22!");
}

// tests/data/remark_lines.txt: wherever such a line stands, the rows are counted as without it.
TEST(RowWords, RemarksWorkNoRow) {
    std::istringstream file(readFile(test::inSourceTree("tests/data/remark_lines.txt")).value());
    const std::string castOn = "Cast on 20 sts\n";
    const std::string rows = "Row 1: k3, *yo, k2tog; rep from * to last 3 sts, k3\nRow 2: p\n";
    int lines = 0;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with("# ")) continue;
        ++lines;
        const bool ofRows = line.find("ows") != std::string::npos;  // speaks of rows above it
        if (!ofRows) {
            EXPECT_EQ(countsOf("A title\n\n" + line + "\n" + castOn + "\n" + rows), "20 20")
                << line;
            EXPECT_EQ(countsOf(castOn + line + "\n" + rows), "20 20") << line;
        }
        EXPECT_EQ(countsOf(castOn + rows + line + "\n"), "20 20") << line;
    }
    EXPECT_GT(lines, 90);
}

TEST(RowWords, OwnStitchesAreCountedHoweverTheyAreTold) {
    for (const char* told :
         {"Stitch knot3: takes 3 makes 1", "knot3: takes 3, makes 1", "knot3 = takes 3, makes 1",
          "knot3 (takes 3, makes 1)", "knot3 - takes 3 sts, makes 1 st",
          "knot3: gather three (takes 3, makes 1)", "Special stitches: knot3: takes 3, makes 1",
          "Words: other takes 0 makes 1; knot3 takes 3 makes 1", "Stitch: knot3 takes 3, makes 1",
          "Special stitches:\nknot3: takes 3 sts and makes 1 st; all gathered"})
        EXPECT_EQ(countsOf(std::string("Cast on 10\n") + told + "\nRow 1: knot3, k to end"), "8")
            << told;
}

// Loops that are let fall were made by the yarn overs below; counted by hand.
TEST(RowWords, LoopsOfYarnOversAreLetFall) {
    const std::string wound = "Cast on 10\nRow 1: *k1, yo twice; rep from * to last st, k1\n";
    for (const char* row :
         {"knit, dropping yos", "k to end, dropping all extra loops", "k10, dropping extra wraps",
          "*k1, drop yo's; rep from * to last st, k1", "*k1, drop 2 yos; rep from * to last st, k1",
          "purl across, letting the extra loops fall"})
        EXPECT_EQ(countsOf(wound + "Row 2: " + row), "28 10") << row;
    EXPECT_EQ(verdictOf(wound + "Row 2: k11, dropping extra wraps"), "row 2");
    const std::string twice = "Cast on 10\nRow 1: k4, yo twice, k2tog, k4\n";
    EXPECT_EQ(countsOf(twice + "Row 2: p5, k1 dropping extra loop, p4"), "11 10");
    EXPECT_EQ(countsOf(twice + "Row 2: p5, (k1, p1, k1) into double yo, p4"), "11 12");
    EXPECT_EQ(countsOf("Cast on 10\nRow 1: k10 wrapping yarn twice\n"
                       "Row 2: k10, dropping extra wraps"),
              "10 10");
}

TEST(RowWords, HeadingsOfRowsInManyForms) {
    const std::string rows = "Cast on 20\nRow 1: k20\nRow 2: p20\n";
    for (const char* row : {"Row #3: k", "Row no. 3: k", "(Row 3) k20", "Rd 3: k20", "RS row: k20",
                            "Purl row: p20", "Final row: k20", "Row three: knit", "3. k20"})
        EXPECT_EQ(countsOf(rows + row), "20 20 20") << row;
    for (const char* two : {"Rows 3+4: k20", "Rows 3/4: k20", "Row 3 & 4: k20", "Next 2 rows: k20"})
        EXPECT_EQ(countsOf(rows + two), "20 20 20 20") << two;
    for (const char* slip : {"Rwo 3: k20", "3rd rwo: knit", "Row: knit", "Row l: k"}) {
        const std::string errors = errorsOf(rows + slip);
        EXPECT_NE(errors.find("4:1: this line does not say which row it is"), std::string::npos)
            << slip << "\n"
            << errors;
    }
}

TEST(RowWords, ARoundMayBeginOneStitchLater) {
    EXPECT_EQ(
        countsOf("Cast on 64\nRnd 1: *k2tog, k5, yo, k1; rep from * around, remove marker, k1, "
                 "replace marker\nRnd 2: k"),
        "64 64");
}

TEST(RowWords, ChartsAreToldOnce) {
    const std::string errors =
        errorsOf("Cast on 20\nRow 1: k3, work Chart A to last 3 sts, k3\nRow 2: work chart\n");
    EXPECT_EQ(errors,
              "text:2:17: this row names a chart, and rows that name a chart cannot be counted; "
              "expected the stitches of the row in words\n"
              "    Row 1: k3, work Chart A to last 3 sts, k3\n"
              "                    ^^^^^\n");
}

}  // namespace
}  // namespace lacewright
