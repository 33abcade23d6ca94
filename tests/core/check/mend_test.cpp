#include "core/check/mend.h"

#include <gtest/gtest.h>

#include "core/chart/edits.h"
#include "tests/support/drawn_rows.h"

namespace lacewright {
namespace {

Chart sized() {
    Chart chart = test::chartOf({"k k k k k k", "k yo k2tog k k k"});
    chart = addRepeat(chart, {"A", 3, 4, 0, 1, {}, {}}).value();
    Size size;
    size.name = "Small";
    size.reach = {1, 6};
    size.times["A"] = 2;
    return addSize(chart, size).value();
}

Result<Chart> mended(const Chart& chart, MendStep step) {
    return applyMend(chart, {"", "", {std::move(step)}});
}

TEST(Mend, DrawsAStitchOfTheSameWidth) {
    const auto chart = mended(sized(), ReplaceStitch{0, 2, "yo"});
    ASSERT_TRUE(chart);
    EXPECT_EQ(test::drawn(*chart, 0), "k k k k yo k");
}

TEST(Mend, RefusesAStitchThatNoLongerFits) {
    EXPECT_FALSE(mended(sized(), ReplaceStitch{0, 2, "c11r"}));
    EXPECT_FALSE(mended(sized(), ReplaceStitch{0, 2, "no such stitch"}));
    EXPECT_FALSE(mended(sized(), ReplaceStitch{2, 2, "yo"}));
    EXPECT_FALSE(mended(sized(), ReplaceStitch{0, 7, "yo"}));
    EXPECT_FALSE(mended(sized(), RewriteRow{5, {}}));
    EXPECT_FALSE(mended(sized(), RewriteRow{0, {1, 1}}));
    EXPECT_FALSE(mended(sized(), ChangeTimes{"Large", "A", 3}));
}

TEST(Mend, RewritesARow) {
    const auto chart = mended(sized(), RewriteRow{1, test::cellsOf("k k yo k2tog k k")});
    ASSERT_TRUE(chart);
    EXPECT_EQ(test::drawn(*chart, 1), "k k yo k2tog k k");
}

TEST(Mend, ChangesWhatASizeWorks) {
    const Substitution cut{1, 4, Edge::End, "k"};
    const auto substituted = mended(sized(), SubstituteForSize{"Small", cut});
    ASSERT_TRUE(substituted);
    EXPECT_EQ(substituted->sizes[0].substitutions, (std::vector<Substitution>{cut}));
    // The same cell again replaces the substitution.
    const Substitution other{1, 4, Edge::End, "p"};
    const auto again = mended(*substituted, SubstituteForSize{"Small", other});
    ASSERT_TRUE(again);
    EXPECT_EQ(again->sizes[0].substitutions, (std::vector<Substitution>{other}));

    EXPECT_EQ(mended(sized(), MoveEdge{"Small", Edge::Start, 2}).value().sizes[0].reach,
              (Reach{2, 6}));
    EXPECT_EQ(mended(sized(), MoveEdge{"Small", Edge::End, 5}).value().sizes[0].reach,
              (Reach{1, 5}));
    EXPECT_EQ(mended(sized(), ChangeTimes{"Small", "A", 7}).value().sizes[0].times.at("A"), 7);
    EXPECT_EQ(mended(sized(), ChangeExpected{"Small", 42}).value().sizes[0].stitches, 42);
}

TEST(Mend, ChangesTheCastOn) {
    EXPECT_EQ(mended(sized(), ChangeCastOn{{2, 4}}).value().castOn, (CastOn{2, 4}));
}

TEST(Mend, DoesAllStepsOrNone) {
    const Mend mend{"", "", {ReplaceStitch{0, 1, "yo"}, ReplaceStitch{0, 2, "k2tog"}}};
    EXPECT_EQ(test::drawn(applyMend(sized(), mend).value(), 0), "k k k k k2tog yo");
    EXPECT_FALSE(
        applyMend(sized(), {"", "", {ReplaceStitch{0, 1, "yo"}, ReplaceStitch{9, 2, "k2tog"}}}));
}

}  // namespace
}  // namespace lacewright
