// Both readings of every symbol, worked loop by loop.

#include <gtest/gtest.h>

#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "core/stitch/catalogue.h"
#include "tests/core/stitch/loop_needles.h"

namespace lacewright {
namespace {

std::vector<Stitch> allStitches() {
    std::vector<Stitch> all;
    for (std::size_t i = 1; i <= builtInStitches()->size(); ++i) {
        all.push_back((*builtInStitches())[static_cast<StitchIndex>(i)]);
    }
    return all;
}

// Not worked on the side: nothing to read.
bool isWorked(const SideWording& side) {
    return !side.abbreviation.empty();
}

// The lean seen from the right side. Loops worked together look alike from both sides, but a stitch
// passed over lies over the place it was passed to, which a wrong-side row sees mirrored.
Lean leanSeen(const WorkedLoops& worked, bool wrongSide) {
    if (worked.onTop < 0) return Lean::None;
    const bool flipped = wrongSide && worked.passedOver;
    if (worked.onTop == 0) return flipped ? Lean::Right : Lean::Left;
    if (worked.onTop == worked.takes - 1) return flipped ? Lean::Left : Lean::Right;
    return Lean::Centred;
}

TEST(StitchReading, TakesAndMakesTheSameOnBothSides) {
    for (const Stitch& stitch : allStitches()) {
        SCOPED_TRACE(stitch.id);
        for (const SideWording* side : {&stitch.rightSide, &stitch.wrongSide}) {
            if (!isWorked(*side)) continue;
            SCOPED_TRACE(side->abbreviation);
            const std::optional<WorkedLoops> worked = workOut(side->abbreviation);
            ASSERT_TRUE(worked) << "the needles cannot work this";
            EXPECT_EQ(worked->takes, stitch.takes);
            EXPECT_EQ(worked->makes, stitch.makes);
        }
    }
}

TEST(StitchReading, LeansTheWayItsTopLoopLies) {
    std::set<std::string> leanless;
    for (const Stitch& stitch : allStitches()) {
        if (stitch.kind != StitchKind::Decrease) continue;
        if (stitch.lean == Lean::None) {
            leanless.insert(stitch.id);
            continue;
        }
        SCOPED_TRACE(stitch.id);
        const auto rightSide = workOut(stitch.rightSide.abbreviation);
        const auto wrongSide = workOut(stitch.wrongSide.abbreviation);
        ASSERT_TRUE(rightSide && wrongSide);
        EXPECT_EQ(leanSeen(*rightSide, false), stitch.lean);
        EXPECT_EQ(leanSeen(*wrongSide, true), stitch.lean);
    }
    // The loops of a nupp come from one stitch, and a dropped stitch is gone: no lean shows.
    EXPECT_EQ(leanless, (std::set<std::string>{"drop", "k5tog", "k7tog", "p5tog"}));
}

TEST(StitchReading, TeachesBothSidesInWords) {
    const std::set<std::string> notWorked = {"no-stitch"};
    const std::set<std::string> rightSideOnly = {"nupp5", "nupp7"};
    for (const Stitch& stitch : allStitches()) {
        SCOPED_TRACE(stitch.id);
        EXPECT_EQ(isWorked(stitch.rightSide), notWorked.count(stitch.id) == 0);
        EXPECT_EQ(isWorked(stitch.wrongSide),
                  notWorked.count(stitch.id) == 0 && rightSideOnly.count(stitch.id) == 0);
        for (const SideWording* side : {&stitch.rightSide, &stitch.wrongSide}) {
            ASSERT_GE(side->instruction.size(), 10U);
            EXPECT_TRUE(side->instruction.front() >= 'A' && side->instruction.front() <= 'Z');
            EXPECT_NE(side->instruction.back(), '.');
        }
        EXPECT_FALSE(stitch.name.empty());
        EXPECT_FALSE(stitch.source.empty());
    }
}

// A written row must lead back to the symbol it came from.
TEST(StitchReading, NamesEveryStitchDifferentlyOnTheRightSide) {
    std::set<std::string> seen;
    for (const Stitch& stitch : allStitches()) {
        if (!isWorked(stitch.rightSide) || stitch.id == "sel")
            continue;  // an edge stitch is a knit
        EXPECT_TRUE(seen.insert(stitch.rightSide.abbreviation).second) << stitch.id;
    }
}

// k2tog and p2tog, ssk and ssp, and so on: the purl symbol is the knit symbol seen from behind.
TEST(StitchReading, SwapsKnitAndPurlTwinsBetweenTheSides) {
    const std::pair<const char*, const char*> twins[] = {
        {"k", "p"},         {"ktbl", "ptbl"},         {"k2tog", "p2tog"},
        {"ssk", "ssp"},     {"k2togtbl", "p2togtbl"}, {"k2togtw", "p2togtw"},
        {"k3tog", "p3tog"}, {"sssk", "sssp"},         {"k3togtbl", "p3togtbl"},
        {"s2kp", "sspp2"},  {"k5tog", "p5tog"},       {"m1", "m1p"},
        {"m1l", "m1lp"},    {"m1r", "m1rp"},          {"kfb", "pfb"},
        {"slwyb", "slwyf"}, {"k3togtw", "p3togtw"},
    };
    const StitchCatalogue& all = *builtInStitches();
    for (const auto& [knit, purl] : twins) {
        SCOPED_TRACE(knit);
        const Stitch& k = all[all.find(knit).value()];
        const Stitch& p = all[all.find(purl).value()];
        EXPECT_EQ(k.rightSide, p.wrongSide);
        EXPECT_EQ(k.wrongSide, p.rightSide);
        EXPECT_EQ(k.lean, p.lean);
    }
}

}  // namespace
}  // namespace lacewright
