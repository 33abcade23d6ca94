#include <algorithm>
#include <set>
#include <utility>

#include "core/chart/edit_steps.h"
#include "core/chart/letter_names.h"

namespace lacewright {
namespace {

// Points from the right edge on, as places in Chart::points.
std::vector<std::size_t> fromTheRight(const std::vector<Point>& points) {
    std::vector<std::size_t> order(points.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return points[a].column < points[b].column;
    });
    return order;
}

// Every lettered point bears the letter of its rank from the right.
bool lettersRunInOrder(const std::vector<Point>& points) {
    const std::vector<std::size_t> order = fromTheRight(points);
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        const std::string& name = points[order[rank]].name;
        if (isLetterName(name) && name != letterName(static_cast<int>(rank))) return false;
    }
    return true;
}

std::set<int> sizeEdges(const Chart& chart) {
    std::set<int> columns;
    for (const Size& size : chart.sizes) columns.insert({size.reach.start, size.reach.end});
    return columns;
}

std::string freeLetter(const Chart& chart) {
    int rank = 0;
    while (chart.findPoint(letterName(rank)) != nullptr) ++rank;
    return letterName(rank);
}

}  // namespace

void settlePoints(const Chart& before, Chart& after) {
    const std::set<int> edgesBefore = sizeEdges(before);
    const std::set<int> edges = sizeEdges(after);
    std::erase_if(after.points, [&](const Point& point) {
        const Point* old = before.findPoint(point.name);
        return isLetterName(point.name) && !edges.contains(point.column) && old != nullptr &&
               edgesBefore.contains(old->column);
    });
    for (const int column : edges) {
        if (after.pointAt(column) != nullptr) continue;
        const auto next = std::find_if(after.points.begin(), after.points.end(),
                                       [column](const Point& p) { return p.column > column; });
        after.points.insert(next, Point{freeLetter(after), column, {}});
    }
    if (!lettersRunInOrder(before.points)) return;
    const std::vector<std::size_t> order = fromTheRight(after.points);
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        std::string& name = after.points[order[rank]].name;
        if (isLetterName(name)) name = letterName(static_cast<int>(rank));
    }
}

}  // namespace lacewright
