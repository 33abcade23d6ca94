#include "core/chart/row.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

StitchIndex id(const char* name) {
    return builtInStitches()->find(name).value();
}

TEST(Row, TalliesAnyRunOfColumns) {
    // Drawn left to right: k2tog yo k; so column 1 is the knit stitch.
    const Row row({id("k"), id("yo"), id("k2tog")}, *builtInStitches());
    EXPECT_EQ(row.tally(1, 3), (Tally{3, 3}));
    EXPECT_EQ(row.tally(2, 2), (Tally{0, 1}));
    EXPECT_EQ(row.tally(3, 2), (Tally{0, 0}));
    EXPECT_EQ(row.total(), tallyOf(row.cells(), *builtInStitches()));
}

TEST(Row, CountsAWideStitchInItsRightmostCell) {
    const Row row({id("c11r"), kCovered, id("k")}, *builtInStitches());
    EXPECT_EQ(row.tally(1, 1), (Tally{2, 2}));
    EXPECT_EQ(row.tally(2, 3), (Tally{1, 1}));
    EXPECT_EQ(row.ownerOf(2), 1);
    EXPECT_TRUE(row.traits().hasWide);
    EXPECT_FALSE(row.traits().hasBroken);
}

TEST(Row, NoticesAWideStitchWithoutItsCells) {
    EXPECT_TRUE(Row({id("c11r"), id("k")}, *builtInStitches()).traits().hasBroken);
    EXPECT_TRUE(Row({id("k"), kCovered}, *builtInStitches()).traits().hasBroken);
    EXPECT_TRUE(Row({id("k"), id("c11r")}, *builtInStitches()).traits().hasBroken);
}

}  // namespace
}  // namespace lacewright
