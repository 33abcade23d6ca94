#include "core/check/parting.h"

#include <algorithm>

namespace lacewright {

PairsAcross::PairsAcross(const Chart& chart, int row) : chart_(chart), cells_(chart.row(row)) {}

Path PairsAcross::across() const {
    return {{1, chart_.width, Segment::Part::Plain, -1}};
}

// As many pairs cross a gap as the columns right of it are out of balance, orphans left out.
bool PairsAcross::nonePartedAt(int right) {
    if (!allHaveCompanions(cells_)) return false;
    const auto net = cells_.upTo(right).net();
    if (cells_.total().net() == 0) return net == 0;
    if (!orphans_) orphans_ = orphansOn(cells_, across(), *chart_.stitches);
    const auto left = std::upper_bound(orphans_->begin(), orphans_->end(), right);
    const int sign = cells_.total().net() > 0 ? 1 : -1;
    return net == sign * (left - orphans_->begin());
}

std::vector<CompanionPair> PairsAcross::partedAt(int right) {
    if (right < 1 || right >= chart_.width || !cells_.traits().hasShaping) return {};
    if (nonePartedAt(right)) return {};
    if (!pairs_) pairs_ = companionsOn(cells_, across(), *chart_.stitches).pairs;
    std::vector<CompanionPair> parted;
    for (const CompanionPair& pair : *pairs_) {
        if ((pair.increase <= right) != (pair.decrease <= right)) parted.push_back(pair);
    }
    return parted;
}

bool isSubstituted(const Size& size, int row, Edge edge, const CompanionPair& pair) {
    return std::any_of(size.substitutions.begin(), size.substitutions.end(),
                       [&](const Substitution& other) {
                           return other.row == row && other.edge == edge &&
                                  (other.column == pair.increase || other.column == pair.decrease);
                       });
}

}  // namespace lacewright
