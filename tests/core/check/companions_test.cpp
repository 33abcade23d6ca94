#include "core/check/companions.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <map>
#include <random>
#include <sstream>

#include "core/check/pairing.h"
#include "core/check/parting.h"
#include "tests/support/motifs.h"

namespace lacewright {
namespace {

// Stitches in the order of columns: the first is column 1.
Chart oneRow(const std::string& stitches) {
    std::istringstream words(stitches);
    std::vector<StitchIndex> cells;
    for (std::string id; words >> id;) cells.push_back(builtInStitches()->find(id).value());
    Chart chart = blankChart(static_cast<int>(cells.size()), 1);
    chart.rows.replace(0, makeRow(cells, *chart.stitches));
    return chart;
}

Chart oneRepeat(const std::string& stitches, int right = 1, int left = 0) {
    Chart chart = oneRow(stitches);
    chart.repeats.push_back({"A", right, left == 0 ? chart.width : left, 0, 0, {}, {}});
    return chart;
}

struct Matching {
    int pairs = -1;
    int distance = 0;
};

// The best of all matchings, tried one by one. `length` 0: a line.
Matching bruteForce(const std::vector<ShapingUnit>& units, int length) {
    std::vector<int> increases;
    std::vector<int> decreases;
    for (const ShapingUnit& unit : units) {
        auto& side = unit.net > 0 ? increases : decreases;
        side.insert(side.end(), static_cast<std::size_t>(std::abs(unit.net)), unit.column);
    }
    if (increases.size() > decreases.size()) std::swap(increases, decreases);
    std::vector<bool> used(decreases.size(), false);
    Matching best;
    const std::function<void(std::size_t, int)> match = [&](std::size_t i, int distance) {
        if (i == increases.size()) {
            const int pairs = static_cast<int>(i);
            if (best.pairs < pairs || distance < best.distance) best = {pairs, distance};
            return;
        }
        for (std::size_t j = 0; j < decreases.size(); ++j) {
            if (used[j]) continue;
            used[j] = true;
            const int d = std::abs(increases[i] - decreases[j]);
            match(i + 1, distance + (length == 0 ? d : std::min(d, length - d)));
            used[j] = false;
        }
    };
    match(0, 0);
    return best;
}

int totalDistance(const Companions& companions) {
    int sum = 0;
    for (const CompanionPair& pair : companions.pairs) sum += std::abs(pair.offset);
    return sum;
}

// On a line two pairs cross when exactly one end of one lies strictly within the other.
bool crosses(const CompanionPair& a, const CompanionPair& b) {
    const auto [low, high] = std::minmax(a.increase, a.decrease);
    const auto within = [low = low, high = high](int c) { return c > low && c < high; };
    const auto outside = [low = low, high = high](int c) { return c < low || c > high; };
    return (within(b.increase) && outside(b.decrease)) ||
           (within(b.decrease) && outside(b.increase));
}

std::vector<ShapingUnit> randomUnits(std::mt19937& random, int width) {
    std::vector<ShapingUnit> units;
    for (int column = 1; column <= width; ++column) {
        switch (random() % 5) {
            case 0:
                units.push_back({column, 1});
                break;
            case 1:
                units.push_back({column, -1});
                break;
            case 2:
                if (units.size() % 3 == 0) units.push_back({column, random() % 2 == 0 ? 2 : -2});
                break;
            default:
                break;
        }
    }
    return units;
}

TEST(Companions, OnALineAreAsCloseAsTheBestOfAllMatchingsAndDoNotCross) {
    std::mt19937 random(7);
    for (int trial = 0; trial < 600; ++trial) {
        const auto units = randomUnits(random, 10);
        const Companions found = pairOnLine(units);
        const Matching best = bruteForce(units, 0);
        ASSERT_EQ(static_cast<int>(found.pairs.size()), std::max(best.pairs, 0));
        ASSERT_EQ(totalDistance(found), best.distance) << "trial " << trial;
        for (const auto& a : found.pairs) {
            for (const auto& b : found.pairs) ASSERT_FALSE(crosses(a, b)) << "trial " << trial;
        }
    }
}

TEST(Companions, OnACircleAreAsCloseAsTheBestOfAllMatchings) {
    std::mt19937 random(11);
    for (int trial = 0; trial < 600; ++trial) {
        const auto units = randomUnits(random, 10);
        const Companions found = pairOnRing(units, 1, 10);
        const Matching best = bruteForce(units, 10);
        ASSERT_EQ(static_cast<int>(found.pairs.size()), std::max(best.pairs, 0));
        ASSERT_EQ(totalDistance(found), best.distance) << "trial " << trial;
        for (const auto& pair : found.pairs) {
            const int direct = pair.decrease - pair.increase;
            ASSERT_EQ((pair.offset - direct) % 10, 0);
            ASSERT_EQ(pair.offset != direct, pair.acrossRepeats);
        }
    }
}

TEST(Companions, UnitsLeftOverAreThoseTheRowHasTooManyOf) {
    std::mt19937 random(13);
    for (int trial = 0; trial < 300; ++trial) {
        const auto units = randomUnits(random, 14);
        int net = 0;
        for (const auto& unit : units) net += unit.net;
        ASSERT_EQ(orphansOnLine(units), pairOnLine(units).orphans);
        ASSERT_EQ(orphansOnRing(units, 1, 14), pairOnRing(units, 1, 14).orphans);
        for (const Companions& found : {pairOnLine(units), pairOnRing(units, 1, 14)}) {
            ASSERT_EQ(static_cast<int>(found.orphans.size()), std::abs(net));
            for (const int column : found.orphans) {
                const auto at = std::find_if(units.begin(), units.end(),
                                             [&](const auto& u) { return u.column == column; });
                ASSERT_NE(at, units.end());
                EXPECT_EQ(at->net > 0, net > 0);
            }
        }
    }
}

// One orphan is found without the pairs, by other means.
TEST(Companions, OrphansAloneAreThoseOfThePairing) {
    std::mt19937 random(19);
    const char* const ids[] = {"k", "k", "k", "yo", "yo", "k2tog", "ssk", "s2kp", "yo2", "bo"};
    int lone = 0;
    for (int trial = 0; trial < 500; ++trial) {
        const int width = trial % 40 == 0 ? 700 : 3 + static_cast<int>(random() % 90);
        const std::size_t kinds = std::size(ids) - (trial % 4 == 0 ? 0 : 1);  // few are bound off
        std::string cells;
        int net = 0;
        for (int column = 1; column <= width; ++column) {
            // Mostly what brings the row back to balance, as lace is drawn.
            const char* id = ids[random() % kinds];
            const int units = (*builtInStitches())[builtInStitches()->find(id).value()].net();
            if (random() % 8 != 0 && units * net > 0) id = "k";
            net += (*builtInStitches())[builtInStitches()->find(id).value()].net();
            cells += std::string(id) + " ";
        }
        const int right = 1 + static_cast<int>(random() % 2);
        for (const Chart& chart :
             {oneRow(cells), oneRepeat(cells), oneRepeat(cells, right, width - 1)}) {
            const std::vector<int> expected = companionsOn(chart, 0).orphans;
            ASSERT_EQ(orphansOn(chart, 0), expected) << cells;
            lone += expected.size() == 1 ? 1 : 0;
        }
    }
    EXPECT_GT(lone, 200);
}

TEST(Companions, AnEdgePartsThePairsThatCrossIt) {
    std::mt19937 random(17);
    const char* const ids[] = {"k", "k", "yo", "k2tog", "s2kp", "yo2", "bo"};
    for (int trial = 0; trial < 300; ++trial) {
        std::string cells;
        for (int column = 1; column <= 14; ++column)
            cells += std::string(ids[random() % std::size(ids)]) + " ";
        const Chart chart = oneRow(cells);
        const Companions all = companionsOn(chart, 0);
        PairsAcross across(chart, 0);
        for (int right = 0; right <= 14; ++right) {
            std::vector<CompanionPair> crossing;
            for (const CompanionPair& pair : all.pairs) {
                if ((pair.increase <= right) != (pair.decrease <= right)) crossing.push_back(pair);
            }
            ASSERT_EQ(across.partedAt(right), crossing) << cells << "at " << right;
        }
    }
}

// Interweave, "Shaping Lace: Decreasing": of "*k1, yo, k2, ssk, k2tog, k2, yo*" the right yarn over
// goes with the ssk and the left one with the k2tog.
TEST(Companions, AFanSplitsIntoTwoBalancedHalves) {
    const Companions found = companionsOn(oneRepeat("k yo k k ssk k2tog k k yo"), 0);
    EXPECT_EQ(found.pairs, (std::vector<CompanionPair>{{2, 5, 3, false}, {9, 6, -3, false}}));
    EXPECT_TRUE(found.orphans.empty());
    EXPECT_FALSE(found.ambiguous);
}

TEST(Companions, ADoubleDecreaseTakesTwoYarnOvers) {
    const Companions found = companionsOn(oneRepeat("k yo k s2kp k yo"), 0);
    EXPECT_EQ(found.pairs, (std::vector<CompanionPair>{{2, 4, 2, false}, {6, 4, -2, false}}));
    EXPECT_EQ(companionsOn(oneRow("k yo2 s2kp"), 0).pairs,
              (std::vector<CompanionPair>{{2, 3, 1, false}, {2, 3, 1, false}}));
}

// Patterns of Lambert 1843, Beeton 1870 and Dillmont 1886 (tests/support/motifs.cpp).
TEST(Companions, OfHandbookRowsDoNotCrossAndLeaveNobodyOutWhereTheRowBalances) {
    int pairs = 0;
    for (const Chart& chart : test::handbookMotifs()) {
        for (int row = 0; row < chart.height(); ++row) {
            const Companions found = companionsOn(chart, row);
            if (chart.row(row).total().net() == 0) {
                EXPECT_TRUE(found.orphans.empty()) << chart.name << " row " << row + 1;
            }
            std::map<int, int> partners;
            for (const CompanionPair& a : found.pairs) {
                ++pairs;
                ++partners[a.increase];
                ++partners[a.decrease];
                for (const CompanionPair& b : found.pairs) {
                    if (a.acrossRepeats || b.acrossRepeats) continue;
                    const auto [low, high] = std::minmax(a.increase, a.decrease);
                    const auto inside = [low = low, high = high](int c) {
                        return c > low && c < high;
                    };
                    const auto outside = [low = low, high = high](int c) {
                        return c < low || c > high;
                    };
                    EXPECT_FALSE((inside(b.increase) && outside(b.decrease)) ||
                                 (inside(b.decrease) && outside(b.increase)))
                        << chart.name << " row " << row + 1;
                }
            }
            for (const auto& [column, count] : partners) {
                const int net = (*chart.stitches)[chart.row(row).at(column)].net();
                EXPECT_LE(count, std::abs(net)) << chart.name << " row " << row + 1;
            }
        }
    }
    EXPECT_GT(pairs, 50);
}

TEST(Companions, GoOverTheEdgeOfARepeatWhenThatIsShorter) {
    const Companions found = companionsOn(oneRepeat("yo k k k k k k2tog"), 0);
    EXPECT_EQ(found.pairs, (std::vector<CompanionPair>{{1, 7, -1, true}}));
    // Without a repeat there is no way around.
    EXPECT_EQ(companionsOn(oneRow("yo k k k k k k2tog"), 0).pairs,
              (std::vector<CompanionPair>{{1, 7, 6, false}}));
}

TEST(Companions, AMeshCanBePairedEitherWay) {
    const Companions mesh = companionsOn(oneRepeat("yo k2tog"), 0);
    EXPECT_TRUE(mesh.ambiguous);
    EXPECT_EQ(mesh.pairs, (std::vector<CompanionPair>{{1, 2, 1, false}}));
    EXPECT_FALSE(companionsOn(oneRow("k yo k2tog k"), 0).ambiguous);
}

TEST(Companions, EdgesThatMakeUpForEachOtherArePairedOverTheRepeat) {
    // One more at the right edge, one fewer at the left, and a repeat that keeps its count.
    const Companions fed = companionsOn(oneRepeat("yo k k k k k k2tog", 3, 5), 0);
    EXPECT_EQ(fed.pairs, (std::vector<CompanionPair>{{1, 7, 6, false}}));
    // A repeat that is one stitch out keeps the fault to itself.
    const Companions faulty = companionsOn(oneRepeat("k yo k2tog k yo k k2tog yo k", 4, 6), 0);
    EXPECT_EQ(faulty.orphans, (std::vector<int>{5}));
    EXPECT_EQ(faulty.pairs, (std::vector<CompanionPair>{{2, 3, 1, false}, {8, 7, -1, false}}));
}

// The work stays bounded on a row no knitter would draw.
TEST(Companions, AWideRowWithHundredsOfUnitsTooManyIsStillPaired) {
    std::vector<ShapingUnit> units;
    for (int column = 1; column <= 4000; ++column)
        units.push_back({column, column % 4 == 0 ? -1 : 1});
    for (const Companions& found : {pairOnLine(units), pairOnRing(units, 1, 4000)}) {
        EXPECT_EQ(found.pairs.size(), 1000U);
        EXPECT_EQ(found.orphans.size(), 2000U);
        EXPECT_TRUE(found.ambiguous);
    }
}

TEST(Companions, BindingOffIsNotShaping) {
    EXPECT_TRUE(companionsOn(oneRow("bo bo k"), 0).orphans.empty());
}

TEST(Displacement, IsWhatTheColumnsToTheRightMakeLessWhatTheyTake) {
    const Chart chart = oneRow("k yo k k2tog k");
    EXPECT_EQ(displacement(chart.row(0), 1, 1), 0);
    EXPECT_EQ(displacement(chart.row(0), 1, 3), 1);
    EXPECT_EQ(displacement(chart.row(0), 1, 5), 0);
    EXPECT_DOUBLE_EQ(bias(chart.row(0), 1, 5), 0.4);
}

TEST(Displacement, BiasCountsPlainAndUnchartedRows) {
    Chart chart = oneRepeat("yo k k2tog k");
    EXPECT_DOUBLE_EQ(bias(chart, &chart.repeats[0]), 0.5);
    chart.uncharted = Uncharted::Purl;
    EXPECT_DOUBLE_EQ(bias(chart, nullptr), 0.25);
}

}  // namespace
}  // namespace lacewright
