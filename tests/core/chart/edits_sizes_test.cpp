#include <gtest/gtest.h>

#include <climits>

#include "core/chart/edits.h"

namespace lacewright {
namespace {

Size sized(const std::string& name, int start, int end) {
    Size size;
    size.name = name;
    size.reach = {start, end};
    return size;
}

// "A1 C5": names and columns of the points, in their order.
std::string pointsOf(const Chart& chart) {
    std::string text;
    for (const Point& point : chart.points) {
        if (!text.empty()) text += ' ';
        text += point.name + "@" + std::to_string(point.column);
    }
    return text;
}

Chart twoSizes() {
    const Chart chart = *addSize(blankChart(20, 4), sized("S", 5, 10));
    return *addSize(chart, sized("M", 3, 10));
}

std::string sizeNames(const Chart& chart) {
    std::string names;
    for (const Size& size : chart.sizes) names += size.name;
    return names;
}

TEST(AddSize, LettersItsEdgesInOrderFromTheRight) {
    const Chart one = *addSize(blankChart(20, 4), sized("S", 5, 10));
    EXPECT_EQ(pointsOf(one), "A@5 B@10");
    EXPECT_EQ(pointsOf(twoSizes()), "A@3 B@5 C@10");
}

TEST(AddSize, NeverTouchesANameGivenByHand) {
    Chart chart = *renamePoint(twoSizes(), "B", "Centre");
    chart = *addSize(chart, sized("L", 1, 12));
    EXPECT_EQ(pointsOf(chart), "A@1 B@3 Centre@5 D@10 E@12");
}

TEST(AddSize, TakesAFreeLetterWhenTheLettersAreNotInOrder) {
    Chart chart = *renamePoint(twoSizes(), "A", "F");
    chart = *addSize(chart, sized("L", 4, 12));
    EXPECT_EQ(pointsOf(chart), "F@3 A@4 B@5 C@10 D@12");
}

TEST(AddSize, WorksEveryRepeatOnceUnlessItSaysOtherwise) {
    Chart chart = *addRepeat(blankChart(20, 4), {"A", 5, 6, 0, 3, {}, {}});
    chart = *addRepeat(chart, {"B", 7, 8, 0, 3, {}, {}});
    Size size = sized("S", 1, 20);
    size.times = {{"B", 4}};
    const auto edited = addSize(chart, size);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->sizes[0].times, (std::map<std::string, int>{{"A", 1}, {"B", 4}}));
}

TEST(AddSize, RefusesWhatTheChartCannotHold) {
    const Chart chart = twoSizes();
    EXPECT_EQ(addSize(chart, sized("S", 1, 2)).error().message, "Two sizes are named S.");
    EXPECT_EQ(addSize(chart, sized("", 1, 2)).error().message, "Every size needs a name.");
    EXPECT_EQ(addSize(chart, sized("L", 3, 21)).error().message,
              "Size L works columns 3 to 21, which do not lie in a chart of 20.");
    EXPECT_FALSE(addSize(chart, sized("L", 4, 3)));
    Size size = sized("L", 1, 20);
    size.changes = {{2, 3, {2, 3}, {}}, {1, 1, {2, 3}, {}}};
    EXPECT_EQ(addSize(chart, size).error().message,
              "Size L has rows of its own that are out of order or outside.");
    size.changes = {{2, 3, {2, 30}, {}}};
    EXPECT_FALSE(addSize(chart, size));
    size.changes.clear();
    size.stitches = -1;
    EXPECT_EQ(addSize(chart, size).error().message, "Size L cannot have -1 stitches.");
}

TEST(AddSize, RefusesSubstitutionsThatDoNotFit) {
    const Chart chart = blankChart(20, 4);
    Size size = sized("L", 1, 20);
    size.substitutions = {{3, 21, Edge::Start, "p", {}}};
    EXPECT_EQ(addSize(chart, size).error().message, "Size L replaces a stitch outside the chart.");
    size.substitutions = {{3, 20, Edge::End, "nonesuch", {}}};
    EXPECT_EQ(addSize(chart, size).error().message,
              "Size L replaces a stitch by nonesuch, which the chart does not have.");
    size.substitutions = {{3, 20, Edge::End, "c11r", {}}};
    EXPECT_EQ(addSize(chart, size).error().message,
              "Size L replaces the stitch in row 4, column 20, by one of another width.");
    size.substitutions = {{3, 20, Edge::End, "p", {}}};
    EXPECT_TRUE(addSize(chart, size));
}

TEST(ChangeSize, DropsLettersThatNobodyRefersToAnyMore) {
    const Chart chart = twoSizes();
    const auto edited = changeSize(chart, "M", sized("Medium", 4, 12));
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->sizes[1].name, "Medium");
    EXPECT_EQ(pointsOf(*edited), "A@4 B@5 C@10 D@12");
    EXPECT_EQ(changeSize(chart, "M", sized("S", 3, 10)).error().message, "Two sizes are named S.");
    EXPECT_EQ(changeSize(chart, "L", sized("L", 3, 10)).error().message,
              "The chart has no size L.");
    EXPECT_EQ(*changeSize(chart, "M", chart.sizes[1]), chart);
}

TEST(ChangeSize, KeepsPointsNoSizeEverReferredTo) {
    Chart chart = twoSizes();
    chart.points.push_back({"D", 15, {}});
    EXPECT_EQ(pointsOf(*changeSize(chart, "M", sized("M", 5, 10))), "A@5 B@10 C@15");
}

TEST(RemoveSize, KeepsPointsNamedByHand) {
    const Chart chart = *renamePoint(twoSizes(), "A", "Hem");
    const auto edited = removeSize(chart, "M");
    ASSERT_TRUE(edited);
    EXPECT_EQ(pointsOf(*edited), "Hem@3 B@5 C@10");
    EXPECT_EQ(pointsOf(*removeSize(twoSizes(), "M")), "A@5 B@10");
    EXPECT_EQ(removeSize(chart, "L").error().code, ErrorCode::NotFound);
}

TEST(MoveSize, ChangesTheOrderAndStopsAtTheEnds) {
    Chart chart = blankChart(5, 1);
    for (const char* name : {"a", "b", "c", "d"}) chart = *addSize(chart, sized(name, 1, 5));
    EXPECT_EQ(sizeNames(*moveSize(chart, "a", 2)), "bcad");
    EXPECT_EQ(sizeNames(*moveSize(chart, "d", -2)), "adbc");
    EXPECT_EQ(sizeNames(*moveSize(chart, "b", INT_MAX)), "acdb");
    EXPECT_EQ(sizeNames(*moveSize(chart, "c", INT_MIN)), "cabd");
    EXPECT_EQ(*moveSize(chart, "c", 0), chart);
    EXPECT_EQ(moveSize(chart, "x", 1).error().code, ErrorCode::NotFound);
}

TEST(RenamePoint, KeepsNamesDistinct) {
    EXPECT_EQ(pointsOf(*renamePoint(twoSizes(), "B", "Hem")), "A@3 Hem@5 C@10");
    EXPECT_EQ(renamePoint(twoSizes(), "B", "C").error().message, "Two points are named C.");
    EXPECT_EQ(renamePoint(twoSizes(), "X", "Y").error().message, "The chart has no point X.");
}

TEST(RenamePoint, RemovesOnlyPointsNoSizeNeeds) {
    Chart chart = twoSizes();
    chart.points.push_back({"D", 15, {}});
    EXPECT_EQ(pointsOf(*renamePoint(chart, "D", "")), "A@3 B@5 C@10");
    EXPECT_EQ(renamePoint(chart, "B", "").error().message,
              "Size S begins or ends at point B, so the point can be renamed but not removed.");
    chart.points.push_back({"Hem", 5, {}});
    EXPECT_EQ(pointsOf(*renamePoint(chart, "Hem", "")), "A@3 B@5 C@10 D@15");
}

TEST(SetProperties, RoundTripAndRightSideInTheRound) {
    const Chart chart = twoSizes();
    ChartProperties properties = propertiesOf(chart);
    EXPECT_EQ(*setProperties(chart, properties), chart);
    properties.name = "Fern";
    properties.castOn = CastOn{6, -1, {}};
    properties.firstSide = Side::Wrong;
    const auto flat = setProperties(chart, properties);
    ASSERT_TRUE(flat);
    EXPECT_EQ(propertiesOf(*flat), properties);
    EXPECT_EQ(flat->rows[0], chart.rows[0]);
    properties.worked = Worked::InTheRound;
    EXPECT_EQ(setProperties(chart, properties)->firstSide, Side::Right);
}

TEST(SetProperties, RefusesWhatNoChartCanHave) {
    const Chart chart = twoSizes();
    const auto refusalOf = [&](auto change) {
        ChartProperties properties = propertiesOf(chart);
        change(properties);
        return setProperties(chart, properties).error().message;
    };
    EXPECT_EQ(refusalOf([](auto& p) { p.notes.assign(kMaxTextLength + 1, 'x'); }),
              "The text of the notes is longer than 20000 characters.");
    EXPECT_EQ(refusalOf([](auto& p) { p.name = "\xFF"; }),
              "The name of the chart is not valid UTF-8.");
    EXPECT_EQ(refusalOf([](auto& p) {
                  p.castOn = CastOn{-1, 0, {}};
              }),
              "The cast-on cannot be a multiple of -1 plus 0.");
    EXPECT_EQ(refusalOf([](auto& p) {
                  p.castOn = CastOn{0, -1, {}};
              }),
              "The cast-on cannot be a multiple of 0 plus -1.");
    EXPECT_EQ(refusalOf([](auto& p) { p.gauge.rows = -2; }),
              "The gauge must lie between 0 and 1000 over 10 cm.");
}

TEST(DefineStitch, AddsAStitchAndKeepsTheRows) {
    const Chart chart = twoSizes();
    Stitch stitch;
    stitch.id = "fancy";
    stitch.makes = 7;
    const auto edited = defineStitch(chart, stitch);
    ASSERT_TRUE(edited);
    EXPECT_EQ(edited->rows[0], chart.rows[0]);
    const auto index = edited->stitches->find("fancy");
    ASSERT_TRUE(index);
    EXPECT_TRUE(drawStitch(*edited, 0, 1, *index));
    EXPECT_FALSE(drawStitch(chart, 0, 1, *index));
    EXPECT_EQ(defineStitch(*edited, stitch).error().message,
              "A stitch named \"fancy\" exists already.");
}

TEST(DefineStitch, StopsAtAsManyAsAFileMayHold) {
    Chart chart = blankChart(1, 1);
    std::vector<Stitch> all;
    for (std::size_t i = 1; i <= builtInStitches()->size(); ++i) {
        all.push_back((*builtInStitches())[static_cast<StitchIndex>(i)]);
    }
    Stitch stitch;
    for (int i = 1; i < kMaxOwnStitches; ++i) {
        stitch.id = "own" + std::to_string(i);
        all.push_back(stitch);
    }
    chart.stitches = std::make_shared<StitchCatalogue>(all);
    stitch.id = "last";
    const auto last = defineStitch(chart, stitch);
    ASSERT_TRUE(last);
    stitch.id = "oneMore";
    EXPECT_EQ(defineStitch(*last, stitch).error().message,
              "A chart defines at most 1000 stitches of its own.");
}

}  // namespace
}  // namespace lacewright
