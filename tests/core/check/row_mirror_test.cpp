#include "core/check/row_mirror.h"

#include <gtest/gtest.h>

#include "core/base/text.h"
#include "tests/support/charts.h"

namespace lacewright {
namespace {

std::vector<StitchIndex> cells(const std::string& text) {
    std::vector<StitchIndex> found;
    for (const std::string_view id : splitWords(text))
        found.push_back(builtInStitches()->find(id).value());
    return found;
}

std::vector<MirrorStitch> stitches(const std::string& text) {
    std::vector<MirrorStitch> seen;
    for (const StitchIndex index : cells(text))
        seen.push_back(mirrorStitch(*builtInStitches(), index));
    return seen;
}

double ring(const std::string& text) {
    return mirrorOdds(stitches(text), true);
}

TEST(RowMirror, ARepeatAboutItsCentredDecreaseIsFarLikelierThanOneThatIsNot) {
    // Wheel, Miss Lambert, My Knitting Book, 1843, London: "k1, yo, k3, sk2p, k3, yo".
    const double mirrored = ring("k yo k k k sk2p k k k yo");
    EXPECT_GT(mirrored, 1.5);
    EXPECT_LE(ring("k yo k k k sk2p k k yo k"), 0);
    EXPECT_LE(ring("k yo k k k sk2p k k yo"), 0);
    // However the repeat is cut out of the row.
    EXPECT_DOUBLE_EQ(ring("k k k sk2p k k k yo k yo"), mirrored);
}

TEST(RowMirror, LeansChangeSidesUnlessTheRowKnowsOneOnly) {
    EXPECT_GT(ring("k yo ssk s2kp k2tog yo"), 1);
    EXPECT_LE(ring("k yo ssk s2kp ssk k2tog"), 0);
    // Vandyke, in the same book: "yo, k2, k2tog, p1, k2tog, k2, yo, k1" knows one decrease.
    EXPECT_GT(ring("yo k k k2tog p k2tog k k yo k"), 0);
    // With both leans, those that stay are no mirror.
    EXPECT_LE(ring("k2tog yo k yo k2tog k ssk yo k k yo ssk k"), 0);
}

TEST(RowMirror, PlainStitchesThatMirrorSayNothing) {
    EXPECT_LE(ring("k k k k k k"), 0);
    EXPECT_LE(ring("k k p k k"), 0);
    EXPECT_EQ(ring("yo k2tog"), 0);  // too few to mirror
}

TEST(RowMirror, ARowWithoutRepeatMirrorsAboutItsMiddle) {
    EXPECT_GT(mirrorOdds(stitches("k yo ssk k k2tog yo k"), false), 1);
    EXPECT_LE(mirrorOdds(stitches("yo ssk k k2tog yo k k"), false), 0);
}

TEST(RowMirror, OfAChartRowItsRepeatsCountAndGapsDoNot) {
    const auto row = cells("k k yo no-stitch k sk2p k yo k k");
    const std::vector<int> groups{-1, -1, 0, 0, 0, 0, 0, 0, 0, -1};
    const Alphabet alphabet = alphabetOf(test::chartOf({"k k yo no-stitch k sk2p k yo k k"}));
    EXPECT_DOUBLE_EQ(RowMirror(*builtInStitches(), alphabet, groups).odds(row),
                     ring("yo k sk2p k yo k"));
    const std::vector<int> whole(row.size(), -1);
    EXPECT_DOUBLE_EQ(RowMirror(*builtInStitches(), alphabet, whole).odds(row),
                     mirrorOdds(stitches("k k yo k sk2p k yo k k"), false));
}

}  // namespace
}  // namespace lacewright
