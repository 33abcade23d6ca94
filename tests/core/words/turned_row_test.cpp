#include "tests/core/words/reading.h"

// Short rows: what lies beyond a turn waits for the row after next. Counted by hand; the way of
// working is common practice, no source.
namespace lacewright {
namespace {

std::string refusedOf(const std::string& text) {
    const WrittenProof proof = proveWritten(readWritten(text).pattern);
    return proof.firstFault() ? proof.firstFault()->counted.uncountable : std::string();
}

TEST(TurnedRow, LeavesTheRestWaiting) {
    const std::string turned = "Cast on 20\nRow 1: k\nRow 2: p\nRow 3: k4, turn\n";
    EXPECT_EQ(countsOf(turned + "Row 4: p4\nRow 5: k20\n"), "20 20 20 20 20");
    EXPECT_EQ(countsOf(turned + "Row 4: p to end\nRow 5: k\n"), "20 20 20 20 20");
    EXPECT_EQ(countsOf(turned + "Row 4: p1, p2tog, p1\nRow 5: k19\n"), "20 20 20 19 19");
}

TEST(TurnedRow, NextRowCannotGoBeyondTheTurn) {
    const std::string text = "Cast on 20\nRow 1: k4, turn\nRow 2: p5\nRow 3: k20\n";
    EXPECT_EQ(verdictOf(text), "row 2");
}

TEST(TurnedRow, TurnsOnBothSides) {
    EXPECT_EQ(countsOf("Cast on 24\nRow 1: k18, turn\nRow 2: p12, turn\nRow 3: k14, turn\n"
                       "Row 4: p16, turn\nRow 5: k to end\nRow 6: p24\n"),
              "24 24 24 24 24 24");
}

TEST(TurnedRow, SaysHowManyAreLeft) {
    EXPECT_EQ(countsOf("Cast on 24\nRow 1: k to last 6 sts, w&t\nRow 2: p to last 6 sts, w&t\n"
                       "Row 3: k to 2 sts before wrapped st, turn\n"
                       "Row 4: p to 2 sts before wrapped st, turn\nRow 5: k to end\nRow 6: p24\n"),
              "24 24 24 24 24 24");
}

TEST(TurnedRow, FollowsFreeCounts) {
    EXPECT_EQ(countsOf("Cast on: multiple of 6 plus 2\nRow 1: k4, turn\nRow 2: p4\n"
                       "Row 3: k1, *yo, k2tog, k4; rep from * to last st, k1\n"),
              "6n + 2 6n + 2 6n + 2");
}

TEST(TurnedRow, SetsAsideWhatNoLaterRowWorks) {
    EXPECT_EQ(countsOf("Cast on 30\nRow 1: k12, turn\nRow 2: p12\nRow 3: k12\nRow 4: p12\n"),
              "12 12 12 12");
    EXPECT_EQ(countsOf("Cast on 30\nRow 1: k12, turn, leave rem sts on a holder\nRow 2: p12\n"),
              "12 12");
}

TEST(TurnedRow, WholeRowMayEndInTurn) {
    EXPECT_EQ(countsOf("Cast on 8\nRow 1: k8, turn\nRow 2: p8, turn\nRow 3: k3, turn\n"
                       "Row 4: p3, turn\nRow 5: k8, turn\n"),
              "8 8 8 8 8");
}

TEST(TurnedRow, IsNotProvenInTheRound) {
    EXPECT_EQ(refusedOf("Cast on 40\nWorked: round\nRnd 1: k10, turn\nRnd 2: k40\n"),
              "it turns before the end of the round, and nothing says how far the work then goes");
}

TEST(TurnedRow, IsNotDrawn) {
    const auto drawn =
        chartFromRows(readWritten("Cast on 8\nRow 1: k4, turn\nRow 2: p4\nRow 3: k8\n").pattern);
    ASSERT_FALSE(drawn);
    EXPECT_EQ(drawn.error().message,
              "Row 1 is not worked over all the stitches there are, which rows of a chart cannot "
              "show.");
}

}  // namespace
}  // namespace lacewright
