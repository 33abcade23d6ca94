#include "core/verdict/slip_search.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/judged_text.h"

// Slips put into texts by hand, and what is said of them. Counts follow from the definitions of the
// stitches (Craft Yarn Council abbreviations); the texts are invented unless a source is named.
namespace lacewright {
namespace {

using test::findingOf;
using test::judged;
using test::judgedInAllSizes;
using test::labelsOf;

using Labels = std::vector<std::string>;

// Chevron Pattern, Miss Lambert, My Knitting Book, 1843, London: "k2tog, k3, yo, k3" over 8.
std::string chevron(const std::string& row) {
    return "Cast on: multiple of 8\nRow 1: *" + row +
           "; rep from * to end\nRow 2: p to end\n"
           "Row 3: *k2tog, k3, yo, k3; rep from * to end\nRow 4: p to end\n"
           "Row 5: *k2tog, k3, yo, k3; rep from * to end\nRow 6: p to end\n";
}

TEST(SlipSearch, PutsAStitchInWhereLikeRowsHaveIt) {
    const Report report = judged(chevron("k2tog, k3, k3"));
    const Finding* fault = findingOf(report, "continuity");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(labelsOf(fault).front(), "Row 1: put in yo as stitch 5 of the repeat");
    ASSERT_FALSE(fault->suspects.empty());
    EXPECT_EQ(fault->suspects[0].row, 1);
    EXPECT_EQ(fault->suspects[0].column, 5);
    EXPECT_EQ(fault->mends[0].reworked,
              (std::vector<ReworkedRow>{{1, {"k2tog", "k", "k", "k", "yo", "k", "k", "k"}}}));
}

TEST(SlipSearch, LeavesOutWhatIsWrittenTwice) {
    const Report report = judged(chevron("k2tog, k2tog, k3, yo, k3"));
    EXPECT_EQ(labelsOf(findingOf(report, "cast-on")).front(),
              "Row 1: leave out k2tog, stitch 2 of the repeat");
}

TEST(SlipSearch, WorksAStitchAsLikeRowsDo) {
    const Report report = judged(chevron("k2tog, k3, k1, k3"));
    ASSERT_NE(findingOf(report, "cast-on"), nullptr);
    EXPECT_EQ(labelsOf(findingOf(report, "cast-on")).front(),
              "Row 1: work yo instead of k, stitch 5 of the repeat");
}

TEST(SlipSearch, TheLastRowMayMakeWhatItLikesAndStillLosesNoStitch) {
    // Nothing follows row 5: the yarn over shows only in that the rows no longer close.
    const Report report = judged(
        "Cast on: multiple of 8\nRow 1: *k2tog, k3, yo, k3; rep from * to end\nRow 2: p to end\n"
        "Row 3: *k2tog, k3, yo, k3; rep from * to end\nRow 4: p to end\n"
        "Row 5: *k2tog, k6; rep from * to end\nRow 6: p to end\n");
    EXPECT_FALSE(report.hasFault());
    const Finding* closing = findingOf(report, "closing");
    ASSERT_NE(closing, nullptr);
    EXPECT_EQ(closing->severity, Severity::Note);
    EXPECT_EQ(labelsOf(closing).front(), "Row 5: put in yo as stitch 5 of the repeat");
}

TEST(SlipSearch, RowsThatShapeOnPurposeAreNotMended) {
    // Every right-side row narrows; nothing would make the rows close but undoing all of it.
    const Report narrowing = judged(
        "Cast on: 20\nRow 1: k1, ssk, k14, k2tog, k1\nRow 2: p to end\n"
        "Row 3: k1, ssk, k12, k2tog, k1\nRow 4: p to end\n");
    ASSERT_NE(findingOf(narrowing, "closing"), nullptr);
    EXPECT_EQ(labelsOf(findingOf(narrowing, "closing")), Labels());
    // One row that increases throughout is a flare, not a slip.
    const Report flare =
        judged("Cast on: 20\nRow 1: k to end\nRow 2: *k1, m1; rep from * to end\n");
    ASSERT_NE(findingOf(flare, "closing"), nullptr);
    EXPECT_EQ(labelsOf(findingOf(flare, "closing")), Labels());
}

TEST(SlipSearch, ARepeatNarrowerThanThoseOfOtherRowsIsWorkedMoreOften) {
    // Row 3 repeats over 2 where row 1 repeats over 8: its lost yarn over is one slip, not four.
    const Report report = judged(
        "Cast on: multiple of 8\nRow 1: *k2tog, k3, yo, k3; rep from * to end\nRow 2: p to end\n"
        "Row 3: *k2tog; rep from * to end\nRow 4: p to end\n"
        "Row 5: *k2tog, k3, yo, k3; rep from * to end\nRow 6: p to end\n");
    ASSERT_NE(findingOf(report, "continuity"), nullptr);
    EXPECT_THAT(labelsOf(findingOf(report, "continuity")),
                testing::Contains(testing::StartsWith("Row 3: put in yo as stitch")));
}

TEST(SlipSearch, WithinBracketsAStitchIsMendedEachTime) {
    // 4 x (k2tog, yo) + 11 = 19, as row 2 takes; without the yarn overs row 1 leaves 15.
    const Report report = judged(
        "Cast on: multiple of 19\nRow 1: *k11, [k2tog] 4 times; rep from * to end\n"
        "Row 2: *[yo, p2tog] 4 times, p11; rep from * to end\n");
    const Finding* fault = findingOf(report, "continuity");
    ASSERT_NE(fault, nullptr);
    EXPECT_THAT(labelsOf(fault),
                testing::Contains(testing::AllOf(testing::HasSubstr("put in yo as stitch"),
                                                 testing::EndsWith(", each time"))));
}

TEST(SlipSearch, AStatedCountSaysWhichOfTwoRowsIsWrong) {
    // Row 1 leaves 10; row 3 takes 11. The count after row 1 says that row 1 has lost a stitch.
    const std::string rows =
        "Row 1: k2, yo, k2tog, k3, ssk, k2%\nRow 2: p to end\nRow 3: k3, yo, k2tog, k1, ssk, yo, "
        "k3\n";
    const auto with = [&](const std::string& count) {
        std::string text = "Cast on: 11\n" + rows;
        return judged(text.replace(text.find('%'), 1, count));
    };
    const Report said = with(" (11 sts)");
    // One cause, told where it shows first.
    EXPECT_EQ(findingOf(said, "continuity"), nullptr);
    const Finding* fault = findingOf(said, "stated-count");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(fault->severity, Severity::Fault);
    ASSERT_EQ(fault->folded.size(), 1U);
    EXPECT_EQ(fault->folded[0].rule, "continuity");
    ASSERT_FALSE(fault->suspects.empty());
    for (const Suspect& suspect : fault->suspects)
        EXPECT_TRUE(suspect.row == 1 || suspect.weight < 0.05) << suspect.row;
}

TEST(SlipSearch, TheStitchesLeftBehindARepeatMayBeMiscounted) {
    // 25 = 2 + 2 x 10 + 3: the repeat must end 3 stitches before the end, as in row 1.
    const std::string text =
        "Cast on 25 sts.\nRow 1: k2, *k1, yo, ssk, k5, k2tog, yo; rep from * to last 3 sts, k3.\n"
        "Row 2: purl.\nRow 3: k2, *k2, yo, ssk, k3, k2tog, yo, k1; rep from * to last 2 sts, k3.\n"
        "Row 4: purl.\n";
    const Report report = judged(text);
    const Finding* fault = findingOf(report, "continuity");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(labelsOf(fault).front(), "Row 3: repeat to the last 3 sts");
    ASSERT_FALSE(fault->suspects.empty());
    EXPECT_EQ(fault->suspects[0].row, 3);
    EXPECT_EQ(fault->suspects[0].column, 13);  // the first stitch behind the repeat
}

TEST(SlipSearch, AMendThatMakesAnotherSizeFailIsNotOffered) {
    // Four loops divide 12, not 15; three divide both, five 15 alone.
    const Report report = judgedInAllSizes(
        "Sizes: S (M)\nCast on 12 (15) sts.\nRow 1: *yo, k2tog, k2; rep from * to end.\n"
        "Row 2: purl.\n");
    const Finding* fault = findingOf(report, "cast-on");
    ASSERT_NE(fault, nullptr);
    const auto labels = labelsOf(fault);
    EXPECT_THAT(labels, testing::Contains("Row 1: leave out k, stitch 4 of the repeat"));
    EXPECT_THAT(labels, testing::Not(testing::Contains(testing::HasSubstr("put in"))));
}

TEST(SlipSearch, RowsThatShareATextAreMendedTogether) {
    // 14 = 11 + 3: row 2 ends its repeat a stitch too late, and row 4 with it.
    const Report report = judged(
        "Cast on a multiple of 11 sts + 3.\nRow 1: P3, *k4, p2, k2tog, yo, p3; rep from * to end.\n"
        "Row 2: *K3, p2, k2, p4; rep from * to last 2 sts, k2.\n"
        "Row 3: P3, *k4, p2, yo, ssk, p3; rep from * to end.\nRow 4: As row 2.\n");
    const auto faults = [&] {
        return std::count_if(report.findings.begin(), report.findings.end(),
                             [](const Finding& f) { return f.severity == Severity::Fault; });
    };
    EXPECT_EQ(faults(), 1);
    const Finding* fault = findingOf(report, "continuity");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(fault->row, 2);
    ASSERT_EQ(fault->folded.size(), 1U);
    EXPECT_EQ(fault->folded[0].row, 4);
    EXPECT_THAT(labelsOf(fault), testing::Each(testing::StartsWith("Row 2:")));
}

TEST(SlipSearch, HowFarAStretchGoesToAMarkerIsFoundAnewForEverySlip) {
    // Eight sections of 10 grow by 2 each; without the second yarn over by 1.
    const Report report = judged(
        "Cast on 80 sts and join.\nRnd 1: *k10, pm; rep from * around.\n"
        "Rnd 2: *k1, yo, k to 1 st before m, yo, k1, sm; rep from * around. (96 sts)\n"
        "Rnd 3: knit.\n"
        "Rnd 4: *k1, yo, k to 1 st before m, k1, sm; rep from * around. (112 sts)\n");
    const Finding* said = findingOf(report, "stated-count");
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(labelsOf(said).front(), "Rnd 4: put in yo as stitch 13, each time");
}

TEST(SlipSearch, AStretchMayEndAtAnotherPlaceBeforeItsMarker) {
    const Report report = judged(
        "Cast on 40 sts.\nRow 1: k20, pm, k20.\nRow 2: purl.\n"
        "Row 3: k to 3 sts before m, k2tog, sm, ssk, k to end. (38 sts)\nRow 4: purl.\n"
        "Row 5: k to 2 sts before m, k2tog, sm, ssk, k to end. (36 sts)\n");
    const Finding* fault = findingOf(report, "uncountable");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(fault->row, 3);
    EXPECT_THAT(labelsOf(fault), testing::Contains("Row 3: work to 2 sts before the marker"));
}

TEST(SlipSearch, ARepeatIsWhatItIsInAnotherRow) {
    // 4 x 16 between the markers, as row 3 says.
    const Report report = judged(
        "Cast on 82 sts.\nRow 1: k9, pm, *k2tog, yo, k5, yo, ssk, k6; rep from * 3 times more, pm, "
        "k9.\nRow 2: p to m, sm, p to m, sm, p to end.\n"
        "Row 3: k2, ssk, k to m, sm, *k2tog, yo, k5, yo, ssk, k7; rep from * to m, sm, k to last 4 "
        "sts, k2tog, k2. (80 sts)\nRow 4: purl.\n");
    const Finding* fault = findingOf(report, "cast-on");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(labelsOf(fault).front(), "Row 1: put in k as stitch 25, each time");
}

TEST(SlipSearch, AsManyStitchesTogetherAsTheRowBelowMadeOfOne) {
    const Report report = judged(
        "Nupp: (k1, yo, k1, yo, k1) in same st\nCast on a multiple of 4 sts plus 1.\n"
        "Row 1: k2, *nupp, k3; rep from * to last 3 sts, nupp, k2.\n"
        "Row 2: p2, *p4tog, p3; rep from * to last 7 sts, p5tog, p2.\n");
    const Finding* fault = findingOf(report, "continuity");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(labelsOf(fault).front(),
              "Row 2: work p5tog instead of p4tog, stitch 1 of the repeat");
}

TEST(SlipSearch, LikeRowsAreWordedAlike) {
    // An edging that grows by a stitch in one place; row 3 has lost one, and its like stand there.
    const Report report = judged(
        "Cast on 9 sts.\nRow 1: sl 1, k2, yo, k2tog, k2, yo twice, k2tog.\n"
        "Row 2: k2, p1, k3, yo, k2tog, k2.\nRow 3: sl 1, k2, yo, k2tog, k2, yo twice, k2tog.\n"
        "Row 4: k2, p1, k4, yo, k2tog, k2.\nRow 5: sl 1, k2, yo, k2tog, k6.\n"
        "Row 6: bo 2, k5, yo, k2tog, k2.\n");
    const Finding* fault = findingOf(report, "continuity");
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(labelsOf(fault).front(), "Row 3: put in k as stitch 8");
}

TEST(SlipSearch, ARowMirrorsWithItsEdgesWhicheverDecreaseLeansLeft) {
    // k1, *yo, sl1-k1-psso, k1, k2tog, yo, k1*: 6n + 1, and the k1 between the decreases is lost.
    const Report report = judged(
        "Cast on a multiple of 6 sts plus 1.\nRow 1 (WS): p.\n"
        "Row 2: k1, *yfwd, sl 1, k1, psso, k2tog, yfwd, k1; rep from * to end.\nRow 3: p.\n"
        "Row 4: k2, *yfwd, sl 1, k2tog, psso, yfwd, k3; rep from *, ending last rep k2.\n");
    const Finding* fault = findingOf(report, "continuity");
    ASSERT_NE(fault, nullptr);
    EXPECT_THAT(labelsOf(fault), testing::Contains("Row 2: put in k as stitch 3 of the repeat"));
}

TEST(SlipSearch, WhatNoSingleSlipExplainsIsLeftToTheOthers) {
    const ReadRows read = readWritten("Cast on: 13\nRow 1: k20.\n");
    Report report = reportOnRows(read, {0}).report;
    ASSERT_FALSE(report.findings.empty());
    SlipSearch search(read.pattern, 0);
    Finding finding = report.findings.front();
    EXPECT_EQ(search.adviseOn(finding), SlipSearch::Explained::Not);
    EXPECT_EQ(finding, report.findings.front());
}

}  // namespace
}  // namespace lacewright
