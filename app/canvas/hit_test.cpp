#include "app/canvas/hit_test.h"

#include <algorithm>
#include <cstdlib>

#include "app/canvas/foot_layout.h"

namespace lacewright::app {
namespace {

constexpr double kEdgeReach = 5;  // device-independent pixels beside a line that still mean it
constexpr double kMarkReach = 9;

bool isNear(int a, int b, int reach) {
    return std::abs(a - b) <= reach;
}

std::optional<BoxSide> sideNear(const ViewScene& scene, const Repeat& repeat, QPoint sheet,
                                int row) {
    const ChartGeometry& geometry = scene.geometry;
    const int reach = std::min(scene.px(kEdgeReach), geometry.cell() / 3);
    const int low = std::clamp(row, repeat.firstRow, repeat.lastRow);
    const Box box = repeat.on(low);
    const int right = geometry.rightOf(box.right);
    const int left = geometry.leftOf(box.left);
    if (row == low) {
        if (isNear(sheet.x(), right, reach)) return BoxSide::Right;
        if (isNear(sheet.x(), left, reach)) return BoxSide::Left;
    }
    if (sheet.x() < left - reach || sheet.x() > right + reach) return std::nullopt;
    if (isNear(sheet.y(), geometry.topOf(repeat.lastRow), reach)) return BoxSide::Top;
    if (isNear(sheet.y(), geometry.bottomOf(repeat.firstRow), reach)) return BoxSide::Bottom;
    return std::nullopt;
}

std::optional<Edge> edgeNear(const ViewScene& scene, QPoint sheet, int row) {
    if (scene.chosen == nullptr) return std::nullopt;
    const Reach reach = scene.chosen->on(row);
    const int near = std::min(scene.px(kEdgeReach), scene.geometry.cell() / 3);
    if (isNear(sheet.x(), scene.geometry.rightOf(reach.start), near)) return Edge::Start;
    if (isNear(sheet.x(), scene.geometry.leftOf(reach.end), near)) return Edge::End;
    return std::nullopt;
}

Hit inGrid(const ViewScene& scene, QPoint point, bool edges, Hit hit) {
    const QPoint sheet = point - scene.origin();
    if (const auto edge = edges ? edgeNear(scene, sheet, hit.cell.row) : std::nullopt) {
        hit.kind = Hit::Kind::SizeMark;
        hit.index = static_cast<int>(scene.chosen - scene.chart.sizes.data());
        hit.edge = *edge;
        hit.onGrid = true;
        return hit;
    }
    const std::vector<Repeat>& repeats = scene.chart.repeats;
    for (std::size_t i = 0; edges && i < repeats.size(); ++i) {
        if (const auto side = sideNear(scene, repeats[i], sheet, hit.cell.row)) {
            hit.kind = Hit::Kind::RepeatEdge;
            hit.index = static_cast<int>(i);
            hit.side = *side;
            return hit;
        }
    }
    if (scene.geometry.cellAt(sheet)) hit.kind = Hit::Kind::Cell;
    return hit;
}

Hit onPoints(const ViewScene& scene, QPoint point, Hit hit) {
    for (std::size_t i = 0; i < scene.chart.points.size(); ++i) {
        const int middle = scene.geometry.leftOf(scene.chart.points[i].column) +
                           scene.geometry.cell() / 2 + scene.origin().x();
        if (!isNear(point.x(), middle, scene.px(kMarkReach))) continue;
        hit.kind = Hit::Kind::Point;
        hit.index = static_cast<int>(i);
    }
    return hit;
}

Hit onLane(const ViewScene& scene, QPoint point, int lane, Hit hit) {
    const SpanOfSize span = spanOf(scene, scene.chart.sizes[static_cast<std::size_t>(lane)].reach);
    const int toStart = std::abs(point.x() - span.start);
    const int toEnd = std::abs(point.x() - span.end);
    hit.kind =
        std::min(toStart, toEnd) <= scene.px(kMarkReach) ? Hit::Kind::SizeMark : Hit::Kind::Lane;
    hit.edge = toStart <= toEnd ? Edge::Start : Edge::End;
    hit.index = lane;
    return hit;
}

}  // namespace

Hit hitAt(const ViewScene& scene, QPoint point, bool edgesOnGrid) {
    const FootLayout foot = footLayout(scene);
    Hit hit;
    hit.cell = scene.geometry.nearestCell(point - scene.origin());
    if (scene.layout.grid.contains(point)) return inGrid(scene, point, edgesOnGrid, hit);
    if (scene.layout.left.contains(point) || scene.layout.right.contains(point)) {
        hit.kind = Hit::Kind::RowNumber;
    } else if (foot.numbers.contains(point)) {
        hit.kind = Hit::Kind::ColumnNumber;
    } else if (foot.points.contains(point)) {
        return onPoints(scene, point, hit);
    } else if (const int lane = scene.layout.foot.contains(point) ? foot.laneAt(point.y()) : -1;
               lane >= 0) {
        return onLane(scene, point, lane, hit);
    }
    return hit;
}

}  // namespace lacewright::app
