#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

class RepeatTest : public WindowTest {
 protected:
    void mark(const CellArea& area) {
        prompts_.repeats = [](RepeatPlan plan) { return std::optional(plan); };
        view().select(area);
        trigger(CommandId::MarkRepeat);
        ASSERT_FALSE(chart().repeats.empty());
    }
    void addSizeNamed(const std::string& name) {
        prompts_.sizes = [name](Size size) {
            size.name = name;
            return std::optional(size);
        };
        trigger(CommandId::AddSize);
    }
};

TEST_F(RepeatTest, MarksTheSelectionAsARepeat) {
    mark({1, 3, 2, 5});
    const Repeat& repeat = chart().repeats[0];
    EXPECT_EQ(repeat.name, "A");
    EXPECT_EQ((Box{repeat.right, repeat.left}), (Box{2, 5}));
    EXPECT_EQ(repeat.firstRow, 1);
    EXPECT_EQ(repeat.lastRow, 3);
}

TEST_F(RepeatTest, TakesASelectionInOneRowForColumnsOfAllRows) {
    mark({2, 2, 2, 5});
    EXPECT_EQ(chart().repeats[0].firstRow, 0);
    EXPECT_EQ(chart().repeats[0].lastRow, 5);
}

TEST_F(RepeatTest, LetsEverySizeWorkANewRepeatInOneStep) {
    addSizeNamed("M");
    prompts_.repeats = [](RepeatPlan plan) {
        EXPECT_EQ(plan.times, 1);
        plan.times = 6;
        return std::optional(plan);
    };
    view().select({0, 0, 2, 5});
    const int steps = document().undoStack().count();
    trigger(CommandId::MarkRepeat);
    EXPECT_EQ(chart().sizes[0].times.at("A"), 6);
    EXPECT_EQ(document().undoStack().count(), steps + 1);
}

TEST_F(RepeatTest, OffersChangesOnlyOnARepeat) {
    mark({0, 5, 2, 5});
    view().moveCursor({0, 7});
    EXPECT_FALSE(action(CommandId::RemoveRepeat).isEnabled());
    EXPECT_FALSE(action(CommandId::ShiftRepeat).isEnabled());
    view().moveCursor({0, 3});
    trigger(CommandId::RemoveRepeat);
    EXPECT_TRUE(chart().repeats.empty());
}

TEST_F(RepeatTest, ShiftsTheEdgesOnTheSelectedRowsAndBack) {
    mark({0, 5, 2, 5});
    view().select({2, 3, 3, 4});
    prompts_.jogs = [](Jog) { return std::optional(Jog{1, 1, {}}); };
    trigger(CommandId::ShiftRepeat);
    EXPECT_EQ(chart().repeats[0].jogs.size(), 2U);
    EXPECT_EQ(chart().repeats[0].on(2), (Box{3, 6}));
    prompts_.jogs = [](Jog now) {
        EXPECT_EQ(now, (Jog{1, 1, {}}));
        return std::optional(Jog{});
    };
    trigger(CommandId::ShiftRepeat);
    EXPECT_TRUE(chart().repeats[0].jogs.empty());
}

TEST_F(RepeatTest, RepeatsTheSelectedRowsUpward) {
    EXPECT_FALSE(action(CommandId::EndRowRepeat).isEnabled());
    view().select({1, 4, 1, 1});
    prompts_.rowRepeats = [](RowRepeat now) {
        now.grows = 2;
        return std::optional(now);
    };
    trigger(CommandId::RepeatRows);
    ASSERT_TRUE(chart().rowRepeat.has_value());
    EXPECT_EQ(*chart().rowRepeat, (RowRepeat{1, 4, 2, {}}));
    trigger(CommandId::EndRowRepeat);
    EXPECT_FALSE(chart().rowRepeat.has_value());
}

TEST_F(RepeatTest, AddsASizeFromTheSelectionAndLooksAtIt) {
    view().select({0, 0, 2, 7});
    addSizeNamed("M");
    ASSERT_EQ(chart().sizes.size(), 1U);
    EXPECT_EQ(chart().sizes[0].reach, (Reach{2, 7}));
    EXPECT_EQ(view().size(), "M");
}

TEST_F(RepeatTest, ChangesAndRemovesTheSizeLookedAt) {
    addSizeNamed("M");
    prompts_.sizes = [](Size size) {
        size.name = "Medium";
        return std::optional(size);
    };
    trigger(CommandId::ChangeSize);
    EXPECT_EQ(view().size(), "Medium");
    trigger(CommandId::RemoveSize);
    EXPECT_TRUE(chart().sizes.empty());
    EXPECT_FALSE(action(CommandId::RemoveSize).isEnabled());
}

}  // namespace
}  // namespace lacewright::app
