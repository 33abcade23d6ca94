#include "core/chart/chart.h"

#include <algorithm>
#include <tuple>

namespace lacewright {

Box Repeat::on(int rowIndex) const {
    const auto jog = jogs.find(rowIndex);
    if (jog == jogs.end()) return {right, left};
    return {right + jog->second.right, left + jog->second.left};
}

Reach Size::on(int rowIndex) const {
    for (const ReachChange& change : changes) {
        if (rowIndex >= change.firstRow && rowIndex <= change.lastRow) return change.reach;
    }
    return reach;
}

std::optional<int> Chart::indexOfRowNumber(int number) const {
    if (number < 1) return std::nullopt;
    if (uncharted != Uncharted::None && number % 2 == 0) return std::nullopt;
    const int index = uncharted == Uncharted::None ? number - 1 : number / 2;
    if (index >= height()) return std::nullopt;
    return index;
}

Side Chart::sideOf(int index) const {
    if (worked == Worked::InTheRound) return Side::Right;
    const bool odd = rowNumber(index) % 2 == 1;
    return odd == (firstSide == Side::Right) ? Side::Right : Side::Wrong;
}

namespace {

template <class T>
const T* findNamed(const std::vector<T>& list, std::string_view name) {
    const auto found =
        std::find_if(list.begin(), list.end(), [name](const T& item) { return item.name == name; });
    return found == list.end() ? nullptr : &*found;
}

bool sameStitches(const StitchCataloguePtr& a, const StitchCataloguePtr& b) {
    if (a == b) return true;
    if (!a || !b || a->size() != b->size()) return false;
    for (std::size_t i = 1; i <= a->size(); ++i) {
        const auto index = static_cast<StitchIndex>(i);
        if (!((*a)[index] == (*b)[index])) return false;
    }
    return true;
}

auto frameOf(const Chart& c) {
    return std::tie(c.name, c.notes, c.source, c.worked, c.firstSide, c.uncharted, c.castOn,
                    c.gauge, c.width, c.repeats, c.rowRepeat, c.points, c.sizes, c.grading,
                    c.extras);
}

}  // namespace

const Repeat* Chart::findRepeat(std::string_view wanted) const {
    return findNamed(repeats, wanted);
}
const Size* Chart::findSize(std::string_view wanted) const {
    return findNamed(sizes, wanted);
}
const Point* Chart::findPoint(std::string_view wanted) const {
    return findNamed(points, wanted);
}

const Point* Chart::pointAt(int column) const {
    const auto found = std::find_if(points.begin(), points.end(),
                                    [column](const Point& p) { return p.column == column; });
    return found == points.end() ? nullptr : &*found;
}

bool sameFrame(const Chart& a, const Chart& b) {
    return a.rows.size() == b.rows.size() && frameOf(a) == frameOf(b) &&
           sameStitches(a.stitches, b.stitches);
}

bool Chart::operator==(const Chart& other) const {
    return sameFrame(*this, other) && rows == other.rows;
}

Chart blankChart(int width, int height) {
    Chart chart;
    chart.width = width;
    const StitchIndex knit = chart.stitches->find("k").value_or(1);
    const RowPtr row =
        makeRow(std::vector<StitchIndex>(static_cast<std::size_t>(width), knit), *chart.stitches);
    chart.rows = RowList(std::vector<RowPtr>(static_cast<std::size_t>(height), row));
    return chart;
}

}  // namespace lacewright
