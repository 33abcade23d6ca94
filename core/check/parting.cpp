#include "core/check/parting.h"

#include <algorithm>

namespace lacewright {

PairsAcross::PairsAcross(const Chart& chart, int row) : chart_(chart), cells_(chart.row(row)) {}

// Stitches bound off or cast on change the count but have no companion.
bool PairsAcross::allHaveCompanions() {
    if (!allHaveCompanions_) {
        const auto& cells = cells_.cells();
        allHaveCompanions_ = std::none_of(cells.begin(), cells.end(), [&](StitchIndex index) {
            if (index == kCovered) return false;
            const StitchKind kind = (*chart_.stitches)[index].kind;
            return kind == StitchKind::BindOff || kind == StitchKind::CastOn;
        });
    }
    return *allHaveCompanions_;
}

std::vector<CompanionPair> PairsAcross::partedAt(int right) {
    if (right < 1 || right >= chart_.width || !cells_.traits().hasShaping) return {};
    // In a balanced row as many pairs cross a gap as the columns right of it are out of balance.
    if (cells_.total().net() == 0 && cells_.upTo(right).net() == 0 && allHaveCompanions())
        return {};
    if (!pairs_) {
        const Path across{{1, chart_.width, Segment::Part::Plain, -1}};
        pairs_ = companionsOn(cells_, across, *chart_.stitches).pairs;
    }
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
