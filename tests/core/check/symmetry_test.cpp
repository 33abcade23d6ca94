#include "core/check/symmetry.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/check/beliefs.h"
#include "tests/support/motifs.h"

namespace lacewright {
namespace {

std::vector<SymmetryMap> mapsOf(const Chart& chart) {
    const Alphabet alphabet = alphabetOf(chart);
    const LetterGrid grid(chart, alphabet, 0, chart.height() - 1);
    return symmetriesOf(grid, alphabet, regionsOf(chart, grid));
}

bool has(const std::vector<SymmetryMap>& maps, bool ring, bool mirror, int dx, int dy) {
    return std::any_of(maps.begin(), maps.end(), [&](const SymmetryMap& map) {
        return map.region.wrapsAcross == ring && map.mirror == mirror && map.dx == dx &&
               map.dy == dy;
    });
}

TEST(Symmetry, TheGroundIsTheMostFrequentStitchAndEveryLeanHasItsMirror) {
    const Alphabet alphabet = alphabetOf(test::motif("", 0, {"k k k yo k2tog k"}));
    EXPECT_EQ((*builtInStitches())[alphabet.stitches[0]].id, "k");
    const auto k2tog = alphabet.letterOf[builtInStitches()->find("k2tog").value()];
    const auto ssk = alphabet.letterOf[builtInStitches()->find("ssk").value()];
    ASSERT_NE(ssk, Alphabet::kNone);
    EXPECT_EQ(alphabet.mirrors[static_cast<std::size_t>(k2tog)], ssk);
    EXPECT_EQ(alphabet.mirrors[static_cast<std::size_t>(ssk)], k2tog);
}

TEST(Symmetry, FindsAMirrorThatSwapsLeans) {
    const Chart chart =
        test::motif("", 0,
                    {"k yo ssk 5*k k2tog yo k", "11*k", "2*k yo ssk 3*k k2tog yo 2*k", "11*k",
                     "3*k yo ssk k k2tog yo 3*k", "11*k"});
    const auto maps = mapsOf(chart);
    // Columns 1 and 11 change places: x + x' = 10.
    EXPECT_TRUE(has(maps, false, true, 10, 0));
}

TEST(Symmetry, FindsAHalfDropAroundTheRepeat) {
    const Chart chart = test::motif("", 0,
                                    {"k yo s2kp yo 4*k", "8*k", "yo 3*k yo s2kp 2*k", "8*k",
                                     "4*k k yo s2kp yo", "8*k", "yo s2kp 2*k yo 3*k", "8*k"});
    EXPECT_TRUE(has(mapsOf(chart), true, false, 4, 4));
}

TEST(Symmetry, FindsWhereEyeletsWanderBesidePurlColumns) {
    // Diagonal check, Miss Lambert, My Knitting Book, 1843, London: the pair moves by a stitch in
    // every second round, the purl stitches stand.
    const Chart chart =
        test::motif("", 0,
                    {"p yo skp 4*k p", "p 6*k p", "p k yo skp 3*k p", "p 6*k p",
                     "p 2*k yo skp 2*k p", "p 6*k p", "p 3*k yo skp k p", "p 6*k p"});
    const auto maps = mapsOf(chart);
    EXPECT_TRUE(has(maps, false, false, 1, 2));
    EXPECT_TRUE(has(maps, false, false, 0, 2));
}

TEST(Symmetry, ImagesAndOriginsAreInverse) {
    for (const Chart& chart : test::handbookMotifs()) {
        for (const SymmetryMap& map : mapsOf(chart)) {
            for (int y = 0; y < chart.height(); ++y) {
                for (int x = 0; x < chart.width; ++x) {
                    const GridPlace image = imageOf(map, {x, y});
                    if (!image.inside()) continue;
                    EXPECT_EQ(originOf(map, image), (GridPlace{x, y})) << chart.name;
                }
            }
        }
    }
}

TEST(Symmetry, AnEmptyOrPlainChartHasNone) {
    EXPECT_TRUE(mapsOf(blankChart(12, 8)).empty());
}

}  // namespace
}  // namespace lacewright
