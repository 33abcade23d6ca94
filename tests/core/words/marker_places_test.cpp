#include "core/words/worked_order.h"
#include "tests/core/words/reading.h"

// How far a row goes where it is worked up to a place. Counted by hand.
namespace lacewright {
namespace {

const std::string kRaglan =
    "Cast on 21\nSet-up row (WS): p10, pm, p1, pm, p10\n"
    "Row 1: k to m, yo, sm, k1, sm, yo, k to end\nRow 2: purl\nRep rows 1-2 3 more times.\n";

TEST(Landmarks, MarkersMoveWhileRowsAreRepeated) {
    EXPECT_EQ(countsOf(kRaglan), "21 23 23 x3");
    EXPECT_EQ(countsOf(kRaglan + "Row 3: k to 2 sts before m, k2tog, sm, k1, sm, ssk, k to end\n"),
              "21 23 23 27 x3");
}

// Where the overs of row `index` stand, counted from the start of the row as it is worked.
std::vector<std::size_t> oversOf(const Chart& chart, int row) {
    std::vector<std::size_t> overs;
    std::size_t at = 0;
    for (int column = 1; column <= chart.width; ++column) {
        const StitchIndex cell = chart.row(row).at(column);
        if (cell == kCovered) continue;
        const Stitch& stitch = (*chart.stitches)[cell];
        if (stitch.kind == StitchKind::NoStitch) continue;
        if (stitch.id == "yo") overs.push_back(at);
        ++at;
    }
    return overs;
}

TEST(Landmarks, RepeatedRowsAreDrawnWhereTheMarkersAreThen) {
    const Chart chart = chartOfText(kRaglan);
    ASSERT_EQ(chart.height(), 9);
    EXPECT_EQ(oversOf(chart, 1), (std::vector<std::size_t>{10, 12}));
    EXPECT_EQ(oversOf(chart, 3), (std::vector<std::size_t>{11, 13}));
    EXPECT_EQ(oversOf(chart, 7), (std::vector<std::size_t>{13, 15}));
}

TEST(Landmarks, ARowThatMissesItsMarkerIsAtFault) {
    const std::string placed = "Cast on 12\nRow 1: k6, pm, k6\n";
    EXPECT_EQ(verdictOf(placed + "Row 2: k to 2 sts before m, k2tog, sm, k6"), "yes");
    EXPECT_EQ(verdictOf(placed + "Row 2: k to 2 sts before m, k2tog, sm, k7"), "row 2");
    EXPECT_EQ(verdictOf(placed + "Row 2: k to 8 sts before m, k8, sm, k6"), "row 2");
    const std::string rounds = "Cast on 40\nRnd 1: [k10, pm] 4 times\n";
    EXPECT_EQ(verdictOf(rounds + "Rnd 2: [k to 2 sts before m, k2tog, sm] 4 times"), "yes");
    EXPECT_EQ(verdictOf(rounds + "Rnd 2: [k to 2 sts before m, k2tog, sm] 3 times, k9"), "row 2");
}

TEST(Landmarks, AMarkerThatDoesNotLieThereIsAFault) {
    const std::string placed = "Cast on 12\nRow 1: k6, pm, k6\n";
    // One stitch is left before the marker.
    EXPECT_EQ(verdictOf(placed + "Row 2: p to 3 sts before m, p2tog, sm, p to end"), "row 2");
    EXPECT_EQ(verdictOf(placed + "Row 2: p to 3 sts before m, p2tog, p1, sm, p to end"), "yes");
    EXPECT_EQ(verdictOf(placed + "Row 2: purl, slipping markers"), "yes");
    // One marker was placed, and two are spoken of.
    EXPECT_EQ(verdictOf(placed + "Row 2: p to m, sm, p to m, sm, p to end"), "row 2");
    EXPECT_EQ(verdictOf("Cast on 12\nRow 1: k to 3 sts before m, k2tog, k to end"), "row 1");
    // Words between the rows may have placed others.
    EXPECT_EQ(verdictOf("Cast on 12\n\nPlace a marker at each side of the centre.\n\n"
                        "Row 1: k to 3 sts before m, k2tog, k to end"),
              "yes");
    const ReadRows read = readWritten(placed + "Row 2: p to 3 sts before m, p2tog, sm, p to end");
    EXPECT_EQ(proveWritten(read.pattern).rows[1].counted.uncountable,
              "it slips a marker where none lies");
}

TEST(Landmarks, PartsOfUnlikeLengthsAreRepeated) {
    const std::string yoke =
        "Cast on 62\nSet-up row (WS): p11, pm, p8, pm, p24, pm, p8, pm, p11\n"
        "Row 1: *k to 1 st before m, m1, k1, sm, k1, m1; rep from * 3 more times, k to end\n"
        "Row 2: p\nRep rows 1-2 2 more times\n";
    EXPECT_EQ(countsOf(yoke), "62 70 70 x2");
    const Chart chart = chartOfText(yoke);
    EXPECT_EQ(chart.height(), 7);
}

TEST(Landmarks, CentreOfTheRow) {
    const Chart chart = chartOfText(
        "Cast on 15\nRow 1: k to centre st, yo, k1, yo, k to end\nRow 2: p\n"
        "Row 3: k to 1 st before centre st, yo, k3, yo, k to end\n");
    EXPECT_EQ(oversOf(chart, 0), (std::vector<std::size_t>{7, 9}));
    EXPECT_EQ(oversOf(chart, 2), (std::vector<std::size_t>{7, 11}));
}

TEST(Landmarks, BoundOffStitches) {
    const std::string text =
        "Cast on 20\nRow 1: k9, bo 2, k to end\nRow 2: p to bound-off sts, co 2, p to end\n";
    EXPECT_EQ(countsOf(text), "18 20");
    const auto rows = readWritten(text).pattern.rows;
    const auto* group = std::get_if<Group>(&rows[1].elements.front().what);
    ASSERT_NE(group, nullptr);
    EXPECT_EQ(group->times, Figure(9));
}

}  // namespace
}  // namespace lacewright
