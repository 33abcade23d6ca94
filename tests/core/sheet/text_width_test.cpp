#include "core/sheet/text_width.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

TEST(TextWidth, AddsTheLettersAndBoldIsWider) {
    EXPECT_NEAR(textWidth("00"), 1.272, 1e-9);
    EXPECT_GT(textWidth("00", true), textWidth("00"));
    EXPECT_NEAR(textWidth("\u00E9"), 0.7, 1e-9);
}

TEST(Wrapped, BreaksAtBlanksAndKeepsEveryLineWithinTheWidth) {
    const std::string words = "work every stitch as it presents itself, then turn";
    const auto lines = wrapped(words, 10);
    ASSERT_GT(lines.size(), 1U);
    std::string joined;
    for (const std::string& line : lines) {
        EXPECT_LE(textWidth(line), 10);
        joined += (joined.empty() ? "" : " ") + line;
    }
    EXPECT_EQ(joined, words);
}

TEST(Wrapped, BreaksAWordThatIsTooLongBetweenLetters) {
    const auto lines = wrapped("\u00E9\u00E9\u00E9\u00E9\u00E9", 1.5);
    EXPECT_EQ(lines, (std::vector<std::string>{"\u00E9\u00E9", "\u00E9\u00E9", "\u00E9"}));
    EXPECT_EQ(wrapped("W", 0.1), (std::vector<std::string>{"W"}));
    EXPECT_TRUE(wrapped("  ", 5).empty());
}

}  // namespace
}  // namespace lacewright
