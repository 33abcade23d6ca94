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

TEST(Row, SumsUpFromAnyColumnOn) {
    const StitchCatalogue& stitches = *builtInStitches();
    const char* const ids[] = {"k", "yo", "k2tog", "k3tog"};
    std::vector<StitchIndex> cells;
    for (std::size_t column = 0; column < 1300; ++column)
        cells.push_back(id(ids[column * column % 11 % 4]));
    const Row row(cells, stitches);
    for (const int first : {1, 2, 511, 512, 513, 1024, 1300}) {
        for (const int last : {1, 510, 511, 512, 1023, 1025, 1300}) {
            if (last < first) continue;
            const std::vector<int> nets = row.netsFrom(first, last);
            ASSERT_EQ(nets.size(), static_cast<std::size_t>(last - first + 1));
            int net = 0;
            for (int column = first; column <= last; ++column) {
                net += stitches[row.at(column)].net();
                ASSERT_EQ(nets[static_cast<std::size_t>(column - first)], net)
                    << first << " to " << column;
            }
        }
    }
}

TEST(Row, NoticesAWideStitchWithoutItsCells) {
    EXPECT_TRUE(Row({id("c11r"), id("k")}, *builtInStitches()).traits().hasBroken);
    EXPECT_TRUE(Row({id("k"), kCovered}, *builtInStitches()).traits().hasBroken);
    EXPECT_TRUE(Row({id("k"), id("c11r")}, *builtInStitches()).traits().hasBroken);
}

TEST(Row, IsTheSameHoweverItWasMade) {
    const StitchCatalogue& stitches = *builtInStitches();
    std::vector<StitchIndex> plain(700, id("k"));
    plain[100] = id("k2tog");
    plain[640] = id("yo");
    const Row like(plain, stitches);
    for (const char* other : {"ssk", "k3tog", "yo", "k", "c11r", "no-stitch", "bo", "co"}) {
        for (const std::size_t at : {std::size_t{100}, std::size_t{698}}) {
            std::vector<StitchIndex> cells = plain;
            cells[at] = id(other);
            const Row fresh(cells, stitches);
            const Row made(cells, stitches, like);
            EXPECT_EQ(made, fresh);
            EXPECT_EQ(made.traits(), fresh.traits()) << other << " at " << at;
            for (int column = 0; column <= made.width(); ++column) {
                ASSERT_EQ(made.upTo(column), fresh.upTo(column)) << other << " at " << at;
            }
        }
    }
}

TEST(Row, KnowsWhereItDiffersFromAnother) {
    std::vector<StitchIndex> cells(300, id("k"));
    EXPECT_FALSE(differingColumns(cells, cells));
    for (const std::size_t first : {0, 1, 63, 64, 65, 128, 299}) {
        for (const std::size_t last : {0, 63, 64, 200, 236, 299}) {
            if (last < first) continue;
            std::vector<StitchIndex> others = cells;
            others[first] = others[last] = id("p");
            const auto found = differingColumns(cells, others);
            ASSERT_TRUE(found);
            EXPECT_EQ(found->right, static_cast<int>(first) + 1);
            EXPECT_EQ(found->left, static_cast<int>(last) + 1);
        }
    }
}

}  // namespace
}  // namespace lacewright
