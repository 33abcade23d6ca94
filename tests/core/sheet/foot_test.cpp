#include "tests/core/sheet/sheet_probe.h"

namespace lacewright {
namespace {

using test::boundsOf;
using test::frameOf;
using test::panel;
using test::Rectangle;
using test::runsOf;
using test::textsOf;
using test::wordsOf;
using testing::Contains;

Page pageOf(const Chart& chart, const std::string& size = {}) {
    SheetOptions options;
    options.size = size;
    return layOut(chart, options).pages.front();
}

TEST(Foot, ColumnNumbersRunFromTheRightUnderTheirColumns) {
    const Page page = pageOf(blankChart(12, 1));
    const Rectangle frame = frameOf(page);
    int column = 1;
    for (const Text& text : textsOf(page, Role::ColumnNumber)) {
        EXPECT_EQ(text.text, std::to_string(column));
        EXPECT_EQ(text.at.x, frame.right - column * kCellUnits + kCellUnits / 2);
        EXPECT_GT(text.at.y, frame.bottom);
        ++column;
    }
    EXPECT_EQ(column, 13);
    EXPECT_EQ(wordsOf(pageOf(blankChart(41, 1)), Role::ColumnNumber),
              (std::vector<std::string>{"1", "5", "10", "15", "20", "25", "30", "35", "40"}));
}

TEST(Foot, PointsStandUnderTheirColumns) {
    const Page page = pageOf(panel());
    const Rectangle frame = frameOf(page);
    const auto points = textsOf(page, Role::PointName);
    ASSERT_EQ(points.size(), 3U);
    EXPECT_EQ(points[1].text, "Q");
    EXPECT_EQ(points[1].at.x, frame.right - 6 * kCellUnits + kCellUnits / 2);
}

TEST(Foot, EverySizeHasALineFromItsStartToItsEnd) {
    const Page page = pageOf(panel());
    const Rectangle frame = frameOf(page);
    const auto lines = runsOf(page, Role::SizeLine);
    ASSERT_EQ(lines.size(), 3U);
    const Rectangle small = boundsOf(lines[0]);
    EXPECT_EQ(small.right, frame.right - 5 * kCellUnits - 1);
    EXPECT_EQ(small.left, frame.right - 11 * kCellUnits + 1);
    EXPECT_LT(boundsOf(lines[0]).bottom, boundsOf(lines[1]).bottom);
    EXPECT_EQ(wordsOf(page, Role::SizeName),
              (std::vector<std::string>{"small", "large, rows 1\u20133", "row 4"}));
}

// The third line of the panel is that of the rows on which its second size works columns 3 to 10.
TEST(Foot, ShapedRowsHaveALineOfTheirOwn) {
    const Page page = pageOf(panel());
    const Rectangle frame = frameOf(page);
    const auto lines = runsOf(page, Role::SizeLine);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(boundsOf(lines[1]).left, frame.right - 11 * kCellUnits + 1);
    EXPECT_EQ(boundsOf(lines[2]).right, frame.right - 2 * kCellUnits - 1);
    EXPECT_EQ(boundsOf(lines[2]).left, frame.right - 10 * kCellUnits + 1);
}

// Every tick begins at the grid; a long name stands beside its own and no other tick runs through
// it.
TEST(Foot, LongNamesOfPointsHangOnTheirTicks) {
    Chart chart = blankChart(12, 2);
    chart.points = {{"side seam", 2, {}},
                    {"centre front", 3, {}},
                    {"C", 4, {}},
                    {"underarm", 6, {}},
                    {"shoulder tip", 9, {}}};
    const Page page = pageOf(chart);
    const Rectangle frame = frameOf(page);
    const auto ticks = runsOf(page, Role::PointMark);
    const auto names = textsOf(page, Role::PointName);
    ASSERT_EQ(ticks.size(), 5U);
    ASSERT_EQ(names.size(), 5U);
    for (std::size_t i = 0; i < names.size(); ++i) {
        SCOPED_TRACE(names[i].text);
        const int x = frame.right - chart.points[i].column * kCellUnits + kCellUnits / 2;
        EXPECT_EQ(boundsOf(ticks[i]).left, x);
        EXPECT_EQ(boundsOf(ticks[i]).top, boundsOf(ticks[0]).top);
        const bool isLetter = names[i].text == "C";
        EXPECT_EQ(names[i].anchor, isLetter ? Anchor::Middle : Anchor::Start);
        if (isLetter) continue;
        EXPECT_EQ(boundsOf(ticks[i]).bottom, names[i].at.y);
        for (std::size_t k = 0; k < ticks.size(); ++k) {
            const Rectangle tick = boundsOf(ticks[k]);
            if (tick.left <= x || tick.left > x + 2 * kCellUnits) continue;
            EXPECT_LT(tick.bottom, names[i].at.y - kCellUnits / 3);
        }
    }
}

TEST(Foot, RepeatsAreNamedWithTheTimesOfTheChosenSize) {
    EXPECT_EQ(wordsOf(pageOf(panel()), Role::RepeatName),
              (std::vector<std::string>{"repeat rows 1\u20133", "repeat A, rows 1\u20133"}));
    EXPECT_EQ(wordsOf(pageOf(panel(), "large"), Role::RepeatName).back(),
              "repeat A \u00D7 5, rows 1\u20133");
}

TEST(ChosenSize, IsTintedOutlinedAndNamedAndTheRestVeiled) {
    const Page page = pageOf(panel(), "large");
    const Rectangle frame = frameOf(page);
    const auto x = [&](int column) { return frame.right - (column - 1) * kCellUnits; };
    const auto tint = runsOf(page, Role::SizeGround);
    // The lower three rows from column 2 to 11, where the jog asks for a band of its own; the top
    // row from 3 to 10.
    ASSERT_FALSE(tint.empty());
    EXPECT_EQ(boundsOf(tint.front()).right, x(2));
    EXPECT_EQ(boundsOf(tint.front()).left, x(12));
    EXPECT_EQ(boundsOf(tint.back()), (Rectangle{x(11), frame.top, x(3), frame.top + kCellUnits}));
    const auto veil = runsOf(page, Role::Veil);
    int veiled = 0;
    for (const auto& run : veil) {
        const Rectangle box = boundsOf(run);
        veiled += (box.right - box.left) / kCellUnits * ((box.bottom - box.top) / kCellUnits);
    }
    EXPECT_EQ(veiled, 3 * 2 + 4);
    EXPECT_FALSE(runsOf(page, Role::SizeOutline).empty());
    EXPECT_EQ(runsOf(page, Role::ChosenSizeLine).size(), 2U);
    EXPECT_EQ(runsOf(page, Role::SizeLine).size(), 1U);
    EXPECT_EQ(wordsOf(page, Role::ChosenSizeName),
              (std::vector<std::string>{"large, rows 1\u20133", "row 4", "large"}));
}

TEST(ChosenSize, ItsOutlineStepsWithItsShaping) {
    const Page page = pageOf(panel(), "large");
    const Rectangle frame = frameOf(page);
    const auto x = [&](int column) { return frame.right - (column - 1) * kCellUnits; };
    const int step = frame.top + kCellUnits;
    const auto outline = runsOf(page, Role::SizeOutline);
    EXPECT_THAT(outline, Contains(std::vector<Spot>{{x(3), step}, {x(2), step}}));
    EXPECT_THAT(outline, Contains(std::vector<Spot>{{x(12), step}, {x(11), step}}));
}

TEST(ChosenSize, AStartInsideARepeatIsADashedLine) {
    const Page page = pageOf(panel(), "small");
    const Rectangle frame = frameOf(page);
    const auto edges = runsOf(page, Role::SizeEdge);
    ASSERT_FALSE(edges.empty());
    EXPECT_EQ(edges.front().front(), (Spot{frame.right - 5 * kCellUnits, frame.bottom}));
    EXPECT_TRUE(runsOf(pageOf(panel(), "large"), Role::SizeEdge).empty());
}

TEST(ChosenSize, ARepeatWorkedNoTimeIsVeiled) {
    Chart chart = panel();
    chart.sizes[1].times["A"] = 0;
    const Page page = pageOf(chart, "large");
    int tinted = 0;
    for (const auto& run : runsOf(page, Role::SizeGround)) {
        const Rectangle box = boundsOf(run);
        tinted += (box.right - box.left) / kCellUnits * ((box.bottom - box.top) / kCellUnits);
    }
    EXPECT_EQ(tinted, 3 * 4 + 8);
}

TEST(ChosenSize, StitchesOfItsOwnAreOutlinedAndTold) {
    Chart chart = panel();
    chart.sizes[0].substitutions = {{0, 8, Edge::Start, "k", {}}, {3, 7, Edge::End, "c22l", {}}};
    const Page page = pageOf(chart, "small");
    const Rectangle frame = frameOf(page);
    const auto x = [&](int column) { return frame.right - (column - 1) * kCellUnits; };
    const auto outlines = runsOf(page, Role::SwapOutline);
    ASSERT_EQ(outlines.size(), 2U);
    EXPECT_EQ(boundsOf(outlines[0]),
              (Rectangle{x(9) + 3, frame.bottom - kCellUnits + 3, x(8) - 3, frame.bottom - 3}));
    // A crossed stitch over four columns.
    EXPECT_EQ(boundsOf(outlines[1]),
              (Rectangle{x(11) + 3, frame.top + 3, x(7) - 3, frame.top + kCellUnits - 3}));
    EXPECT_EQ(runsOf(page, Role::Swap).size(), 2U);
    EXPECT_TRUE(runsOf(pageOf(chart, "large"), Role::SwapOutline).empty());
    std::string words;
    for (const std::string& line : wordsOf(page, Role::Body)) words += line + " ";
    EXPECT_THAT(words, testing::HasSubstr("Row 1, column 8 (outlined), nearest the start:"));
}

TEST(Sizes, OfFlatChartsAreSaidToRunBackOnWrongSideRows) {
    const auto words = [](const Chart& chart) {
        std::string all;
        for (const std::string& line : wordsOf(pageOf(chart), Role::Body)) all += line + " ";
        return all;
    };
    const auto says = testing::HasSubstr("run back to where it begins");
    Chart chart = panel();
    EXPECT_THAT(words(chart), says);
    chart.worked = Worked::InTheRound;
    EXPECT_THAT(words(chart), testing::Not(says));
    chart.worked = Worked::Flat;
    chart.uncharted = Uncharted::Purl;
    EXPECT_THAT(words(chart), testing::Not(says));
    chart.uncharted = Uncharted::None;
    chart.sizes.clear();
    EXPECT_THAT(words(chart), testing::Not(says));
}

TEST(ChosenSize, NoSizeChosenMeansNothingIsTintedOrVeiled) {
    const Page page = pageOf(panel());
    EXPECT_TRUE(runsOf(page, Role::SizeGround).empty());
    EXPECT_TRUE(runsOf(page, Role::Veil).empty());
    EXPECT_TRUE(runsOf(page, Role::SizeOutline).empty());
}

}  // namespace
}  // namespace lacewright
