#include <algorithm>
#include <utility>

#include "core/sheet/grid.h"
#include "core/sheet/row_words.h"

namespace lacewright {
namespace {

constexpr int kBracketGap = 9;  // units between the row numbers and the bracket of a row repeat
constexpr int kBracketArm = 6;

// One upright edge of a repeat over the rows of a piece, stepped where it jogs. Broken where the
// edge lies outside the piece. `column` gives the column whose right edge the line follows.
template <class Column>
void addEdge(Shape& shape, const Piece& piece, int firstRow, int lastRow, Column column) {
    std::vector<Spot> run;
    const auto finish = [&] {
        if (run.size() > 1) shape.runs.push_back(std::move(run));
        run.clear();
    };
    for (int row = firstRow; row <= lastRow; ++row) {
        const int at = column(row);
        if (at < piece.right || at > piece.left + 1) {
            finish();
            continue;
        }
        const int x = piece.x(at) + kCellUnits;
        const int y = piece.y(row);
        if (!run.empty() && run.back().x == x) {
            run.back().y = y;
        } else {
            run.push_back({x, y + kCellUnits});
            run.push_back({x, y});
        }
    }
    finish();
}

// Foot or head of a repeat, as far as the piece shows it.
void addEnd(Shape& shape, const Piece& piece, const Box& box, int y) {
    const int right = std::max(box.right, piece.right);
    const int left = std::min(box.left, piece.left);
    if (right <= left) shape.runs.push_back({{piece.x(left), y}, {piece.x(right) + kCellUnits, y}});
}

}  // namespace

ItemGroup drawRepeats(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("repeats");
    for (const Repeat& repeat : drawing.chart.repeats) {
        const int first = std::max(repeat.firstRow, piece.firstRow);
        const int last = std::min(repeat.lastRow, piece.lastRow);
        if (first > last) continue;
        Shape outline{Role::Repeat, {}, false};
        addEdge(outline, piece, first, last, [&](int row) { return repeat.on(row).right; });
        addEdge(outline, piece, first, last, [&](int row) { return repeat.on(row).left + 1; });
        if (first == repeat.firstRow) {
            addEnd(outline, piece, repeat.on(first), piece.y(first) + kCellUnits);
        }
        if (last == repeat.lastRow) addEnd(outline, piece, repeat.on(last), piece.y(last));
        if (!outline.runs.empty()) group.items.emplace_back(std::move(outline));
    }
    return group;
}

ItemGroup drawRowRepeat(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("row-repeat");
    if (!drawing.chart.rowRepeat) return group;
    const RowRepeat& repeat = *drawing.chart.rowRepeat;
    const int first = std::max(repeat.firstRow, piece.firstRow);
    const int last = std::min(repeat.lastRow, piece.lastRow);
    if (first > last) return group;
    const std::string widest = std::to_string(drawing.chart.rowNumber(drawing.chart.height() - 1));
    const int numbers =
        drawing.hasWrongSides() ? drawing.textUnits(widest, drawing.small()) + 6 : 0;
    const int x = -numbers - kBracketGap;
    const int top = piece.y(last) + 2;
    const int bottom = piece.y(first) + kCellUnits - 2;
    std::vector<Spot> run;
    if (last == repeat.lastRow) run.push_back({x + kBracketArm, top});
    run.push_back({x, top});
    run.push_back({x, bottom});
    if (first == repeat.firstRow) run.push_back({x + kBracketArm, bottom});
    group.items.emplace_back(Shape{Role::Bracket, {run}, false});

    std::string words = "repeat " + rowsInWords(drawing.chart, repeat.firstRow, repeat.lastRow);
    const Spot at{x - 5, (top + bottom) / 2};
    group.items.emplace_back(
        Text{Role::RepeatName, at, Anchor::Middle, drawing.body(), std::move(words), true});
    return group;
}

}  // namespace lacewright
