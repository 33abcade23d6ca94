#include "app/canvas/visible_marks.h"

#include <utility>

namespace lacewright::app {
namespace {

std::size_t mixed(std::size_t hash, std::size_t value) {
    return hash ^ (value + 0x9E3779B97F4A7C15ULL + (hash << 6) + (hash >> 2));
}

std::size_t printOf(std::span<const Finding> findings) {
    std::size_t hash = findings.size();
    for (const Finding& finding : findings) {
        hash = mixed(hash, static_cast<std::size_t>(finding.severity));
        for (const int column : finding.columns) {
            hash = mixed(hash, static_cast<std::size_t>(column));
        }
        for (const std::string& size : finding.sizes) {
            hash = mixed(hash, std::hash<std::string>{}(size));
        }
    }
    return hash;
}

}  // namespace

std::vector<int> VisibleMarks::refresh(const ViewScene& scene) {
    const QRect window = scene.layout.grid.translated(-scene.origin());
    const auto area = scene.geometry.cellsIn(window);
    std::vector<std::size_t> prints;
    std::vector<int> changed;
    if (!area) return changed;
    for (int row = area->firstRow; row <= area->lastRow; ++row) {
        const std::size_t print = printOf(findingsOfRow(scene.report, scene.chart.rowNumber(row)));
        const int known = row - firstRow_;
        const bool wasSeen = known >= 0 && known < static_cast<int>(prints_.size());
        if (wasSeen && prints_[static_cast<std::size_t>(known)] != print) changed.push_back(row);
        prints.push_back(print);
    }
    firstRow_ = area->firstRow;
    prints_ = std::move(prints);
    return changed;
}

}  // namespace lacewright::app
