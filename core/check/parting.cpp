#include "core/check/parting.h"

namespace lacewright {

std::vector<CompanionPair> partedPairs(const Chart& chart, int row, int right) {
    const Row& cells = chart.row(row);
    if (right < 1 || right >= chart.width) return {};
    const bool balanced = cells.total().net() == 0;
    // In a balanced row as many pairs cross a gap as the columns right of it are out of balance.
    if (balanced && cells.upTo(right).net() == 0) return {};
    const Path across{{1, chart.width, Segment::Part::Plain, -1}};
    std::vector<CompanionPair> parted;
    for (const CompanionPair& pair : companionsOn(cells, across, *chart.stitches).pairs) {
        if ((pair.increase <= right) != (pair.decrease <= right)) parted.push_back(pair);
    }
    return parted;
}

}  // namespace lacewright
