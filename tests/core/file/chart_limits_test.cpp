#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/file/file_limits.h"
#include "tests/core/file/chart_sample.h"

// What hostile or damaged files can do: be refused, at little cost.
namespace lacewright {
namespace {

using testing::EndsWith;
using testing::HasSubstr;

std::string times(std::size_t count, std::string_view piece, std::string_view between = {}) {
    std::string made;
    for (std::size_t i = 0; i < count; ++i) {
        if (i > 0) made += between;
        made += piece;
    }
    return made;
}

// The sentence with which the file is refused; empty when it is not.
std::string refusalOf(std::string_view text) {
    const Result<Chart> chart = readChart(text);
    return chart ? std::string() : chart.error().message;
}

std::string sentenceFor(std::string_view members) {
    return refusalOf(fileWith(std::string(members) + R"(, "width": 3, "rows": ["k*3"])"));
}

// `count` objects of a list; # in `piece` becomes the number of each, from 1.
std::string numbered(std::size_t count, std::string_view piece) {
    std::string made;
    for (std::size_t i = 1; i <= count; ++i) {
        if (i > 1) made += ", ";
        for (const char c : piece) made += c == '#' ? std::to_string(i) : std::string(1, c);
    }
    return made;
}

TEST(ChartLimits, NestingIsBounded) {
    const auto nested = [](std::size_t depth) { return times(depth, "[") + times(depth, "]"); };
    EXPECT_EQ(sentenceFor(R"("x": )" + nested(kMaxNesting - 1)), "");
    EXPECT_EQ(sentenceFor(R"("x": )" + nested(kMaxNesting)),
              "Objects and lists stand more than 32 deep within one another.");
    EXPECT_EQ(refusalOf(times(5'000'000, "[")),
              "Objects and lists stand more than 32 deep within one another.");
    EXPECT_EQ(refusalOf(times(1'000'000, "{\"a\":")),
              "Objects and lists stand more than 32 deep within one another.");
}

TEST(ChartLimits, MembersAndValuesAreBounded) {
    EXPECT_EQ(sentenceFor(R"("x": {)" + numbered(kMaxMembers, R"("#": 0)") + "}"), "");
    EXPECT_EQ(sentenceFor(R"("x": {)" + numbered(kMaxMembers + 1, R"("#": 0)") + "}"),
              "Found more than 256 members in one object.");
    EXPECT_EQ(sentenceFor(R"("x": [)" + times(kMaxValues, "0", ",") + "]"),
              "The file has more than 500000 values.");
}

TEST(ChartLimits, TextsAreBoundedInCharacters) {
    EXPECT_EQ(sentenceFor(R"("notes": ")" + times(kMaxTextLength, "é") + '"'), "");
    EXPECT_EQ(sentenceFor(R"("notes": ")" + times(kMaxTextLength + 1, "é") + '"'),
              "Found a text of 20001 characters; expected at most 20000.");
    EXPECT_EQ(sentenceFor(R"("x": ")" + times(kMaxRowText + 1, "x") + '"'),
              "Found a text of more than 300000 bytes.");
}

TEST(ChartLimits, WidthRowsAndCellsAreBoundedBeforeRowsAreRead) {
    EXPECT_EQ(refusalOf(fileWith(R"("width": 4000, "rows": ["k*4000"])")), "");
    EXPECT_EQ(refusalOf(fileWith(R"("width": 4001, "rows": ["k*4001"])")),
              "Found 4001; expected a number of columns from 1 to 4000.");
    EXPECT_EQ(refusalOf(fileWith(R"("rows": ["k*4001"])")),
              "Row 1 has too many columns; expected 1 to 4000.");
    EXPECT_EQ(refusalOf(fileWith(R"("rows": [)" + times(kMaxRows + 1, "\"k\"", ",") + "]")),
              "Found 4001 items; expected at most 4000.");
    EXPECT_EQ(
        refusalOf(fileWith(R"("width": 2000, "rows": [)" + times(2000, "\"k*2000\"", ",") + "]")),
        "");
    EXPECT_EQ(refusalOf(fileWith(R"("width": 2000, "rows": [)" + times(2001, "\"nonsense*\"", ",") +
                                 "]")),
              "The chart has 2000 columns and 2001 rows; expected at most 4000000 cells.");
}

TEST(ChartLimits, RunsAreBoundedBeforeTheyAreExpanded) {
    const std::string digits(100'000, '9');
    EXPECT_THAT(refusalOf(fileWith(R"("width": 3, "rows": ["k*)" + digits + "\"]")),
                HasSubstr("Row 1 has more than 4000 columns; expected 3"));
    EXPECT_THAT(refusalOf(fileWith(R"("width": 3, "rows": ["c33l*4294967297"])")),
                HasSubstr("Row 1 has more than 4000 columns; expected 3"));
    EXPECT_EQ(refusalOf(fileWith(R"("rows": [")" + times(40'000, "c33l*4000", " ") + "\"]")),
              "Found a text of more than 300000 bytes.");
}

TEST(ChartLimits, ListsAreBounded) {
    const auto atMost = [](std::size_t most, std::string_view before, std::string_view piece,
                           std::string_view after) {
        const std::string start(before), end(after);
        EXPECT_EQ(sentenceFor(start + numbered(most, piece) + end), "");
        EXPECT_EQ(sentenceFor(start + numbered(most + 1, piece) + end),
                  "Found " + std::to_string(most + 1) + " items; expected at most " +
                      std::to_string(most) + ".");
    };
    atMost(kMaxRepeats, R"("repeats": [)", R"({"name": "#", "right": 1, "left": 1})", "]");
    atMost(kMaxPoints, R"("points": [)", R"({"name": "#", "column": 1})", "]");
    atMost(kMaxSizes, R"("sizes": [)", R"({"name": "#"})", "]");
    atMost(kMaxOwnStitches, R"("stitches": [)", R"({"id": "own#", "takes": 1, "makes": 1})", "]");
    atMost(kMaxStrokes, R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "glyph": [)",
           R"({"at": [0, #], "tail": "z"})", "]}]");
    atMost(kMaxSubstitutions, R"("sizes": [{"name": "M", "substitutions": [)",
           R"({"row": 1, "column": 1, "stitch": "own#"})", "]}]");
    EXPECT_EQ(
        sentenceFor(R"("sizes": [{"name": "M", "times": {)" + numbered(65, R"("#": 0)") + "}}]"),
        "Found 65 members; expected an object with a number for each of at most 64 repeats.");
}

TEST(ChartLimits, KindsOfStitchAreBounded) {
    std::string rows;
    for (int row = 0; row < 66; ++row) {
        std::string text;
        for (int i = 0; i < 1000; ++i) text += 'u' + std::to_string(1000 * row + i) + ' ';
        rows += (row > 0 ? ", \"" : "\"") + text + '"';
    }
    EXPECT_EQ(refusalOf(fileWith(R"("rows": [)" + rows + "]")),
              "The chart names more kinds of stitch than the 65534 that are read at most.");
}

TEST(ChartLimits, ExtremeNumbersAreRefused) {
    for (const char* number :
         {"9223372036854775808", "-9223372036854775809", "18446744073709551616", "1e308",
          "4294967297", "2147483648", "-2147483649", "3.5", "3.0", "-0.0", "1e1"}) {
        for (const char* before :
             {R"("width": )", R"("castOn": {"stitches": )",
              R"("rowRepeat": {"firstRow": 1, "lastRow": )",
              R"("points": [{"name": "P", "column": )", R"("sizes": [{"name": "M", "start": )"}) {
            const std::string start(before);
            const std::string end = start.back() == ' ' && start.find('{') == std::string::npos ? ""
                                    : start.find('[') == std::string::npos ? "}"
                                                                           : "}]";
            const std::string text = fileWith(start + number + end + R"(, "rows": ["k*3"])");
            EXPECT_THAT(refusalOf(text), HasSubstr("Found ")) << text;
        }
    }
}

TEST(ChartLimits, AFileCutOffAnywhereIsRefused) {
    std::string text = everyMember();
    text.erase(text.find_last_of('}') + 1);  // the blank line end after it may go
    for (std::size_t length = 0; length < text.size(); ++length) {
        const Result<Chart> chart = readChart(std::string_view(text).substr(0, length), "cut");
        ASSERT_FALSE(chart) << length;
        ASSERT_THAT(chart.error().message, EndsWith(".")) << length;
    }
    EXPECT_TRUE(readChart(text));
}

TEST(ChartLimits, ADamagedFileIsRefusedOrReadButNeverHarmful) {
    const std::string whole = everyMember();
    int refused = 0;
    for (std::size_t at = 0; at < whole.size(); at += 3) {
        for (const char byte : {'\0', '"', '9', '}', '\xFF'}) {
            std::string text = whole;
            text[at] = byte;
            const Result<Chart> chart = readChart(text, "damaged");
            if (!chart) {
                ++refused;
                EXPECT_THAT(chart.error().message, EndsWith("."));
                continue;
            }
            ASSERT_EQ(chartIn(writeChart(*chart)), *chart) << text;
        }
    }
    EXPECT_GT(refused, 1000);
}

}  // namespace
}  // namespace lacewright
