#include "app/canvas/foot_layout.h"

#include <algorithm>

namespace lacewright::app {
namespace {

// Device-independent pixels.
constexpr double kNumbers = 19;
constexpr double kPoints = 20;
constexpr double kLane = 22;
constexpr double kLowestLane = 9;
constexpr double kBelow = 6;

int laneHeight(const ViewScene& scene, int room) {
    const int lanes = std::max(1, static_cast<int>(scene.chart.sizes.size()));
    return std::clamp(room / lanes, scene.px(kLowestLane), scene.px(kLane));
}

int aboveLanes(const ViewScene& scene) {
    return scene.px(kNumbers) + (scene.chart.points.empty() ? 0 : scene.px(kPoints));
}

}  // namespace

int FootLayout::laneAt(int y) const {
    if (lanes == 0 || y < firstLane.top()) return -1;
    const int index = (y - firstLane.top()) / firstLane.height();
    return index < lanes ? index : -1;
}

int footHeight(const ViewScene& scene, int tallest) {
    const int lanes = static_cast<int>(scene.chart.sizes.size());
    const int fixed = aboveLanes(scene) + scene.px(kBelow);
    return fixed + lanes * laneHeight(scene, tallest - fixed);
}

FootLayout footLayout(const ViewScene& scene) {
    const QRect& foot = scene.layout.foot;
    FootLayout layout;
    layout.lanes = static_cast<int>(scene.chart.sizes.size());
    layout.numbers = QRect(foot.left(), foot.top(), foot.width(), scene.px(kNumbers));
    const int points = scene.chart.points.empty() ? 0 : scene.px(kPoints);
    layout.points = QRect(foot.left(), layout.numbers.bottom() + 1, foot.width(), points);
    const int room = foot.height() - aboveLanes(scene) - scene.px(kBelow);
    layout.firstLane =
        QRect(foot.left(), layout.points.top() + points, foot.width(), laneHeight(scene, room));
    return layout;
}

SpanOfSize spanOf(const ViewScene& scene, const Reach& reach) {
    const int x = scene.origin().x();
    return {scene.geometry.rightOf(reach.start) + x, scene.geometry.leftOf(reach.end) + x};
}

}  // namespace lacewright::app
