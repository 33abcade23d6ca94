#include "core/base/text.h"
#include "core/sheet/drawing.h"
#include "core/sheet/text_blocks.h"
#include "tests/core/sheet/sheet_probe.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::groupOf;
using test::panel;
using test::wordsOf;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

// The texts of a group, lines joined.
std::string words(const Page& page, const std::string& name) {
    const ItemGroup* group = groupOf(page, name);
    std::vector<std::string> lines;
    if (group == nullptr) return {};
    for (const Item& item : group->items) {
        if (const auto* text = std::get_if<Text>(&item)) lines.push_back(text->text);
    }
    return join(lines, " ");
}

Page pageOf(const Chart& chart, const std::string& size = {}) {
    SheetOptions options;
    options.size = size;
    return layOut(chart, options).pages.front();
}

TEST(Legend, HoldsExactlyTheStitchesUsed) {
    const Chart chart = panel();
    const Sheet sheet = layOut(chart, {});
    const Page& page = sheet.pages.front();
    std::set<std::string> used;
    for (int row = 0; row < chart.height(); ++row) {
        for (const StitchIndex cell : chart.row(row).cells()) {
            if (cell != kCovered) used.insert((*chart.stitches)[cell].name);
        }
    }
    std::set<std::string> named;
    for (const Text& text : test::textsOf(page, Role::Name)) {
        named.insert(text.text.substr(0, text.text.rfind(" (")));
    }
    named.erase("small");
    named.erase("large");
    EXPECT_EQ(named, used);
    std::set<std::string> shown;
    for (const Item& item : groupOf(page, "legend")->items) {
        const auto* run = std::get_if<GlyphRun>(&item);
        if (run != nullptr) shown.insert(sheet.glyphs[static_cast<std::size_t>(run->glyph)].stitch);
    }
    EXPECT_EQ(shown.size(), sheet.glyphs.size());
}

TEST(Legend, TellsBothSidesOnlyWhereAStitchIsUsedOnBoth) {
    const std::string flat = words(pageOf(chartOf({"k k2tog", "k p"})), "legend");
    EXPECT_THAT(flat, HasSubstr("Right side: Knit the next stitch."));
    EXPECT_THAT(flat, HasSubstr("Wrong side: Purl the next stitch."));
    EXPECT_THAT(flat, HasSubstr("Right side: Knit the next 2 stitches together"));
    EXPECT_THAT(flat, Not(HasSubstr("Purl the next 2 stitches together")));
    EXPECT_THAT(flat, HasSubstr("Wrong side: Knit the next stitch."));

    Chart round = chartOf({"k k2tog", "k p"});
    round.worked = Worked::InTheRound;
    EXPECT_THAT(words(pageOf(round), "legend"), Not(HasSubstr("side:")));
}

TEST(Legend, AnUnknownStitchIsAQuestionMark) {
    Chart chart = chartOf({"k k"});
    Stitch odd;
    odd.id = "odd";
    odd.name = "odd";
    odd.kind = StitchKind::Unknown;
    chart.stitches = *chart.stitches->with(odd);
    const StitchIndex index = *chart.stitches->find("odd");
    chart.rows.replace(0, makeRow({index, index}, *chart.stitches));
    const Sheet sheet = layOut(chart, {});
    ASSERT_EQ(sheet.glyphs.size(), 1U);
    EXPECT_EQ(sheet.glyphs.front().stitch, "odd");
    EXPECT_FALSE(sheet.glyphs.front().strokes.empty());
}

TEST(Reading, SaysTheRuleForRowsThatAreNotCharted) {
    Chart chart = chartOf({"k k", "k k"});
    EXPECT_THAT(words(pageOf(chart), "reading"), Not(HasSubstr("not charted")));
    chart.uncharted = Uncharted::AsTheyPresent;
    EXPECT_THAT(words(pageOf(chart), "reading"),
                HasSubstr("Wrong-side rows are not charted: work every stitch as it presents"));
    chart.worked = Worked::InTheRound;
    chart.uncharted = Uncharted::Knit;
    EXPECT_THAT(words(pageOf(chart), "reading"),
                HasSubstr("Even-numbered rounds are not charted: knit every stitch."));
}

TEST(Counts, AreAFormWithoutASizeAndNumbersWithOne) {
    const Page whole = pageOf(panel());
    EXPECT_THAT(words(whole, "reading"), HasSubstr("Stitches: "));
    EXPECT_THAT(words(whole, "reading"), HasSubstr("A + "));
    const std::string chosen = words(pageOf(panel(), "large"), "reading");
    // Columns 2, 3, box of 6 five times, 10, 11; a k2tog and a ssk make it 8 stitches a box.
    EXPECT_THAT(chosen, HasSubstr("Stitches of size large: "));
    EXPECT_THAT(chosen, Not(HasSubstr("A letter stands")));
}

TEST(Counts, OfAPlainRibAreTheMultiple) {
    Chart chart = chartOf({"k k p p k", "k k p p k"});
    Repeat repeat;
    repeat.name = "A";
    repeat.right = 2;
    repeat.left = 5;
    repeat.lastRow = 1;
    chart.repeats = {repeat};
    const SheetOptions options;
    const Drawing drawing{chart, options, nullptr, 0.25, {}, true};
    EXPECT_EQ(countSentences(drawing).front(),
              "Stitches: 4A + 1 before row 1 and after every row.");
}

TEST(Sizes, AreToldWithTheirPointsRepeatsAndCounts) {
    const std::string sizes = words(pageOf(panel()), "sizes");
    EXPECT_THAT(sizes,
                HasSubstr("small On rows 1\u20133 begin at Q, work to the end of repeat A, then "
                          "work repeat A 3 times, end at R: 28 sts. On row 4 begin at Q, "
                          "end at R: 6 sts. Its designer expects 25 stitches."));
    EXPECT_THAT(sizes,
                HasSubstr("large On rows 1\u20133 begin at P, work to the end of repeat A, then "
                          "work repeat A 4 more times, end at R: 38 sts."));
    EXPECT_THAT(sizes, HasSubstr("On row 4 begin at column 3, end at column 10: 8 sts."));
}

TEST(Notes, AndSourceStandAtTheEnd) {
    const Page page = pageOf(panel());
    EXPECT_EQ(words(page, "notes"), "Notes Slip the first stitch of every row.");
    EXPECT_EQ(words(page, "source"), "Source Invented for this test");
    EXPECT_THAT(wordsOf(page, Role::Title), Contains("Tide <panel> & \"edge\""));
}

TEST(Texts, StayInsideThePictureAndApart) {
    Chart chart = panel();
    chart.notes = std::string(3000, 'w') + " " + std::string(400, 'i');
    const Sheet sheet = layOut(chart, {});
    const Page& page = sheet.pages.front();
    const SheetOptions options;
    const Drawing drawing{chart, options, nullptr, sheet.unitMm, {}, true};
    const Extent extent = extentOf(drawing, page.groups);
    EXPECT_GE(extent.left, 0);
    EXPECT_GE(extent.top, 0);
    EXPECT_LE(extent.right, page.width);
    EXPECT_LE(extent.bottom, page.height);
}

}  // namespace
}  // namespace lacewright
