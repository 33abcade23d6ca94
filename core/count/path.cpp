#include "core/count/path.h"

#include <algorithm>

namespace lacewright {
namespace {

struct PlacedBox {
    Box box;
    int repeat = 0;
};

// The boxes on a row from right to left, clipped to the chart and to each other.
std::vector<PlacedBox> boxesOn(const Chart& chart, int rowIndex) {
    std::vector<PlacedBox> boxes;
    for (std::size_t i = 0; i < chart.repeats.size(); ++i) {
        if (!chart.repeats[i].covers(rowIndex)) continue;
        Box box = chart.repeats[i].on(rowIndex);
        box.right = std::max(box.right, 1);
        box.left = std::min(box.left, chart.width);
        if (box.right <= box.left) boxes.push_back({box, static_cast<int>(i)});
    }
    std::stable_sort(boxes.begin(), boxes.end(), [](const PlacedBox& a, const PlacedBox& b) {
        return a.box.right < b.box.right;
    });
    std::vector<PlacedBox> apart;
    int next = 1;
    for (PlacedBox placed : boxes) {
        placed.box.right = std::max(placed.box.right, next);
        if (placed.box.right > placed.box.left) continue;
        next = placed.box.left + 1;
        apart.push_back(placed);
    }
    return apart;
}

bool startsBand(const Chart& chart, int rowIndex, const Size* size) {
    for (const Repeat& repeat : chart.repeats) {
        if (rowIndex == repeat.firstRow || rowIndex == repeat.lastRow + 1) return true;
        if (repeat.jogs.contains(rowIndex) || repeat.jogs.contains(rowIndex - 1)) return true;
    }
    return size != nullptr && size->on(rowIndex) != size->on(rowIndex - 1);
}

}  // namespace

Path pathOn(const Chart& chart, int rowIndex, const Size* size) {
    Reach reach{1, chart.width};
    if (size != nullptr) {
        reach = size->on(rowIndex);
        reach.start = std::max(reach.start, 1);
        reach.end = std::min(reach.end, chart.width);
    }
    Path path;
    const auto add = [&path](int first, int last, Segment::Part part, int repeat) {
        if (first <= last) path.push_back({first, last, part, repeat});
    };
    int next = reach.start;  // the first column not yet worked
    for (const auto& [box, repeat] : boxesOn(chart, rowIndex)) {
        if (box.left < next) continue;
        if (box.right > reach.end) break;
        if (next < box.right) {
            add(next, box.right - 1, Segment::Part::Plain, -1);
        } else if (next > box.right) {
            add(next, box.left, Segment::Part::StartOfSize, repeat);
        }
        add(box.right, box.left, Segment::Part::Box, repeat);
        if (reach.end < box.left) add(box.right, reach.end, Segment::Part::EndOfSize, repeat);
        next = box.left + 1;
    }
    add(next, reach.end, Segment::Part::Plain, -1);
    return path;
}

std::vector<PathBand> pathBands(const Chart& chart, const Size* size) {
    std::vector<PathBand> bands;
    for (int row = 0; row < chart.height(); ++row) {
        if (row > 0 && !startsBand(chart, row, size)) {
            bands.back().lastRow = row;
            continue;
        }
        PathBand band{row, row, pathOn(chart, row, size), {1, chart.width}};
        if (size != nullptr) band.reach = size->on(row);
        bands.push_back(std::move(band));
    }
    return bands;
}

std::vector<WorkedCell> unrolled(const Path& path, const std::vector<int>& times) {
    std::vector<WorkedCell> cells;
    for (std::size_t i = 0; i < path.size(); ++i) {
        const Segment& segment = path[i];
        const int passes = segment.isBox() ? times[static_cast<std::size_t>(segment.repeat)] : 1;
        for (int pass = 0; pass < passes; ++pass) {
            for (int column = segment.first; column <= segment.last; ++column) {
                cells.push_back({column, static_cast<int>(i), pass});
            }
        }
    }
    return cells;
}

}  // namespace lacewright
