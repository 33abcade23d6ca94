#include "core/sheet/pages.h"

#include <algorithm>
#include <utility>

#include "core/sheet/cuts.h"
#include "core/sheet/grid.h"
#include "core/sheet/row_words.h"
#include "core/sheet/text_blocks.h"

namespace lacewright {
namespace {

constexpr double kSmallestCellMm = 4;  // below it symbols are hard to tell apart in print
constexpr double kShrinkStep = 0.25;   // mm
constexpr int kTextGap = 16;           // units between a chart piece and the text under it
constexpr int kJoin = 7;               // size of the marks where sheets join

// A sheet and what fits on it, in units.
struct Format {
    int width = 0;
    int height = 0;
    int margin = 0;
    int header = 0;  // title line, sheet number and join marks
    int footer = 0;
    Extent around;  // what a piece needs around its grid; right and bottom beyond the grid
    Cuts cuts;

    int innerWidth() const { return width - 2 * margin; }
    int innerHeight() const { return height - 2 * margin - header - footer; }
};

// Row numbers, brackets and the foot around a piece, measured on the topmost row.
Extent roomAround(const Drawing& drawing) {
    const int top = drawing.chart.height() - 1;
    const Piece probe{1, drawing.chart.width, std::max(0, top - 1), top};
    std::vector<ItemGroup> groups = {drawRow(drawing, probe, top),
                                     drawRow(drawing, probe, probe.firstRow),
                                     drawFoot(drawing, probe)};
    Extent extent = extentOf(drawing, groups);
    extent.right -= probe.width();
    extent.bottom -= probe.height();
    if (drawing.chart.rowRepeat) extent.left -= drawing.units(drawing.body()) + 2 * kCellUnits;
    for (const Size& size : drawing.chart.sizes) {
        const int name = drawing.textUnits(size.name, drawing.body(), true) + 10;
        extent.right = std::max(extent.right, name);
    }
    return extent;
}

Format formatOf(const Drawing& drawing, bool across) {
    const Paper& paper = *drawing.options.paper;
    const auto units = [&](double mm) { return static_cast<int>(mm / drawing.unitMm); };
    Format format;
    format.width = units(across ? paper.heightMm : paper.widthMm);
    format.height = units(across ? paper.widthMm : paper.heightMm);
    format.margin = units(paper.marginMm);
    format.header = drawing.units(drawing.body() * (kTitleShare * 1.3 + 1.6));
    format.footer = drawing.units(drawing.body() * 1.6);
    format.around = roomAround(drawing);
    const int room = format.innerWidth() - format.around.right + format.around.left;
    const int rise = format.innerHeight() - format.around.bottom + format.around.top;
    format.cuts = cutChart(drawing.chart, std::max(1, room / kCellUnits),
                           std::max(1, rise / kCellUnits), drawing.options.heavyEvery);
    return format;
}

Format bestOrientation(const Drawing& drawing) {
    if (drawing.options.orientation == Orientation::Across) return formatOf(drawing, true);
    Format upright = formatOf(drawing, false);
    if (drawing.options.orientation == Orientation::Upright) return upright;
    Format across = formatOf(drawing, true);
    return across.cuts.count() < upright.cuts.count() ? across : upright;
}

// A little shrinking is welcome when the chart then fits one sheet.
Format bestFormat(Drawing& drawing) {
    Format asked = bestOrientation(drawing);
    const double unitMm = drawing.unitMm;
    double cellMm = unitMm * kCellUnits;
    while (asked.cuts.count() > 1 && cellMm - kShrinkStep >= kSmallestCellMm) {
        cellMm -= kShrinkStep;
        drawing.unitMm = cellMm / kCellUnits;
        Format shrunk = bestOrientation(drawing);
        if (shrunk.cuts.count() == 1) return shrunk;
    }
    drawing.unitMm = unitMm;
    return asked;
}

int sheetNumber(const Cuts& cuts, int fromRight, int fromBottom) {
    return fromBottom * cuts.across() + fromRight + 1;
}

// Where a piece goes on: the number of the sheet, and marks at both ends of the cut.
ItemGroup joinMarks(const Drawing& drawing, const Cuts& cuts, int i, int j) {
    ItemGroup group = emptyGroup("joins");
    const Piece piece = cuts.piece(i, j);
    Shape marks{Role::Join, {}, true};
    const auto say = [&](int x, int y, Anchor anchor, const std::string& words) {
        addText(group, Role::JoinMark, {x, y}, anchor, drawing.small(), words);
    };
    const auto name = [&](int fromRight, int fromBottom) {
        return "sheet " + std::to_string(sheetNumber(cuts, fromRight, fromBottom));
    };
    const int width = piece.width();
    const int line = -kJoin - 3;
    if (i + 1 < cuts.across()) {
        marks.runs.push_back({{0, -1}, {kJoin, -kJoin - 1}, {-kJoin, -kJoin - 1}});
        say(kJoin + 4, line, Anchor::Start, "\u2190 " + name(i + 1, j));
    }
    if (i > 0) {
        marks.runs.push_back(
            {{width, -1}, {width + kJoin, -kJoin - 1}, {width - kJoin, -kJoin - 1}});
        say(width - kJoin - 4, line, Anchor::End, name(i - 1, j) + " \u2192");
    }
    std::string upDown;
    if (j + 1 < cuts.upward()) upDown += "\u2191 " + name(i, j + 1);
    if (j > 0) upDown += (upDown.empty() ? "\u2193 " : "   \u2193 ") + name(i, j - 1);
    if (!upDown.empty()) say(width / 2, line, Anchor::Middle, upDown);
    if (!marks.runs.empty()) group.items.emplace_back(std::move(marks));
    return group;
}

class PrintedPages {
 public:
    PrintedPages(const Drawing& drawing, Format format, std::string title)
        : drawing_(drawing), format_(std::move(format)), title_(std::move(title)) {}

    std::vector<Page> make() {
        int below = 0;
        for (int j = 0; j < format_.cuts.upward(); ++j) {
            for (int i = 0; i < format_.cuts.across(); ++i) below = addPiece(i, j);
        }
        addWords(below);
        if (pages_.size() > 1) addNumbers();
        return std::move(pages_);
    }

 private:
    void newPage() {
        Page page;
        page.width = format_.width;
        page.height = format_.height;
        page.groups.push_back(paperGroup(page));
        page.groups.push_back(titleGroup(drawing_, {format_.margin, format_.margin}, title_));
        pages_.push_back(std::move(page));
    }

    int top() const { return format_.margin + format_.header; }
    int bottom() const { return format_.height - format_.margin - format_.footer; }

    // The piece on a page of its own; gives where it ends.
    int addPiece(int i, int j) {
        newPage();
        const Piece piece = format_.cuts.piece(i, j);
        std::vector<ItemGroup> groups = drawPiece(drawing_, piece);
        if (format_.cuts.count() > 1) groups.push_back(joinMarks(drawing_, format_.cuts, i, j));
        const Extent extent = extentOf(drawing_, groups);
        const int spare = format_.innerWidth() - extent.width();
        move(groups, format_.margin - extent.left + std::max(0, spare / 2), top());
        std::move(groups.begin(), groups.end(), std::back_inserter(pages_.back().groups));
        return top() + extent.bottom;
    }

    void addWords(int below) {
        const std::vector<Entry> entries =
            textEntries(drawing_, textColumnWidth(format_.innerWidth()));
        std::size_t next = 0;
        int y = below + kTextGap;
        while (next < entries.size()) {
            const Area area{format_.margin, y, format_.innerWidth(), bottom() - y};
            const Flowed flowed = area.height > 0
                                      ? flow(drawing_, entries, next, area, pages_.back().groups)
                                      : Flowed{next, 0};
            const bool fullPage = y == top();
            if (flowed.next == next && fullPage) return;  // paper too small for a single line
            next = flowed.next;
            if (next == entries.size()) return;
            newPage();
            y = top();
        }
    }

    void addNumbers() {
        const Spot corner{format_.width - format_.margin,
                          format_.height - format_.margin - drawing_.units(drawing_.body() / 4)};
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            ItemGroup group = emptyGroup("footer");
            std::string words =
                "Sheet " + std::to_string(i + 1) + " of " + std::to_string(pages_.size());
            if (static_cast<int>(i) < format_.cuts.count() && format_.cuts.count() > 1) {
                words += ": " + whatItShows(static_cast<int>(i));
            }
            addText(group, Role::JoinMark, corner, Anchor::End, drawing_.body(), std::move(words));
            pages_[i].groups.push_back(std::move(group));
        }
    }

    std::string whatItShows(int sheet) const {
        const Piece piece =
            format_.cuts.piece(sheet % format_.cuts.across(), sheet / format_.cuts.across());
        return "columns " + std::to_string(piece.right) + "\u2013" + std::to_string(piece.left) +
               ", " + rowsInWords(drawing_.chart, piece.firstRow, piece.lastRow);
    }

    const Drawing& drawing_;
    Format format_;
    std::string title_;
    std::vector<Page> pages_;
};

}  // namespace

std::vector<Page> printedPages(Drawing& drawing, const std::string& title) {
    Format format = bestFormat(drawing);
    return PrintedPages(drawing, std::move(format), title).make();
}

}  // namespace lacewright
