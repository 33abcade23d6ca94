// The rules that compare sizes with one another: each with a chart that breaks it and one that
// almost does.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/check/check.h"
#include "core/check/rules/size_family.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"

namespace lacewright {
namespace {

using namespace lacewright::test;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<Finding> findingsOf(const Chart& chart, const std::string& rule) {
    std::vector<Finding> found;
    const Report report = check(chart);
    for (const Finding& finding : report.findings) {
        if (finding.rule == rule) found.push_back(finding);
    }
    // Every size can be knitted by itself, whatever the family looks like.
    EXPECT_TRUE(report.knittable) << describe(report);
    return found;
}

// Two plain rows with a repeat of four columns between one edge column at the right and two at the
// left: 4 n + 3 stitches.
Chart family(std::initializer_list<std::pair<const char*, int>> sizes) {
    Chart chart = chartOf({"k*7", "k*7"});
    withRepeat(chart, "A", 2, 5);
    for (const auto& [name, times] : sizes) withSize(chart, name, 1, 7, times);
    return chart;
}

// The nine letter codes of the women's sizes of the Craft Yarn Council, from the smallest.
TEST(RankOfLetterCode, StandsInTheOrderOfPublishedTables) {
    const char* const kCouncil[] = {"XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"};
    for (std::size_t i = 0; i + 1 < std::size(kCouncil); ++i)
        EXPECT_LT(*rankOfLetterCode(kCouncil[i]), *rankOfLetterCode(kCouncil[i + 1]));
    // EN 13402-3 writes XXL and 3XL (from memory).
    EXPECT_EQ(rankOfLetterCode("XXL"), rankOfLetterCode("2X"));
    EXPECT_EQ(rankOfLetterCode("3XL"), rankOfLetterCode("XXXL"));
    EXPECT_EQ(rankOfLetterCode("2XS"), rankOfLetterCode("XXS"));
    for (const char* name : {"", "X", "XM", "MM", "0X", "2", "2M", "Size M", "SL", "99999999999XL",
                             "LX", "m", "1", "XXXXXXXXXXXXXXXXXXXXXXXXXXXXXXL"})
        EXPECT_FALSE(rankOfLetterCode(name)) << name;
}

TEST(SizeRise, FindsALargerSizeWithFewerStitches) {
    Chart chart = family({{"S", 10}, {"M", 12}, {"L", 11}, {"XL", 13}});
    chart.gauge = {20, 28, {}};
    const auto found = findingsOf(chart, "size-rise");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].severity, Severity::Warning);
    EXPECT_EQ(found[0].row, 1);
    EXPECT_THAT(found[0].sizes, ElementsAre("M", "L"));
    EXPECT_THAT(found[0].columns, ElementsAre(1, 7));
    EXPECT_EQ(found[0].message,
              "Row 1 takes 47 stitches in size L, 4 fewer than in size M (51), though L is the "
              "larger size and comes out 2.0 cm (0.8 in) narrower.");
}

TEST(SizeRise, GoesByLetterCodesWhateverTheOrderOfTheList) {
    EXPECT_THAT(findingsOf(family({{"XL", 14}, {"S", 11}, {"M", 12}}), "size-rise"), IsEmpty());
    EXPECT_EQ(findingsOf(family({{"XL", 11}, {"S", 11}, {"M", 12}}), "size-rise").size(), 1U);
}

TEST(SizeRise, JudgesOtherNamesOnlyWhenTheChartSaysThatTheyRise) {
    Chart chart = family({{"small", 12}, {"large", 11}});
    EXPECT_THAT(findingsOf(chart, "size-rise"), IsEmpty());
    chart.grading.rising = true;
    EXPECT_EQ(findingsOf(chart, "size-rise").size(), 1U);
}

TEST(SizeRise, EqualCountsAreANoteWhereSizesAreMeantToRise) {
    Chart chart = family({{"S", 12}, {"M", 12}});
    EXPECT_THAT(findingsOf(chart, "size-rise"), IsEmpty());  // two sizes may share a cuff
    chart.grading.rising = true;
    const auto found = findingsOf(chart, "size-rise");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].severity, Severity::Note);
    EXPECT_EQ(found[0].message,
              "Sizes S and M both begin with 51 stitches, though the sizes are meant to rise.");
}

// Row 2 binds off stitches at the left, which S works plain.
TEST(SizeRise, LooksAtTheLastRowToo) {
    Chart chart = chartOf({"k*8", "bo*3 k*5"});
    withSize(chart, "S", 1, 5, 1);
    withSize(chart, "M", 1, 7, 1);
    EXPECT_THAT(findingsOf(chart, "size-rise"), IsEmpty());  // 5 and 7, at the end 5 and 5
    chart.sizes[0].reach.end = 6;
    chart.sizes[0].changes = {{1, 1, {1, 6}, {}}};
    chart.sizes[0].substitutions = {{1, 6, Edge::End, "k", {}}};
    const auto found = findingsOf(chart, "size-rise");
    ASSERT_EQ(found.size(), 1U);  // 6 and 7, at the end 6 and 5
    EXPECT_EQ(found[0].row, 2);
    EXPECT_EQ(found[0].message,
              "Row 2 leaves 5 stitches in size M, 1 fewer than in size S (6), though M is the "
              "larger size.");
}

TEST(SizeHalves, FindsTheSizesOfAnotherParity) {
    Chart chart = chartOf({"k*9", "k*9"});
    withRepeat(chart, "A", 2, 5);
    withSize(chart, "S", 1, 7, 10);  // 43
    withSize(chart, "M", 1, 8, 10);  // 44
    withSize(chart, "L", 1, 7, 11);  // 47
    EXPECT_THAT(findingsOf(chart, "size-halves"), IsEmpty());
    chart.grading.halved = true;
    const auto found = findingsOf(chart, "size-halves");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_THAT(found[0].sizes, ElementsAre("M"));
    EXPECT_EQ(
        found[0].message,
        "Row 1 takes an even number of stitches in one size, 44 (M), but an odd one in 43 (S) "
        "and 47 (L): they cannot all be divided into halves in the same way.");
    chart.sizes[1].reach.end = 9;  // 45: all odd
    EXPECT_THAT(findingsOf(chart, "size-halves"), IsEmpty());
}

TEST(SizeHalves, OfAsManyTheOddOnesStandOut) {
    Chart chart = chartOf({"k*9", "k*9"});
    withSize(chart, "S", 1, 7, 1);
    withSize(chart, "M", 1, 8, 1);
    chart.grading.halved = true;
    const auto found = findingsOf(chart, "size-halves");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_THAT(found[0].sizes, ElementsAre("S"));
}

// Common practice, no source: shoulders joined by a three-needle bind-off have equal counts.
TEST(SizeShoulders, AreCountedAsEachSizeWorksThem) {
    Chart chart = chartOf({"k*12", "k*3 bo*6 k*3"});
    withRepeat(chart, "A", 2, 3);
    withSize(chart, "S", 1, 12, 1);
    withSize(chart, "M", 1, 12, 4);  // 1 + 4 x 2 stitches at the right
    chart.grading.shoulders = {{1, 1, 3, {}}, {1, 10, 12, {}}};
    const auto found = findingsOf(chart, "size-shoulders");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].severity, Severity::Warning);
    EXPECT_EQ(found[0].row, 2);
    EXPECT_THAT(found[0].sizes, ElementsAre("M"));
    EXPECT_THAT(found[0].columns, ElementsAre(10, 12));
    EXPECT_EQ(found[0].message,
              "Size M leaves 3 stitches in columns 10 to 12 of row 2, but columns 1 to 3 of row 2 "
              "leave 9: they cannot be joined stitch by stitch.");
}

TEST(SizeShoulders, OfAnotherPieceAreGivenForEachSize) {
    Chart chart = chartOf({"k*6", "k*6"});
    withRepeat(chart, "A", 2, 3);
    withSize(chart, "S", 1, 6, 3).shoulder = 10;
    withSize(chart, "M", 1, 6, 4).shoulder = 11;
    const auto found = findingsOf(chart, "size-shoulders");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].message,
              "Size M leaves 12 stitches in columns 1 to 6 of row 2, but the shoulder it is joined "
              "to has 11: they cannot be joined stitch by stitch.");
}

TEST(SizeShoulders, CountTheStitchesThatASizeSubstitutes) {
    Chart chart = chartOf({"k*6", "k*6"});
    Size& size = withSize(chart, "S", 1, 6, 1);
    size.shoulder = 7;
    size.substitutions = {{1, 1, Edge::Start, "kfb", {}}};
    EXPECT_THAT(findingsOf(chart, "size-shoulders"), IsEmpty());
}

// Body measurements and ease: Craft Yarn Council, women's sizes and the fit "classic", 5 to 10 cm.
TEST(SizeEase, IsFinishedWidthLessBody) {
    Chart chart = family({{"S", 20}, {"M", 24}});  // 83 and 99 stitches
    chart.gauge = {20, 28, {}};
    chart.grading.pieces = 2;
    chart.grading.edgeStitches = 1;
    chart.grading.leastEase = 5;
    chart.grading.mostEase = 10;
    chart.sizes[0].body = 83.5;  // the middle of 81 to 86 cm; 85 stitches are 42.5 cm, twice 85 cm
    chart.sizes[1].body = 94;    // the middle of 91.5 to 96.5 cm; 2 x 50.5 cm
    const auto found = findingsOf(chart, "size-ease");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_THAT(found[0].sizes, ElementsAre("S"));
    EXPECT_EQ(found[0].row, 1);
    EXPECT_EQ(found[0].message,
              "Size S measures 85.0 cm (33.5 in) around, 2 pieces of 42.5 cm (16.7 in), for a body "
              "of 83.5 cm (32.9 in): its ease of +1.5 cm (0.6 in) is less than the least, +5.0 cm "
              "(2.0 in).");
    chart.sizes[0].body = 80;  // ease 5: just enough
    EXPECT_THAT(findingsOf(chart, "size-ease"), IsEmpty());
    chart.sizes[0].body = 74;  // ease 11
    EXPECT_THAT(findingsOf(chart, "size-ease").at(0).message,
                testing::HasSubstr("more than the most, +10.0 cm"));
}

TEST(SizeEase, IsNotJudgedWithoutBodyGaugeOrRange) {
    Chart chart = family({{"S", 20}});
    chart.grading.leastEase = 5;
    chart.gauge = {20, 28, {}};
    EXPECT_THAT(findingsOf(chart, "size-ease"), IsEmpty());
    chart.sizes[0].body = 200;
    EXPECT_EQ(findingsOf(chart, "size-ease").size(), 1U);
    chart.gauge = {};
    EXPECT_THAT(findingsOf(chart, "size-ease"), IsEmpty());
    chart.gauge = {20, 28, {}};
    chart.grading.leastEase.reset();
    EXPECT_THAT(findingsOf(chart, "size-ease"), IsEmpty());
}

}  // namespace
}  // namespace lacewright
