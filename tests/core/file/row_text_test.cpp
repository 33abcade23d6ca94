#include "core/file/row_text.h"

#include <gtest/gtest.h>

#include <random>

#include "core/file/chart_text.h"
#include "tests/core/file/chart_sample.h"

namespace lacewright {
namespace {

StitchIndex id(const char* name) {
    return builtInStitches()->find(name).value();
}

std::string written(const std::vector<StitchIndex>& cells) {
    return writeRow(cells, *builtInStitches());
}

// The cells of a row of that many columns, column 1 first.
std::vector<StitchIndex> cellsOf(std::string_view text, int width) {
    StitchTable table({});
    RowReader reader(table);
    return reader.cells(text, {width, "the width"}, 1, JsonValue{});
}

TEST(RowText, RunsFromTwoAreWrittenWithTheirLength) {
    EXPECT_EQ(written({id("k"), id("k"), id("yo"), id("p"), id("p"), id("p")}), "p*3 yo k*2");
}

TEST(RowText, ReadsRunsAndSingleIdsAlike) {
    EXPECT_EQ(cellsOf("p*3 yo k*2", 6), cellsOf("p p*1 p yo k*002 ", 6));
    EXPECT_EQ(cellsOf("\t p*2   k ", 3), (std::vector<StitchIndex>{id("k"), id("p"), id("p")}));
}

TEST(RowText, AWideStitchStandsOnceAndFillsItsCells) {
    const std::vector<StitchIndex> cells = {id("k"),    id("c22l"), kCovered,   kCovered, kCovered,
                                            id("c11r"), kCovered,   id("c11r"), kCovered};
    EXPECT_EQ(written(cells), "c11r*2 c22l k");
    EXPECT_EQ(cellsOf("c11r*2 c22l k", 9), cells);
}

TEST(RowText, KeepsRowsThatAnEditLeftBroken) {
    const std::vector<std::vector<StitchIndex>> broken = {
        {id("c11r"), id("k")},                      // lost the cell it should cover
        {id("k"), kCovered, kCovered},              // nobody owns these
        {id("k"), id("c22l")},                      // reaches beyond the chart
        {id("c11r"), kCovered, kCovered, id("k")},  // covers more than it spans
        {kCovered, id("c22l"), kCovered, id("c11r"), kCovered}};
    for (const auto& cells : broken) {
        EXPECT_TRUE(Row(cells, *builtInStitches()).traits().hasBroken);
        EXPECT_EQ(cellsOf(written(cells), static_cast<int>(cells.size())), cells) << written(cells);
    }
    EXPECT_EQ(written(broken[0]), "k *c11r");
    EXPECT_EQ(written(broken[1]), "**2 k");
    EXPECT_EQ(written(broken[3]), "k * c11r");
}

TEST(RowText, TokensOfEveryLengthAndPlaceAreRead) {
    // Short tokens, those of eight bytes and more, and the last bytes of a row take different ways.
    for (const std::string name : {"a", "ab", "abcdef", "abcdefg", "abcdefgh", "abcdefghi"}) {
        for (const std::string run : {"", "*2", "*10", "*123"}) {
            const int count = run.empty() ? 1 : std::stoi(run.substr(1));
            for (const std::string after : {"", " k", " k k k k k k"}) {
                const int knits = static_cast<int>(after.size() / 2);
                StitchTable table({});
                RowReader reader(table);
                for (int again = 0; again < 2; ++again) {
                    const auto cells = reader.cells(name + run + after,
                                                    {count + knits, "the width"}, 1, JsonValue{});
                    const StitchIndex unknown = table.find(name);
                    ASSERT_NE(unknown, kCovered);
                    std::vector<StitchIndex> expected(static_cast<std::size_t>(knits), id("k"));
                    expected.insert(expected.end(), static_cast<std::size_t>(count), unknown);
                    EXPECT_EQ(cells, expected) << name + run + after;
                }
            }
        }
    }
}

TEST(RowText, RandomRowsSurviveWritingAndReading) {
    std::mt19937 random(7);
    std::uniform_int_distribution<unsigned> any(0,
                                                static_cast<unsigned>(builtInStitches()->size()));
    for (int round = 0; round < 400; ++round) {
        std::vector<StitchIndex> cells(1 + random() % 40);
        for (StitchIndex& cell : cells) {
            const unsigned kind = random() % 4;  // runs of knit, covered cells, anything
            cell = kind < 2    ? id("k")
                   : kind == 2 ? kCovered
                               : static_cast<StitchIndex>(any(random));
        }
        const std::string text = written(cells);
        ASSERT_EQ(cellsOf(text, static_cast<int>(cells.size())), cells) << text;
        ASSERT_EQ(written(cellsOf(text, static_cast<int>(cells.size()))), text);
    }
}

}  // namespace
}  // namespace lacewright
