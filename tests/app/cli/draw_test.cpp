#include "core/base/disk.h"
#include "core/sheet/sheet.h"
#include "tests/app/cli/cli_run.h"

namespace lacewright::cli {
namespace {

using testing::HasSubstr;
using testing::Not;

class DrawVerb : public testing::Test {
 protected:
    void SetUp() override { ASSERT_TRUE(saveChart(soundChart(), file_)); }

    std::string written(const std::string& name) const {
        const Result<std::string> text = readFile(folder_ / name);
        EXPECT_TRUE(text) << name;
        return text ? *text : std::string();
    }

    test::TempDir folder_;
    std::string file_ = folder_ / "chart.lacewright";
};

TEST_F(DrawVerb, WritesAnSvgWithTheChartsNameOrTheTitleGiven) {
    EXPECT_EQ(run({"draw", file_, "-o", folder_ / "a.svg"}).code, kDone);
    EXPECT_THAT(written("a.svg"), HasSubstr("<title id=\"title\">Lanterns</title>"));
    EXPECT_EQ(run({"draw", file_, "-o", folder_ / "b.SVG", "--title=Autumn & winter"}).code, kDone);
    EXPECT_THAT(written("b.SVG"), HasSubstr("Autumn &amp; winter</title>"));
}

TEST_F(DrawVerb, HighlightsTheSizeGivenAndNoneOtherwise) {
    EXPECT_EQ(run({"draw", "--size", "large", "-o", folder_ / "a.svg", file_}).code, kDone);
    EXPECT_THAT(written("a.svg"), HasSubstr("class=\"size-outline\""));
    EXPECT_EQ(run({"draw", "--size=all", "-o", folder_ / "b.svg", file_}).code, kDone);
    EXPECT_THAT(written("b.svg"), Not(HasSubstr("class=\"size-outline\"")));
}

TEST_F(DrawVerb, HandsPdfOnPaperAndPngToThePainters) {
    std::vector<std::pair<std::string, Sheet>> painted;
    SheetPainters painters;
    painters.pdf = [&](const Sheet& sheet, const std::string& path) -> Outcome {
        painted.emplace_back(path, sheet);
        return Done{};
    };
    painters.png = painters.pdf;
    EXPECT_EQ(run({"draw", file_, "-o", "a.pdf", "--paper", "Letter"}, painters).code, kDone);
    EXPECT_EQ(run({"draw", file_, "-o", "b.png", "--cell", "8"}, painters).code, kDone);
    ASSERT_EQ(painted.size(), 2U);
    EXPECT_NEAR(painted[0].second.pages[0].width * painted[0].second.unitMm, 215.9, 0.3);
    EXPECT_EQ(painted[1].first, "b.png");
    EXPECT_DOUBLE_EQ(painted[1].second.unitMm, 0.4);
}

TEST_F(DrawVerb, SaysWhatAPainterCouldNotDo) {
    SheetPainters painters;
    painters.pdf = [](const Sheet&, const std::string&) -> Outcome {
        return Error{ErrorCode::Unwritable, "The disk is full.", "a.pdf"};
    };
    expectMisuse(run({"draw", file_, "-o", "a.pdf"}, painters), "a.pdf: The disk is full.");
    expectMisuse(run({"draw", file_, "-o", "a.pdf"}), "This build draws SVG only");
}

TEST_F(DrawVerb, MisuseIsOneSentence) {
    const std::string svg = folder_ / "a.svg";
    expectMisuse(run({"draw", file_}), "draw needs -o");
    expectMisuse(run({"draw", file_, file_, "-o", svg}), "one chart at a time");
    expectMisuse(run({"draw", file_, "-o", "a.gif"}), "must end in .svg, .pdf or .png");
    expectMisuse(run({"draw", file_, "-o", svg, "--cell", "wide"}), "--cell must be a number");
    expectMisuse(run({"draw", file_, "-o", svg, "--cell", "nan"}), "--cell must be a number");
    expectMisuse(run({"draw", file_, "-o", svg, "--paper", "a4"}), "--paper is for PDF only");
    expectMisuse(run({"draw", file_, "-o", "a.pdf", "--paper", "foolscap"}), "--paper must be");
    expectMisuse(run({"draw", file_, "-o", svg, "--size", "larg"}), "did you mean \"large\"?");
    expectMisuse(run({"draw", "missing.lacewright", "-o", svg}), "missing.lacewright");
    expectMisuse(run({"draw", file_, "-o", folder_ / "no/such/folder/a.svg"}), "a.svg");
}

}  // namespace
}  // namespace lacewright::cli
