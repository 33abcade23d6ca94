#include "core/sheet/grid.h"

#include <algorithm>
#include <utility>

namespace lacewright {
namespace {

// The inner edges of columns and rows that a wide stitch bridges: no grid line crosses a symbol.
class Bridges {
 public:
    Bridges(const Chart& chart, const Piece& piece) : piece_(piece) {
        for (int row = piece.firstRow; row <= piece.lastRow; ++row) {
            if (!chart.row(row).traits().hasWide) continue;
            for (int column = piece.right + 1; column <= piece.left; ++column) {
                if (chart.row(row).at(column) == kCovered) bridged_.emplace_back(column, row);
            }
        }
        std::sort(bridged_.begin(), bridged_.end());
    }

    // The line along the right edge of a column, from the foot up, without the bridged rows.
    void addLine(int column, std::vector<std::vector<Spot>>& runs) const {
        const int x = piece_.x(column) + kCellUnits;
        int bottom = piece_.height();
        auto it = std::lower_bound(bridged_.begin(), bridged_.end(), std::pair{column, 0});
        for (; it != bridged_.end() && it->first == column; ++it) {
            const int y = piece_.y(it->second);
            if (y + kCellUnits < bottom) runs.push_back({{x, bottom}, {x, y + kCellUnits}});
            bottom = y;
        }
        if (bottom > 0) runs.push_back({{x, bottom}, {x, 0}});
    }

 private:
    const Piece& piece_;
    std::vector<std::pair<int, int>> bridged_;  // column, row
};

}  // namespace

std::vector<ItemGroup> drawPiece(const Drawing& drawing, const Piece& piece) {
    std::vector<ItemGroup> groups;
    if (drawing.size != nullptr) groups.push_back(drawSizeGround(drawing, piece));
    groups.push_back(drawGrounds(drawing, piece));
    groups.push_back(drawGrid(drawing, piece));
    for (int row = piece.firstRow; row <= piece.lastRow; ++row) {
        groups.push_back(drawRow(drawing, piece, row));
    }
    ItemGroup frame = drawFrame(drawing, piece);
    if (drawing.size != nullptr) groups.push_back(drawSizeOutline(drawing, piece));
    groups.push_back(std::move(frame));
    groups.push_back(drawRepeats(drawing, piece));
    groups.push_back(drawRowRepeat(drawing, piece));
    groups.push_back(drawFoot(drawing, piece));
    std::erase_if(groups, [](const ItemGroup& group) { return group.items.empty(); });
    return groups;
}

ItemGroup drawGrounds(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("grounds");
    Shape shape{Role::NoStitch, {}, true};
    for (int row = piece.firstRow; row <= piece.lastRow; ++row) {
        const Row& cells = drawing.chart.row(row);
        const auto shaded = [&](int column) {
            const StitchIndex stitch = cells.at(cells.ownerOf(column));
            return stitch != kCovered && (*drawing.chart.stitches)[stitch].shaded;
        };
        if (!cells.traits().hasNoStitch && !cells.traits().hasUnknown) continue;
        for (int column = piece.right; column <= piece.left; ++column) {
            if (!shaded(column)) continue;
            const int first = column;
            while (column < piece.left && shaded(column + 1)) ++column;
            const int x = piece.x(column);
            const int end = piece.x(first) + kCellUnits;
            const int y = piece.y(row);
            shape.runs.push_back({{x, y}, {end, y}, {end, y + kCellUnits}, {x, y + kCellUnits}});
        }
    }
    if (!shape.runs.empty()) group.items.emplace_back(std::move(shape));
    return group;
}

ItemGroup drawGrid(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("grid");
    Shape thin{Role::Grid, {}, false};
    Shape heavy{Role::HeavyGrid, {}, false};
    const int every = drawing.options.heavyEvery;
    const Bridges bridges(drawing.chart, piece);
    for (int column = piece.right + 1; column <= piece.left; ++column) {
        bridges.addLine(column, (column - 1) % every == 0 ? heavy.runs : thin.runs);
    }
    for (int row = piece.firstRow + 1; row <= piece.lastRow; ++row) {
        const int y = piece.y(row) + kCellUnits;
        (row % every == 0 ? heavy : thin).runs.push_back({{0, y}, {piece.width(), y}});
    }
    for (Shape* shape : {&thin, &heavy}) {
        if (!shape->runs.empty()) group.items.emplace_back(std::move(*shape));
    }
    return group;
}

ItemGroup drawFrame(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("frame");
    const int right = piece.width();
    const int bottom = piece.height();
    const auto edge = [&group](bool end, Spot from, Spot to) {
        addLine(group, end ? Role::Frame : Role::Cut, from, to);
    };
    if (piece.columns() == drawing.chart.width && piece.rows() == drawing.chart.height()) {
        addBox(group, Role::Frame, 0, 0, right, bottom);
        return group;
    }
    edge(piece.right == 1, {right, 0}, {right, bottom});
    edge(piece.left == drawing.chart.width, {0, 0}, {0, bottom});
    edge(piece.firstRow == 0, {0, bottom}, {right, bottom});
    edge(piece.lastRow == drawing.chart.height() - 1, {0, 0}, {right, 0});
    return group;
}

}  // namespace lacewright
