#include "core/words/reader.h"

#include "core/words/compare.h"
#include "tests/core/words/reading.h"

namespace lacewright {
namespace {

std::vector<int> numbersIn(const std::string& text) {
    std::vector<int> numbers;
    for (const WrittenRow& row : readWritten(text).pattern.rows) numbers.push_back(row.number);
    return numbers;
}

std::string sidesIn(const std::string& text) {
    std::string sides;
    for (const WrittenRow& row : readWritten(text).pattern.rows)
        sides += row.side == Side::Right ? 'R' : 'W';
    return sides;
}

TEST(RowHeadings, ListRangesAndLists) {
    EXPECT_EQ(numbersIn("Rows 1-4: k4"), (std::vector<int>{1, 2, 3, 4}));
    EXPECT_EQ(numbersIn("Rows 1 to 3: k4\nRow 4: k4"), (std::vector<int>{1, 2, 3, 4}));
    EXPECT_EQ(numbersIn("Rows 1 and 3: k4\nRows 2, 4 and 6: p4\nRow 5: k4"),
              (std::vector<int>{1, 2, 3, 4, 5, 6}));
    EXPECT_EQ(numbersIn("Rows 1 & 2: k4"), (std::vector<int>{1, 2}));
    EXPECT_EQ(numbersIn("1st row: k4\n2nd row: p4\n3rd and 4th rows: k4"),
              (std::vector<int>{1, 2, 3, 4}));
    EXPECT_EQ(numbersIn("First row.\xE2\x80\x94K 4.\nSecond row.\xE2\x80\x94P 4."),
              (std::vector<int>{1, 2}));
    EXPECT_EQ(numbersIn("1: k4\n2: p4"), (std::vector<int>{1, 2}));
    EXPECT_EQ(numbersIn("R1: k4\nR2: p4"), (std::vector<int>{1, 2}));
    EXPECT_EQ(numbersIn("Row 1 k4\nNext row: p4\nNext row (RS): k4"), (std::vector<int>{1, 2, 3}));
    EXPECT_EQ(numbersIn("Set-up row (WS): p4\nRow 2: k4"), (std::vector<int>{1, 2}));
}

TEST(RowHeadings, FamiliesFillTheRowsBetween) {
    const std::vector<int> six = {1, 2, 3, 4, 5, 6};
    EXPECT_EQ(numbersIn("Row 1: k4\nRow 2 and all WS rows: purl\nRow 3: k4\nRow 5: k4"), six);
    EXPECT_EQ(numbersIn("Row 1: k4\nRow 2 and every alternate row: purl\nRow 3: k4\nRow 5: k4"),
              six);
    EXPECT_EQ(numbersIn("Row 1: k4\n2nd and every alt row: p\nRow 3: k4\nRow 5: k4"), six);
    EXPECT_EQ(numbersIn("Row 1: k4\nRow 2 and all even-numbered rows: p\nRow 3: k4\nRow 5: k4"),
              six);
    EXPECT_EQ(numbersIn("Row 1: k4\nRow 2 and every other row: p\nRow 3: k4\nRow 5: k4"), six);
    EXPECT_EQ(numbersIn("All WS rows: purl\nRow 1: k4\nRow 3: k4\nRow 5: k4"), six);
    EXPECT_EQ(numbersIn("Even rows: purl\nRow 1: k4\nRow 3: k4\nRow 5: k4"), six);
    EXPECT_EQ(numbersIn("Row 1 (WS) and all WS rows: p\nRow 2: k4\nRow 4: k4\n"),
              (std::vector<int>{1, 2, 3, 4}));
    EXPECT_EQ(numbersIn("Row 1: k4\nRow 2 and all WS rows: p\nRow 3: k4\nRow 4: k2, p2\nRow 5: "
                        "k4\nRep rows 1-5"),
              (std::vector<int>{1, 2, 3, 4, 5}));
}

TEST(RowHeadings, SidesAlternateFromTheOneMarked) {
    EXPECT_EQ(sidesIn("Row 1: k4\nRow 2: p4\nRow 3: k4"), "RWR");
    EXPECT_EQ(sidesIn("Row 1 (WS): p4\nRow 2: k4"), "WR");
    EXPECT_EQ(sidesIn("Row 1: p4\nRow 2 (RS): k4\nRow 3: p4"), "WRW");
    EXPECT_EQ(sidesIn("Rnd 1: k4\nRnd 2: k4"), "RR");
    EXPECT_EQ(sidesIn("Row 1 (right side): k4\nRow 2 (wrong side): p4"), "RW");
}

TEST(RowHeadings, ARowMayGoOnOverLines) {
    const std::string text =
        "Row 1: k1, *yo,\n   k2tog; rep from *\nto last st, k1.\nRow 2: purl.\n";
    EXPECT_EQ(errorsOf(text), "");
    EXPECT_EQ(readWritten(text).pattern.rows.size(), 2u);
}

TEST(RowHeadings, RowsMayBeTheSameAsOthers) {
    EXPECT_EQ(
        verdictOf(
            "Cast on: 6\nRow 1: k2, yo, k2tog, k2\nRow 2: p\nRow 3: as row 1\nRow 4: as 2nd row\n"
            "Row 5: Same as row 3.\nRow 6: Rep row 2"),
        "yes");
    EXPECT_NE(errorsOf("Row 1: as row 2\nRow 2: as row 1"), "");
    EXPECT_NE(errorsOf("Row 1: as row 7"), "");
}

TEST(PatternHeadings, CastOnIsSaidInManyWays) {
    const auto castOn = [](const std::string& line) {
        const auto read = readWritten(line + "\nRow 1: k to end").pattern.castOn;
        return read ? read->of(0) : CastOn{-1, -1};
    };
    EXPECT_EQ(castOn("Cast on: 40"), (CastOn{0, 40}));
    EXPECT_EQ(castOn("Cast on 40 sts."), (CastOn{0, 40}));
    EXPECT_EQ(castOn("CO 40"), (CastOn{0, 40}));
    EXPECT_EQ(castOn("Cast on: multiple of 6 plus 2"), (CastOn{6, 2}));
    EXPECT_EQ(castOn("Cast on a multiple of 6 sts + 2"), (CastOn{6, 2}));
    EXPECT_EQ(castOn("Multiple of 6 sts plus 2"), (CastOn{6, 2}));
    EXPECT_EQ(castOn("multiple of 6 sts minus 1"), (CastOn{6, -1}));
    EXPECT_EQ(castOn("multiple of 6 - 1 sts"), (CastOn{6, -1}));
    EXPECT_EQ(castOn("Cast on: multiple of 6"), (CastOn{6, 0}));
    EXPECT_EQ(castOn("Cast on any number of stitches divisible by 3"), (CastOn{3, 0}));
    EXPECT_EQ(castOn("Cast on an even number of stitches"), (CastOn{2, 0}));
    EXPECT_EQ(castOn("Cast on an odd number"), (CastOn{2, 1}));
}

TEST(PatternHeadings, OwnStitchesMayBeUsedEverywhere) {
    EXPECT_EQ(verdictOf("Cast on: multiple of 3 plus 0\nStitch Wrap 3: takes 3 makes 3\nRow 1: "
                        "*wrap 3; rep from * to end"),
              "yes");
    EXPECT_EQ(verdictOf("Cast on: 6\nRow 1: [yo, knot3, yo] twice\nStitch knot3: takes 3, makes 1"),
              "yes");
}

TEST(Sizes, ListsGiveEachSizeItsNumber) {
    const std::string text =
        "Sizes: S (M, L)\nCast on: 10 (12, 14)\nRow 1: k3 (4, 5), *yo, k2tog; rep from * to last 3 "
        "(4, 5) sts, k3 (4, 5)\n";
    EXPECT_EQ(errorsOf(text), "");
    for (std::size_t size = 0; size < 3; ++size) EXPECT_EQ(verdictOf(text, size), "yes") << size;
    const std::string wrong =
        "Sizes: S (M, L)\nCast on: 10 (12, 15)\nRow 1: [k1, yo, k2tog, k2] 2 times (0, 3), k0 (12, "
        "0)";
    EXPECT_NE(errorsOf(wrong), "");  // two numbers for three sizes
    EXPECT_EQ(verdictOf("Cast on: 82 (90: 94: 102)\nRow 1: k82 (90: 94: 102)", 3), "yes");
    EXPECT_EQ(verdictOf("Cast on: 5 (5, 7)\nRow 1: k5, (k1) 0 (-, 2) times", 1), "yes");
    EXPECT_EQ(verdictOf("Cast on: 5 (5, 7)\nRow 1: k5, (k1) 0 (-, 2) times", 2), "yes");
    EXPECT_EQ(readWritten("Row 1: k1 (2, 3) (4, 5)").pattern.sizeCount(), 5u);
}

TEST(StatedCounts, AreComparedWithTheRow) {
    const auto stated = [](const std::string& row) {
        const std::string text = "Cast on: 10\nRow 1: " + row;
        EXPECT_EQ(errorsOf(text), "") << row;
        const WrittenProof proof = proveWritten(readWritten(text).pattern);
        const auto& mismatch = proof.rows.front().stated;
        return mismatch ? mismatch->stated : 0;
    };
    EXPECT_EQ(stated("k4, yo, k to end (11 sts)"), 0);
    EXPECT_EQ(stated("k4, yo, k to end. (12 sts)"), 12);
    EXPECT_EQ(stated("k4, yo, k to end \xE2\x80\x93 12 sts."), 12);
    EXPECT_EQ(stated("k4, yo, k6. 12 sts"), 12);
    EXPECT_EQ(stated("k4, k2tog, k4 [9 sts rem]"), 0);
    EXPECT_EQ(stated("k4, k2tog, k4 (1 st dec)"), 0);
    EXPECT_EQ(stated("*k2, yo; rep from * to end (16 stitches)"), 16);
}

TEST(SetUpRows, StandBeforeRowOne) {
    const std::string text =
        "CO 30\nFoundation row (RS): k15, m1, k15.\nSet up row (WS): P.\nRow 1 (RS): K3, *yo, "
        "k2tog, rep from * to last 4 sts, k4.\nRow 2 and all WS rows: p\nRow 3: k\n"
        "Repeat rows 1-4.\n";
    EXPECT_EQ(countsOf(text), "31 31 31 31 31 31");
    const WrittenPattern pattern = readWritten(text).pattern;
    EXPECT_EQ(pattern.rows.front().number, -1);
    EXPECT_EQ(pattern.findRow(0)->side, Side::Wrong);
    EXPECT_EQ(pattern.repeatFrom, 1);
    const auto same = compareRows(chartOfText(text), pattern);
    ASSERT_TRUE(same);
    EXPECT_TRUE(same->same());
}

TEST(Markers, SayHowFar) {
    const std::string text =
        "Cast on: 20 (24)\nSizes: S (L)\nRow 1: k4 (5), pm, k12 (14), pm, k4 (5)\nRow 2: p\n"
        "Row 3: k to 2 sts before m, k2tog, sm, yo, *yo, k2tog; rep from * to m, sm, k to end\n"
        "Row 4: p to marker, sm, p to last marker, sm, p to end\n";
    EXPECT_EQ(countsOf(text, 0), "20 20 20 20");
    EXPECT_EQ(countsOf(text, 1), "24 24 24 24");
    // Nobody placed one.
    EXPECT_EQ(verdictOf("Cast on: 8\nRow 1: k to m, sm, yo, k to end"), "row 1");
}

TEST(ReadErrors, AllOfATextAreTold) {
    const std::string text =
        "Cast on: 10\nRow 1: k1, blorp, k2tgo, (k1, p1\nRow 2: p3, ]\nRwo 3: k1\n\nhello there\n";
    const ReadRows read = readWritten(text);
    std::vector<int> lines;
    for (const auto& message : read.messages) {
        if (message.error) lines.push_back(message.place.line);
    }
    EXPECT_EQ(lines, (std::vector<int>{2, 2, 2, 3, 4}));
    ASSERT_FALSE(read.messages.empty());
    EXPECT_EQ(read.messages.back().sentence(), "this line works no row and is passed over");
}

TEST(ReadErrors, ShowTheLineWithACaret) {
    const std::string text = "Row 1: k1, k2tgo, k3\n";
    const ReadRows read = readWritten(text);
    ASSERT_EQ(read.messages.size(), 1u);
    EXPECT_EQ(rendered(read.messages[0], text, "lace.txt"),
              "lace.txt:1:12: \"k2tgo\" is not a stitch that is known here; expected a stitch, a "
              "bracket or *; "
              "did you mean k2tog?\n    Row 1: k1, k2tgo, k3\n               ^^^^^\n");
}

TEST(ReadErrors, ColumnsCountCharacters) {
    const std::string text = "Row 1: \xE2\x80\x9Ck1\xE2\x80\x9D, blorp";
    const ReadRows read = readWritten(text);
    ASSERT_EQ(read.messages.size(), 1u);
    EXPECT_EQ(read.messages[0].place.column, 14);
}

TEST(ReadErrors, NameWhatIsWrong) {
    EXPECT_NE(errorsOf("Row 1: *k1, p1").find("nothing says how often"), std::string::npos);
    EXPECT_NE(errorsOf("Row 1: k1, rep from * to end").find("no star"), std::string::npos);
    EXPECT_NE(errorsOf("Row 1: k1\nRow 1: p1").find("second time"), std::string::npos);
    EXPECT_NE(errorsOf("Row 1:\nRow 2: k1").find("says nothing"), std::string::npos);
    EXPECT_NE(errorsOf("").find("no rows"), std::string::npos);
    EXPECT_NE(errorsOf("Row 1: k2 (3, 4), p2 (3, 4, 5)").find("sizes"), std::string::npos);
    EXPECT_NE(errorsOf("Stitch foo: makes 3\nRow 1: k1").find("define a stitch"),
              std::string::npos);
}

// RFC 3629, section 3: C0 and C1 never appear; C0 B7 would be a "7" in two bytes.
TEST(Reader, BytesThatAreNoCharactersAreTold) {
    for (const char* bytes : {"\xC0\xB7", "\xC1\xAB", "\xE0\x80\xB7", "\xF0\x80\x80\xB7", "\xFF"})
        EXPECT_TRUE(readWritten(std::string("Row 1: k1, ") + bytes + ", yo.\n").hasErrors());
}

TEST(Reader, PartsThatNumberTheirRowsFromOneAreCountedOn) {
    const std::string text =
        "Cast on 54 sts.\n1st row. K2, *p2, k2; rep from * to end.\n"
        "2nd row. P2, *k2, p2; rep from * to end.\nRep these 2 rows twice more.\n"
        "Next row. K2tog, k to end. 53 sts.\n\nNow work in lace as folls:\n"
        "1st row. K1, *yo, sk2p, yo, k3; rep from * to last 4 sts, yo, sk2p, yo, k1.\n"
        "2nd row and all WS rows. Purl.\n3rd row. Knit.\nRep rows 1 and 2 once more.\n";
    const ReadRows read = readWritten(text);
    ASSERT_FALSE(read.hasErrors()) << errorsOf(text);
    ASSERT_EQ(read.pattern.rows.size(), 7u);  // 3 of the rib, 4 of the lace
    EXPECT_EQ(read.pattern.again.back().first, 4);
    EXPECT_EQ(read.pattern.again.back().last, 5);
    EXPECT_EQ(countsOf(text), "54 54 53 53 53 53 53 x2 x1");  // both sentences
    // Two rows of one number in one part are an error still, and so is a second piece of work.
    EXPECT_NE(errorsOf("Row 1: k1\nRow 1: p1"), "");
    EXPECT_NE(errorsOf("Row 1: k4\nSize M\nRow 1: p6"), "");
}

TEST(Reader, ShapingBehindRowsWorkedAgainIsNotLostInSilence) {
    EXPECT_NE(errorsOf("Cast on 10.\nRow 1: k.\nRow 2: p.\nRep these 2 rows 3 times more, dec 1 st "
                       "at end of last row.\nRow 3: k9.\n")
                  .find("shaping behind a sentence that repeats rows"),
              std::string::npos);
}

TEST(Reader, ABareNumberBehindTheLastSentenceIsACount) {
    EXPECT_EQ(countsOf("Cast on 12.\nRnd 1: (k1, yo) around. 24\nRnd 2: knit. 25.\n"), "24 24!");
}

TEST(Reader, WordsBeforeARowNameAPartOfTheWork) {
    EXPECT_EQ(countsOf("Cast on 40 sts.\nLace panel: Row 1 (RS): k.\nRow 2: p.\n"
                       "Shape armholes: BO 4 sts at beg of next 2 rows. 32 sts\n"),
              "40 40 36 32");
}

// What changes the count and is not understood is never passed over.
TEST(Sentences, ThatChangeTheCountAreReadOrRefused) {
    const std::string rows = "Cast on 20 sts\nRow 1: k\nRow 2: p.\n";
    EXPECT_NE(errorsOf(rows + "\nDec 3 sts at neck edge of row 7 and every row.\nNext row: k14")
                  .find("the shaping in this sentence is not understood"),
              std::string::npos);
    EXPECT_NE(errorsOf(rows + "Go on in this way until there are 30 sts.\nNext row: k30")
                  .find("which rows lead to this count is not understood"),
              std::string::npos);
    EXPECT_NE(errorsOf("Sizes: S (M, L)\n" + rows + "Sizes M and XL only:\nRow 3: k")
                  .find("names a size that the pattern does not have"),
              std::string::npos);
    EXPECT_EQ(countsOf(rows + "Dec 1 st at each end of every foll alt row until 14 sts rem.\n"
                              "Next row: k14"),
              "20 20 20 18 14 x2");
}

TEST(Sentences, OlderBooksAreKnownByTheirWords) {
    const std::string text = "Cast on 7\nRow 1: k 2, o, n, k 3\nRow 2: k 7";
    const ReadRows read = readWritten(text);
    EXPECT_FALSE(read.hasErrors());
    ASSERT_FALSE(read.messages.empty());
    EXPECT_NE(read.messages.front().what.find("books before 1920"), std::string::npos);
    EXPECT_TRUE(readWritten("Wording: modern\n" + text).hasErrors());
}

TEST(Pieces, AreProvenOneByOneAndNotDrawnTogether) {
    const std::string text = "Cast on 12\nRow 1: k12\nSleeve\nCast on 8\nRow 1: k8\nRow 2: p7, k2";
    EXPECT_EQ(verdictOf(text), "row 3");
    const WrittenPattern pattern = readWritten(text).pattern;
    ASSERT_EQ(pattern.pieces.size(), 1u);
    EXPECT_EQ(pattern.pieces.front().first, 2);
    EXPECT_FALSE(chartFromRows(pattern));
    EXPECT_FALSE(compareRows(blankChart(8, 1), pattern));
    // Stitches cast on beside others begin no piece.
    EXPECT_EQ(countsOf("Cast on 12\nRow 1: k12\nRow 2: p12, turn, cast on 4\nRow 3: k16"),
              "12 16 16");
}

}  // namespace
}  // namespace lacewright
