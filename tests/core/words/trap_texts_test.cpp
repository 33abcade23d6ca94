#include <sstream>

#include "core/words/compare.h"
#include "tests/core/words/reading.h"

// tests/data/written_texts.txt and counted_texts.txt: little patterns with traps, counted by hand.
namespace lacewright {
namespace {

struct TrapText {
    std::string counts;
    std::string size;  // empty: the only one
    std::string text;

    std::size_t index(const WrittenPattern& pattern) const {
        const auto found = std::find(pattern.sizes.begin(), pattern.sizes.end(), size);
        return found == pattern.sizes.end()
                   ? 0
                   : static_cast<std::size_t>(found - pattern.sizes.begin());
    }
};

std::vector<TrapText> trapTexts(const std::string& name) {
    std::istringstream file(readFile(test::inSourceTree("tests/data/" + name)).value());
    std::vector<TrapText> texts;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with("=== ")) {
            const std::size_t bar = std::min(line.find(" | "), line.size());
            texts.push_back({line.substr(4, bar - 4),
                             bar < line.size() ? line.substr(bar + 3) : std::string(),
                             {}});
        } else if (!texts.empty()) {
            texts.back().text += line + "\n";
        }
    }
    return texts;
}

void expectCounts(const std::vector<TrapText>& texts) {
    for (const TrapText& trap : texts) {
        const WrittenPattern pattern = readWritten(trap.text).pattern;
        EXPECT_EQ(countsOf(trap.text, trap.index(pattern)), trap.counts) << trap.text;
    }
}

TEST(TrapTexts, CountAsByHand) {
    const auto texts = trapTexts("written_texts.txt");
    EXPECT_GT(texts.size(), 470u);
    expectCounts(texts);
}

TEST(TrapTexts, CountWhatNoChartShows) {
    const auto texts = trapTexts("counted_texts.txt");
    EXPECT_GT(texts.size(), 20u);
    expectCounts(texts);
    for (const TrapText& trap : texts) {
        const auto drawn = chartFromRows(readWritten(trap.text).pattern);
        EXPECT_TRUE(!drawn || !drawn->knittable) << trap.text;
    }
}

// The chart shows every row as it is written, stitch by stitch.
TEST(TrapTexts, AreDrawnAsTheyAreWritten) {
    for (const TrapText& trap : trapTexts("written_texts.txt")) {
        const WrittenPattern pattern = readWritten(trap.text).pattern;
        std::optional<std::size_t> size;
        if (pattern.sizes.size() > 1) size = trap.index(pattern);
        const auto drawn = chartFromRows(pattern, size);
        ASSERT_TRUE(drawn) << drawn.error().message << "\n" << trap.text;
        EXPECT_TRUE(drawn->knittable) << trap.text;
        const auto against = compareRows(drawn->chart, pattern, trap.size);
        ASSERT_TRUE(against) << against.error().message << "\n" << trap.text;
        EXPECT_TRUE(against->same()) << "row " << against->differences.front().number << "\n"
                                     << trap.text;
    }
}

TEST(ErrorsThatTeach, AreAllTold) {
    const std::string text =
        "Cast on: 12\nRow 1: k1, yoo, k2tog, k to end\nRow 2: k3, [p2, k1\nRow 3: *k1, p1; k4\n"
        "Row 4: rep dec row\n";
    EXPECT_EQ(errorsOf(text),
              "text:2:12: \"yoo\" is not a stitch that is known here; expected a stitch, a bracket "
              "or *; did you mean yo?\n"
              "    Row 1: k1, yoo, k2tog, k to end\n"
              "               ^^^\n"
              "text:3:12: this bracket is never closed\n"
              "    Row 2: k3, [p2, k1\n"
              "               ^\n"
              "text:4:8: nothing says how often the stretch from this star is repeated; expected "
              "\"rep from *\" and how far\n"
              "    Row 3: *k1, p1; k4\n"
              "           ^\n"
              "text:5:8: no row above is called \"dec\"\n"
              "    Row 4: rep dec row\n"
              "           ^^^^^^^^^^^\n");
}

}  // namespace
}  // namespace lacewright
