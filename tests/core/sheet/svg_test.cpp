#include "core/sheet/svg.h"

#include <map>

#include "core/base/disk.h"
#include "core/sheet/path_data.h"
#include "tests/core/sheet/sheet_probe.h"
#include "tests/support/large_lace.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::panel;
using testing::HasSubstr;
using testing::Not;

// What a strict but small XML reader finds: elements with their attributes, in order. Fails the
// test on anything that is not well formed.
struct Element {
    std::string name;
    std::map<std::string, std::string> attributes;
};
std::vector<Element> elementsOf(const std::string& xml) {
    std::vector<Element> elements;
    std::vector<std::string> open;
    std::size_t at = xml.find("?>") + 2;
    while ((at = xml.find('<', at)) != std::string::npos) {
        const std::size_t end = xml.find('>', at);
        std::string tag = xml.substr(at + 1, end - at - 1);
        at = end;
        if (tag.front() == '/') {
            EXPECT_FALSE(open.empty());
            if (open.empty()) return elements;
            EXPECT_EQ(open.back(), tag.substr(1));
            open.pop_back();
            continue;
        }
        const bool empty = tag.back() == '/';
        if (empty) tag.pop_back();
        Element element;
        std::size_t i = tag.find_first_of(" \n");
        element.name = tag.substr(0, i);
        while (i != std::string::npos &&
               (i = tag.find_first_not_of(" \n", i)) != std::string::npos) {
            const std::size_t equals = tag.find("=\"", i);
            const std::size_t close = tag.find('"', equals + 2);
            EXPECT_TRUE(equals != std::string::npos && close != std::string::npos) << tag;
            if (close == std::string::npos) return elements;
            const bool fresh =
                element.attributes
                    .emplace(tag.substr(i, equals - i), tag.substr(equals + 2, close - equals - 2))
                    .second;
            EXPECT_TRUE(fresh) << "an attribute twice in " << tag;
            i = close + 1;
        }
        if (!empty) open.push_back(element.name);
        elements.push_back(std::move(element));
    }
    EXPECT_TRUE(open.empty());
    return elements;
}

TEST(Svg, IsWellFormedWithUniqueIdsAndResolvedNames) {
    SheetOptions options;
    options.size = "small";
    const std::string svg = svgText(layOut(panel(), options));
    std::set<std::string> ids;
    const auto elements = elementsOf(svg);
    for (const Element& element : elements) {
        const auto id = element.attributes.find("id");
        if (id == element.attributes.end()) continue;
        EXPECT_TRUE(ids.insert(id->second).second) << id->second;
    }
    const auto& root = elements.front();
    EXPECT_EQ(root.name, "svg");
    EXPECT_EQ(root.attributes.at("aria-labelledby"), "title desc");
    EXPECT_TRUE(ids.contains("title"));
    EXPECT_TRUE(ids.contains("desc"));
    EXPECT_EQ(elements[1].name, "title");
    EXPECT_EQ(elements[2].name, "desc");
    EXPECT_THAT(svg,
                HasSubstr("<title id=\"title\">Tide &lt;panel&gt; &amp; &quot;edge&quot;</title>"));
}

TEST(Svg, EveryClassOfAShapeOrTextHasAStyleRule) {
    const std::string svg = svgText(layOut(panel(), {}));
    for (const Element& element : elementsOf(svg)) {
        if (element.name != "path" && element.name != "text") continue;
        const std::string classes = element.attributes.at("class");
        const std::string role = classes.substr(0, classes.find(' '));
        EXPECT_THAT(svg, HasSubstr("\n." + role + "{")) << role;
    }
}

TEST(Svg, AsksForFontsInAListWithoutQuotes) {
    EXPECT_THAT(svgText(layOut(panel(), {})),
                HasSubstr("\ntext{font-family:DejaVu Sans, Verdana, Arial, sans-serif}\n"));
}

TEST(Svg, UsesOnlyWhatEveryRendererDraws) {
    SheetOptions options;
    options.size = "large";
    const std::set<std::string> safe = {"svg", "title", "desc", "style", "g", "path", "text"};
    for (const Element& element : elementsOf(svgText(layOut(panel(), options)))) {
        EXPECT_TRUE(safe.contains(element.name)) << element.name;
    }
}

TEST(Svg, RowsAreGroupsWithClassesAndWords) {
    const std::string svg = svgText(layOut(panel(), {}));
    EXPECT_THAT(svg,
                HasSubstr("<g class=\"row row-2 ws\" id=\"row-2\">\n<title>Row 2, wrong side: "));
    EXPECT_THAT(svg,
                HasSubstr("<g class=\"row row-1 rs\" id=\"row-1\">\n<title>Row 1, right side: "));
    EXPECT_THAT(svg, HasSubstr("class=\"stitch stitch-k2tog\""));
}

TEST(Svg, SizeIsGivenInMillimetresAndCellsAreWholeUnits) {
    SheetOptions options;
    options.cellMm = 8;
    const Sheet sheet = layOut(blankChart(3, 2), options);
    const Element root = elementsOf(svgText(sheet)).front();
    EXPECT_EQ(root.attributes.at("viewBox"), "0 0 " + std::to_string(sheet.pages[0].width) + " " +
                                                 std::to_string(sheet.pages[0].height));
    EXPECT_NEAR(std::stod(root.attributes.at("width")), sheet.pages[0].width * 0.4, 0.01);
    EXPECT_TRUE(root.attributes.at("width").ends_with("mm"));
}

TEST(Svg, LargeChartsLeaveTheWordsAway) {
    const Chart small = blankChart(100, 200);
    EXPECT_THAT(svgText(layOut(small, {})), HasSubstr("<title>Row 200"));
    const std::string svg = svgText(layOut(blankChart(101, 200), {}));
    EXPECT_THAT(svg, Not(HasSubstr("<title>Row")));
    EXPECT_THAT(svg, HasSubstr("role=\"img\""));
}

TEST(Svg, PathsAreSplitBeforeAPainterCutsThemOff) {
    Chart chart = blankChart(4000, 1);
    std::vector<StitchIndex> cells(4000, test::stitch("yo2"));
    chart.rows.replace(0, makeRow(cells, *chart.stitches));
    int paths = 0;
    std::size_t places = 0;
    for (const Element& element : elementsOf(svgText(layOut(chart, {})))) {
        const auto found = element.attributes.find("class");
        if (element.name != "path" || found->second != "stitch stitch-yo2") continue;
        const std::string& d = element.attributes.at("d");
        const auto moves = std::count(d.begin(), d.end(), 'M');
        EXPECT_LT(moves * 14, 32767);
        if (moves > 2) {
            ++paths;
            places += static_cast<std::size_t>(moves) / 2;
        }
    }
    EXPECT_EQ(places, 4000U);
    EXPECT_EQ(paths, 4);
}

TEST(Svg, ALargeLaceChartTakesAtMost36BytesForEveryCellThatIsNotPlain) {
    const Chart chart = test::largeLace(1000, 1000);
    const double cells = test::cellsNotPlain(chart);
    ASSERT_NEAR(cells / 1e6, 0.27, 0.005);
    EXPECT_LE(static_cast<double>(svgText(layOut(chart, {})).size()) / cells, 36);
}

TEST(Svg, LinesStayShort) {
    const std::string svg = svgText(layOut(blankChart(1000, 40), {}));
    std::size_t start = 0;
    for (std::size_t end = svg.find('\n'); end != std::string::npos; end = svg.find('\n', start)) {
        EXPECT_LT(end - start, 100'000U);
        start = end + 1;
    }
}

TEST(Svg, StitchIdsOfAnyKindMakeClasses) {
    EXPECT_EQ(stitchClass("k2tog"), "stitch-k2tog");
    EXPECT_EQ(stitchClass("2/2 RC"), "stitch-2_472_32RC");
    EXPECT_NE(stitchClass("a b"), stitchClass("a.b"));
}

// The picture of one small chart, byte by byte. Refresh after an intended change:
//   LACEWRIGHT_REFRESH_GOLDEN=1 build/dev/tests/core_tests
//   --gtest_filter=Svg.MatchesTheGoldenPicture
TEST(Svg, MatchesTheGoldenPicture) {
    SheetOptions options;
    options.size = "small";
    const std::string svg = svgText(layOut(panel(), options));
    const std::string path = test::inSourceTree("tests/golden/panel.svg");
    if (std::getenv("LACEWRIGHT_REFRESH_GOLDEN") != nullptr) {
        ASSERT_TRUE(writeFile(path, svg));
    }
    const Result<std::string> golden = readFile(path);
    ASSERT_TRUE(golden) << golden.error().text();
    EXPECT_EQ(svg, *golden);
}

}  // namespace
}  // namespace lacewright
