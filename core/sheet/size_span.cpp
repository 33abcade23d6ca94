#include <algorithm>
#include <utility>

#include "core/count/path.h"
#include "core/count/tally.h"
#include "core/sheet/grid.h"

namespace lacewright {
namespace {

// Rows on which the chosen size works the same columns.
struct Band {
    int firstRow = 0;
    int lastRow = 0;
    Reach reach;
    std::vector<bool> worked;  // by column minus the piece's right column
};

std::vector<bool> workedColumns(const Piece& piece, const Path& path, const Times& times) {
    std::vector<bool> worked(static_cast<std::size_t>(piece.columns()));
    for (const Segment& segment : path) {
        if (segment.isBox() && times[static_cast<std::size_t>(segment.repeat)] == 0) continue;
        const int first = std::max(segment.first, piece.right);
        const int last = std::min(segment.last, piece.left);
        for (int column = first; column <= last; ++column) {
            worked[static_cast<std::size_t>(column - piece.right)] = true;
        }
    }
    return worked;
}

std::vector<Band> bandsOf(const Drawing& drawing, const Piece& piece) {
    std::vector<Band> bands;
    const Times times = timesOf(drawing.chart, *drawing.size);
    for (const PathBand& path : pathBands(drawing.chart, drawing.size)) {
        const int first = std::max(path.firstRow, piece.firstRow);
        const int last = std::min(path.lastRow, piece.lastRow);
        if (first > last) continue;
        bands.push_back({first, last, path.reach, workedColumns(piece, path.path, times)});
    }
    return bands;
}

// Calls visit(rightmost, leftmost) for every run of columns that are worked (or are not).
template <class Visit>
void forEachRun(const Piece& piece, const std::vector<bool>& columns, bool wanted, Visit visit) {
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i] != wanted) continue;
        const std::size_t first = i;
        while (i + 1 < columns.size() && columns[i + 1] == wanted) ++i;
        visit(piece.right + static_cast<int>(first), piece.right + static_cast<int>(i));
    }
}

void addGrounds(Shape& shape, const Piece& piece, const Band& band, bool worked) {
    const int top = piece.y(band.lastRow);
    const int bottom = piece.y(band.firstRow) + kCellUnits;
    forEachRun(piece, band.worked, worked, [&](int rightmost, int leftmost) {
        const int left = piece.x(leftmost);
        const int right = piece.x(rightmost) + kCellUnits;
        shape.runs.push_back({{left, top}, {right, top}, {right, bottom}, {left, bottom}});
    });
}

// The line between two rows, wherever one is worked and the other is not.
void addStep(Shape& shape, const Piece& piece, int y, const std::vector<bool>& below,
             const std::vector<bool>& above) {
    std::vector<bool> differs(below.size());
    for (std::size_t i = 0; i < below.size(); ++i) differs[i] = below[i] != above[i];
    forEachRun(piece, differs, true, [&](int rightmost, int leftmost) {
        shape.runs.push_back({{piece.x(leftmost), y}, {piece.x(rightmost) + kCellUnits, y}});
    });
}

void addSides(Shape& shape, const Drawing& drawing, const Piece& piece, const Band& band) {
    const int top = piece.y(band.lastRow);
    const int bottom = piece.y(band.firstRow) + kCellUnits;
    const auto addSide = [&](int x) { shape.runs.push_back({{x, bottom}, {x, top}}); };
    forEachRun(piece, band.worked, true, [&](int rightmost, int leftmost) {
        // Where the sheet ends the size goes on: no edge there.
        if (rightmost > piece.right || piece.right == 1) addSide(piece.x(rightmost) + kCellUnits);
        if (leftmost < piece.left || piece.left == drawing.chart.width) addSide(piece.x(leftmost));
    });
}

bool isWorked(const Piece& piece, const Band& band, int column) {
    return column >= piece.right && column <= piece.left &&
           band.worked[static_cast<std::size_t>(column - piece.right)];
}

// Start and end of a size that lie within cells it works: it begins or ends inside a repeat.
void addInnerEdges(Shape& shape, const Piece& piece, const Band& band) {
    const int top = piece.y(band.lastRow);
    const int bottom = piece.y(band.firstRow) + kCellUnits;
    const auto add = [&](int column) {  // along the right edge of the column
        if (!isWorked(piece, band, column) || !isWorked(piece, band, column - 1)) return;
        const int x = piece.x(column) + kCellUnits;
        shape.runs.push_back({{x, bottom}, {x, top}});
    };
    add(band.reach.start);
    add(band.reach.end + 1);
}

// A small corner on every stitch the size works differently, and a line around it that leaves the
// lines of grid, repeats and size free.
void addSwaps(ItemGroup& group, const Drawing& drawing, const Piece& piece) {
    constexpr int kCorner = 6;
    constexpr int kInset = 3;
    Shape shape{Role::Swap, {}, true};
    Shape outline{Role::SwapOutline, {}, false};
    for (const Substitution& swap : drawing.size->substitutions) {
        if (swap.column < piece.right || swap.column > piece.left) continue;
        if (swap.row < piece.firstRow || swap.row > piece.lastRow) continue;
        const int right = piece.x(swap.column) + kCellUnits;
        const int top = piece.y(swap.row);
        shape.runs.push_back({{right, top}, {right, top + kCorner}, {right - kCorner, top}});
        const StitchIndex drawn = drawing.chart.row(swap.row).at(swap.column);
        const int span = drawn == kCovered ? 1 : drawing.chart.stitches->spans()[drawn];
        const int left = piece.x(std::min(swap.column + span - 1, piece.left)) + kInset;
        const int bottom = top + kCellUnits - kInset;
        outline.runs.push_back({{right - kInset, top + kInset},
                                {right - kInset, bottom},
                                {left, bottom},
                                {left, top + kInset},
                                {right - kInset, top + kInset}});
    }
    if (shape.runs.empty()) return;
    group.items.emplace_back(std::move(outline));
    group.items.emplace_back(std::move(shape));
}

}  // namespace

ItemGroup drawSizeGround(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("size-ground");
    Shape tint{Role::SizeGround, {}, true};
    for (const Band& band : bandsOf(drawing, piece)) addGrounds(tint, piece, band, true);
    if (!tint.runs.empty()) group.items.emplace_back(std::move(tint));
    return group;
}

ItemGroup drawSizeOutline(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("size-span");
    Shape veil{Role::Veil, {}, true};
    Shape outline{Role::SizeOutline, {}, false};
    Shape inner{Role::SizeEdge, {}, false};
    const std::vector<bool> nothing(static_cast<std::size_t>(piece.columns()));
    const std::vector<Band> bands = bandsOf(drawing, piece);
    for (std::size_t i = 0; i < bands.size(); ++i) {
        const Band& band = bands[i];
        addGrounds(veil, piece, band, false);
        addSides(outline, drawing, piece, band);
        addInnerEdges(inner, piece, band);
        const int foot = piece.y(band.firstRow) + kCellUnits;
        if (i > 0) addStep(outline, piece, foot, bands[i - 1].worked, band.worked);
        if (band.firstRow == 0) addStep(outline, piece, foot, nothing, band.worked);
        if (band.lastRow == drawing.chart.height() - 1) {
            addStep(outline, piece, piece.y(band.lastRow), band.worked, nothing);
        }
    }
    for (Shape* shape : {&veil, &outline, &inner}) {
        if (!shape->runs.empty()) group.items.emplace_back(std::move(*shape));
    }
    addSwaps(group, drawing, piece);
    return group;
}

}  // namespace lacewright
