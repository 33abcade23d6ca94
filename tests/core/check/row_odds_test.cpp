#include "core/check/row_odds.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <random>

namespace lacewright {
namespace {

// `alone`: what a change may be worth as the only one, from this on.
std::vector<CellAlternatives> randomCells(std::mt19937& random, int cells, double alone) {
    std::uniform_real_distribution<double> odds(0.001, 2.0);
    std::uniform_real_distribution<double> only(alone, 5.0);
    std::vector<CellAlternatives> row;
    for (int column = 1; column <= cells; ++column) {
        CellAlternatives cell{column, {}};
        for (int letter = 0; letter < 3; ++letter) {
            const int takes = static_cast<int>(random() % 5) - 2;
            const int makes = static_cast<int>(random() % 3) - 1;
            if (takes == 0 && makes == 0) continue;
            cell.others.push_back(
                {static_cast<Alphabet::Letter>(letter), takes, makes, odds(random), only(random)});
        }
        row.push_back(cell);
    }
    return row;
}

struct World {
    std::vector<LetterChange> changes;
    double odds = 1;
    double alone = 1;
};

// Every set of changes with the wanted effect whose running sums, from either end, stay within
// `reach`: with few cells and a wide reach, all of them.
std::vector<World> worldsOf(const std::vector<CellAlternatives>& cells, int takes, int makes) {
    std::vector<World> worlds;
    const std::function<void(std::size_t, int, int, World)> go = [&](std::size_t i, int t, int m,
                                                                     World world) {
        if (i == cells.size()) {
            if (t != takes || m != makes || world.changes.empty()) return;
            if (world.changes.size() == 1) world.odds *= world.alone;
            worlds.push_back(world);
            return;
        }
        go(i + 1, t, m, world);
        for (const Alternative& other : cells[i].others) {
            World next = world;
            next.changes.push_back({cells[i].column, other.letter});
            next.odds *= other.odds;
            next.alone = other.alone;
            go(i + 1, t + other.takes, m + other.makes, next);
        }
    };
    go(0, 0, 0, {});
    return worlds;
}

TEST(RowOdds, AgreeWithEverySetOfChangesTriedOneByOne) {
    std::mt19937 random(3);
    for (int trial = 0; trial < 60; ++trial) {
        const bool maybeLess = trial % 3 == 0;
        const auto cells = randomCells(random, 4, maybeLess ? 0.1 : 1);
        const RowOdds odds(cells, 8);
        const int takes = static_cast<int>(random() % 5) - 2;
        const int makes = static_cast<int>(random() % 3) - 1;
        if (takes == 0 && makes == 0) continue;
        auto worlds = worldsOf(cells, takes, makes);
        double sum = 0;
        std::vector<double> changed(cells.size(), 0);
        for (const World& world : worlds) {
            sum += world.odds;
            for (const auto& change : world.changes)
                changed[static_cast<std::size_t>(change.column - 1)] += world.odds;
        }
        if (worlds.empty()) {
            EXPECT_TRUE(std::isinf(odds.logSum(takes, makes)));
            continue;
        }
        EXPECT_NEAR(odds.logSum(takes, makes), std::log(sum), 1e-9);
        const auto shares = odds.shares(takes, makes);
        for (std::size_t i = 0; i < cells.size(); ++i)
            EXPECT_NEAR(shares[i], changed[i] / sum, 1e-9);

        if (maybeLess)
            continue;  // the likeliest sets are looked for as if no change were worth less
        std::sort(worlds.begin(), worlds.end(),
                  [](const World& a, const World& b) { return a.odds > b.odds; });
        const auto best = odds.best(takes, makes, 3);
        ASSERT_FALSE(best.empty());
        EXPECT_EQ(best[0].changes, worlds[0].changes);
        EXPECT_NEAR(best[0].logOdds, std::log(worlds[0].odds), 1e-9);
        for (std::size_t i = 1; i < best.size(); ++i) {
            EXPECT_NE(best[i].changes, best[i - 1].changes);
            EXPECT_LE(best[i].logOdds, best[i - 1].logOdds + 1e-12);
        }
    }
}

TEST(RowOdds, StayFiniteOnAWideRowOfSureBeliefs) {
    std::vector<CellAlternatives> cells;
    for (int column = 1; column <= 300; ++column) {
        cells.push_back({column, {{0, 1, 0, 1e15}, {1, -1, 0, 1e-15}}});
    }
    const RowOdds odds(cells, 2);
    EXPECT_TRUE(std::isfinite(odds.logSum(1, 0)));
    const auto shares = odds.shares(1, 0);
    for (const double share : shares) {
        EXPECT_GE(share, 0);
        EXPECT_LE(share, 1);
    }
}

}  // namespace
}  // namespace lacewright
