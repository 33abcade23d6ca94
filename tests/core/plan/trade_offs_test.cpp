#include "core/plan/trade_offs.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

EdgeChoice choice(int start, int end, int stitches, double difference) {
    EdgeChoice made;
    made.reach = {start, end};
    made.stitches = stitches;
    made.differenceCm = difference;
    made.fits = true;
    return made;
}

TEST(ChoiceWords, SayHowTheMotifLies) {
    EdgeChoice made = choice(1, 9, 9, 0);
    EXPECT_EQ(choiceWords(made), "centred");
    made.mirrored = true;
    EXPECT_EQ(choiceWords(made), "mirrored");
    made.mirrored = false;
    made.offCentre = 1;
    made.parted = 2;
    made.fits = false;
    EXPECT_EQ(choiceWords(made),
              "its rows do not fit one another; its edges part 2 pairs; off centre by 1 column");
}

TEST(TradeOffs, TellWhatWasLeftAside) {
    PlannedSize planned;
    EXPECT_TRUE(tradeOffs(planned).empty());
    planned.nearer = choice(2, 9, 1, -0.127);
    planned.nearer->parted = 1;
    planned.centred = choice(1, 10, 30, 2.54);
    EXPECT_EQ(tradeOffs(planned),
              (std::vector<std::string>{
                  "nearer, but with 1 pair parted: columns 2 to 9, 1 stitch, difference -0.1 cm "
                  "(-0.1 in)",
                  "better centred: columns 1 to 10, 30 stitches, difference +2.5 cm (1.0 in)"}));
    planned.nearer->fits = false;
    EXPECT_TRUE(tradeOffs(planned)[0].starts_with("nearer, but with rows that do not fit: "));
}

}  // namespace
}  // namespace lacewright
