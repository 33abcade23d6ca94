#include "core/words/worked_row.h"

#include "tests/core/words/reading.h"

namespace lacewright {
namespace {

// The parts of one row: ids from the right side, in working order, runs as "k*3", a part with
// another number of times in brackets: "k*2 [yo ssk]n k".
std::string partsOf(const std::string& text, std::size_t row = 0, std::size_t size = 0) {
    const std::string errors = errorsOf(text);
    if (!errors.empty()) return errors;
    const ReadRows read = readWritten(text);
    const WrittenProof proof = proveWritten(read.pattern, size);
    const auto worked = workedRow(read.pattern, read.pattern.rows[row], proof.rows[row], size);
    if (!worked) return worked.error().message;
    std::string out;
    for (const RowPart& part : worked->parts) {
        std::string run;
        for (std::size_t i = 0; i < part.stitches.size();) {
            std::size_t end = i;
            while (end < part.stitches.size() && part.stitches[end].id == part.stitches[i].id)
                ++end;
            run += (run.empty() ? "" : " ") + part.stitches[i].id;
            if (end - i > 1) run += "*" + std::to_string(end - i);
            i = end;
        }
        const bool once = part.times == AffineForm(1) && !part.starred;
        out += out.empty() ? "" : " ";
        out += once
                   ? run
                   : "[" + run + "]" + part.times.text([&](Variable v) { return proof.nameOf(v); });
    }
    return out;
}

TEST(WorkedRows, RepeatsAreSolvedByTheProof) {
    EXPECT_EQ(partsOf("Cast on: multiple of 6 plus 2\n"
                      "Row 1: k1, *yo, k2tog, k4; rep from * to last st, k1"),
              "k [yo k2tog k*4]n k");
    EXPECT_EQ(partsOf("Cast on: 20\nRow 1: k1, *yo, k2tog; rep from * to last st, k1"),
              "k [yo k2tog]9 k");
    EXPECT_EQ(partsOf("Cast on: multiple of 6 plus 2\nRow 1: k1, *yo, k2tog, k; rep from * to last "
                      "st, k1"),
              "k [yo k2tog k]2n k");
}

TEST(WorkedRows, OpenStretchesTakeWhatIsLeft) {
    EXPECT_EQ(partsOf("Cast on: 20\nRow 1: k2, p to last 3 sts, ssk, k1"), "k*2 [p]15 ssk k");
    EXPECT_EQ(partsOf("Cast on: multiple of 4 plus 1\nRow 1: k to end"), "[k]4n + 1");
    EXPECT_EQ(partsOf("Cast on: 9\nRow 1: k1, p1 to end"), "k [p k]4");
}

TEST(WorkedRows, WrongSideRowsShowTheRightSide) {
    const std::string row1 = "Cast on: multiple of 5 plus 0\nRow 1: k\n";
    EXPECT_EQ(partsOf(row1 + "Row 2: purl", 1), "[k]5n");
    EXPECT_EQ(partsOf(row1 + "Row 2: *k1, p2tog, yo, ssp; rep from * to end", 1),
              "[p k2tog yo ssk]n");
    EXPECT_EQ(partsOf(row1 + "Row 2: *sl 1 wyif, k2tog, yo, p2; rep from * to end", 1),
              "[slwyb p2tog yo k*2]n");
}

TEST(WorkedRows, WordsWithOneStitchBecomeThatStitch) {
    EXPECT_EQ(partsOf("Cast on: 20\nRow 1: sl 1, k1, psso, k to end"), "skp [k]18");
    EXPECT_EQ(partsOf("Cast on: 20\nRow 1: k1, sl 1, k2tog, psso, k to end"), "k sk2p [k]16");
    EXPECT_EQ(partsOf("Cast on: 20\nRow 1: sl 2, k1, p2sso, k to end"), "s2kp [k]17");
    EXPECT_EQ(partsOf("Cast on: 3\nRow 1: k1, (k1, yo, k1) in next st, k1"), "k kyok k");
    EXPECT_EQ(partsOf("Cast on: 3\nRow 1: k\nRow 2: p1, (p1, yo, p1) in next st, p1", 1),
              "k kyok k");
    EXPECT_EQ(partsOf("Cast on: 5\nRow 1: k1, (k3tog, yo, k3tog) in next 3 sts, k1"),
              "k gather3 k");
    EXPECT_EQ(partsOf("Cast on: 9\nRow 1: bo 3, k to end"), "bo*3 [k]6");
    EXPECT_EQ(partsOf("Cast on: 4\nRow 1: k2tog, yo twice, ssk"), "k2tog yo2 ssk");
}

TEST(WorkedRows, WordsWithoutAStitchGetOneOfTheirOwn) {
    EXPECT_EQ(partsOf("Cast on: 4\nStitch knot3: takes 3 makes 1\nRow 1: knot3, k1"), "knot3 k");
    EXPECT_EQ(partsOf("Cast on: 6\nRow 1: sl 1, k3, psso, k2"), "sl-k-k-k-psso k*2");
}

TEST(WorkedRows, TheReadingOfTheProofIsTaken) {
    EXPECT_EQ(partsOf("Cast on: 12\nRow 1: *k2, p2; rep from * 3 times"),
              "k*2 p*2 k*2 p*2 k*2 p*2");
    // "twice" over three stitches is the only reading that leaves the stated count.
    EXPECT_EQ(partsOf("Cast on: 7\nRow 1: k1, yo, k2tog twice, k1 (7 sts)"),
              "k yo k2tog k yo k2tog k");
}

TEST(WorkedRows, SizesHaveTheirOwnFigures) {
    const std::string text = "Sizes: S (M)\nCast on: 8 (12)\nRow 1: k1 (2), yo, k2tog, k to end";
    EXPECT_EQ(partsOf(text, 0, 0), "k yo k2tog [k]5");
    EXPECT_EQ(partsOf(text, 0, 1), "k*2 yo k2tog [k]8");
}

TEST(WorkedRows, RefuseWhatCannotBeWorked) {
    EXPECT_NE(partsOf("Row 1: [[k999] 999 times] 9 times").find("cannot be counted"),
              std::string::npos);
    EXPECT_NE(partsOf("Row 1: [k999] 99 times").find("too many"), std::string::npos);
    EXPECT_NE(partsOf("Cast on: 4\nRow 1: psso, k4").find("cannot be drawn"), std::string::npos);
}

}  // namespace
}  // namespace lacewright
