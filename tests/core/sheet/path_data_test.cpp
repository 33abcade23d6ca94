#include "core/sheet/path_data.h"

#include <gtest/gtest.h>

#include "core/stitch/catalogue.h"

namespace lacewright {
namespace {

TEST(PathTail, ReadsLettersNumbersAndArcFlagsWithoutBlanks) {
    const auto steps = parsePathTail("a5 5 0 1 0 .1 0zl-3-4h2");
    ASSERT_TRUE(steps);
    ASSERT_EQ(steps->size(), 4U);
    EXPECT_EQ((*steps)[0], (PathStep{'a', {5, 5, 0, 1, 0, .1, 0}}));
    EXPECT_EQ((*steps)[2], (PathStep{'l', {-3, -4}}));
    EXPECT_EQ(*parsePathTail("a5 5 0 10.1 0"), *parsePathTail("a5 5 0 1 0 .1 0"));
}

TEST(PathTail, ArgumentsWithoutLetterRepeatTheStepAndGoOnAsLinesAfterAMove) {
    EXPECT_EQ(*parsePathTail("l1 2 3 4"), *parsePathTail("l1 2l3 4"));
    EXPECT_EQ(*parsePathTail("m1 2 3 4"), *parsePathTail("m1 2l3 4"));
}

TEST(PathTail, RefusesAbsoluteLettersMissingNumbersAndNonsense) {
    for (const char* bad :
         {"L1 2", "l1", "5 5", "l1 2z3", "a1 1 0 2 0 1 1", "l1e9 0", "lnan 0", "x"}) {
        EXPECT_FALSE(parsePathTail(bad)) << bad;
    }
    EXPECT_TRUE(parsePathTail("")->empty());
}

TEST(PathTail, CountsWhatAPainterMakesOfIt) {
    EXPECT_EQ(pathElements(*parsePathTail("l1 1")), 2);
    EXPECT_EQ(pathElements(*parsePathTail("a5 5 0 1 0 .1 0z")), 14);
    EXPECT_EQ(pathElements(*parsePathTail("c0 0 1 1 2 2h3")), 5);
}

TEST(PathTail, ReadsEveryBuiltInGlyph) {
    const StitchCatalogue& stitches = *builtInStitches();
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        for (const GlyphStroke& stroke : stitches[static_cast<StitchIndex>(i)].glyph) {
            EXPECT_TRUE(parsePathTail(stroke.tail)) << stroke.tail;
        }
    }
}

}  // namespace
}  // namespace lacewright
