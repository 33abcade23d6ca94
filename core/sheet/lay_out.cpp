#include "core/sheet/lay_out.h"

#include <algorithm>
#include <utility>

#include "core/base/text.h"
#include "core/sheet/grid.h"
#include "core/sheet/pages.h"
#include "core/sheet/text_blocks.h"

namespace lacewright {
namespace {

constexpr int kMargin = 24;             // units around the picture
constexpr int kNarrowestPicture = 560;  // room for two columns of text
constexpr int kSideText = 280;          // width of the text beside a narrow chart
constexpr int kSideGap = 36;

// A question mark, for stitches a file names but nothing defines.
const std::vector<GlyphStroke> kUnknownGlyph = {{6, 7, "c0-6 8-6 8-1 0 3-4 3-4 7", false, {}},
                                                {10, 16, "v1", false, {}}};

std::vector<StitchUse> usesOf(const Chart& chart) {
    std::vector<StitchUse> uses(chart.stitches->size() + 1);
    for (int row = 0; row < chart.height(); ++row) {
        const bool right = chart.sideOf(row) == Side::Right;
        for (const StitchIndex stitch : chart.row(row).cells()) {
            (right ? uses[stitch].onRight : uses[stitch].onWrong) = true;
        }
    }
    uses[kCovered] = {};
    return uses;
}

std::vector<GlyphShape> takeGlyphs(const StitchCatalogue& stitches, std::vector<StitchUse>& uses) {
    std::vector<GlyphShape> glyphs;
    for (std::size_t i = 1; i < uses.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        const bool unknown = stitch.kind == StitchKind::Unknown && stitch.glyph.empty();
        if (!uses[i].used() || (stitch.glyph.empty() && !unknown)) continue;
        uses[i].glyph = static_cast<int>(glyphs.size());
        glyphs.push_back({stitch.id, unknown ? kUnknownGlyph : stitch.glyph});
    }
    return glyphs;
}

std::string describe(const Drawing& drawing) {
    const Chart& chart = drawing.chart;
    const bool flat = chart.worked == Worked::Flat;
    std::string words = "Knitting chart of " + counted(chart.width, "column", "columns") + " and " +
                        counted(chart.height(), flat ? "charted row" : "charted round",
                                flat ? "charted rows" : "charted rounds") +
                        (flat ? ", worked flat." : ", worked in the round.");
    for (const Repeat& repeat : chart.repeats) {
        words += " Repeat " + repeat.name + ": columns " + std::to_string(repeat.right) + " to " +
                 std::to_string(repeat.left) + ".";
    }
    if (drawing.size != nullptr) words += " Size " + drawing.size->name + " is highlighted.";
    if (!drawing.inWords) words += " The rows are too many to be told in words here.";
    return words;
}

// Chart and text on one page as large as they need: side by side when the chart is narrow.
Page onePicture(const Drawing& drawing, const std::string& title) {
    Page page;
    std::vector<ItemGroup> chart =
        drawPiece(drawing, {1, drawing.chart.width, 0, drawing.chart.height() - 1});
    const Extent extent = extentOf(drawing, chart);
    const int titleHeight = drawing.units(drawing.body() * kTitleShare * 1.6);
    const bool beside = extent.width() + kSideGap + kSideText <= kNarrowestPicture + kSideText / 2;
    const int inner = beside ? extent.width() + kSideGap + kSideText
                             : std::max(extent.width(), kNarrowestPicture);
    const int top = kMargin + titleHeight;
    const int chartX = beside ? kMargin : kMargin + (inner - extent.width()) / 2;
    move(chart, chartX - extent.left, top - extent.top);

    Area area{kMargin, top + extent.height() + kSideGap / 2, inner, 0};
    if (beside) area = {kMargin + extent.width() + kSideGap, top, kSideText, 0};
    std::vector<ItemGroup> texts;
    const Flowed flowed =
        flow(drawing, textEntries(drawing, textColumnWidth(area.width)), 0, area, texts);

    page.width = inner + 2 * kMargin;
    page.height = std::max(area.y + flowed.height, top + extent.height()) + kMargin;
    page.groups.push_back(paperGroup(page));
    page.groups.push_back(titleGroup(drawing, {kMargin, kMargin}, title));
    for (auto* groups : {&chart, &texts}) {
        std::move(groups->begin(), groups->end(), std::back_inserter(page.groups));
    }
    return page;
}

}  // namespace

ItemGroup paperGroup(const Page& page) {
    ItemGroup group = emptyGroup("ground");
    addBox(group, Role::Paper, 0, 0, page.width, page.height);
    return group;
}

ItemGroup titleGroup(const Drawing& drawing, Spot at, const std::string& title) {
    ItemGroup group = emptyGroup("heading");
    const double points = drawing.body() * kTitleShare;
    addText(group, Role::Title, {at.x, at.y + drawing.units(points)}, Anchor::Start, points, title);
    return group;
}

Sheet layOut(const Chart& chart, const SheetOptions& options) {
    const Size* size = options.size.empty() ? nullptr : chart.findSize(options.size);
    Drawing drawing{chart, options, size, options.cellMm / kCellUnits, usesOf(chart), true};
    drawing.inWords = chart.width * chart.height() <= kMostCellsInWords;
    Sheet sheet;
    sheet.glyphs = takeGlyphs(*chart.stitches, drawing.uses);
    sheet.title = options.title.empty() ? chart.name : options.title;
    if (sheet.title.empty()) sheet.title = "Chart";
    sheet.description = describe(drawing);
    sheet.rowsInWords = drawing.inWords;
    if (options.paper) {
        sheet.pages = printedPages(drawing, sheet.title);
    } else {
        sheet.pages.push_back(onePicture(drawing, sheet.title));
    }
    sheet.unitMm = drawing.unitMm;
    return sheet;
}

}  // namespace lacewright
