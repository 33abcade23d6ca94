#include <algorithm>

#include "core/check/culprits.h"

// Cells of rows that fit, but look out of place.
namespace lacewright {
namespace {

constexpr double kOutOfPlace = 0.5;  // log odds from which a row may be shifted
// Log odds that no stitch at the edge of the fabric goes beyond: edges are slipped, knitted or
// purled by a habit of their own.
constexpr double kSelvedge = 5.0;

}  // namespace

std::vector<CulpritSearch::OddCell> CulpritSearch::oddInRow(int row, const Beliefs& beliefs) {
    const RowBeliefs rowBeliefs = beliefs.of(row);
    const auto groups = groupsOf(pathOn(chart_, row, nullptr), chart_.width);
    const auto isSelvedge = [&](int x) {
        return (x == 0 || x + 1 == chart_.width) &&
               groups[static_cast<std::size_t>(x)] == kOutsideRepeats;
    };
    const int y = row - beliefs.grid().firstRow();
    const auto stitchOf = [&](int letter) {
        return alphabet_.stitches[static_cast<std::size_t>(letter)];
    };
    std::vector<OddCell> odd;
    for (int x = 0; x < chart_.width; ++x) {
        const auto drawn = beliefs.grid().at(x, y);
        if (drawn < 0) continue;
        const Stitch& held = (*chart_.stitches)[stitchOf(drawn)];
        OddCell cell{{row, x + 1, kLeastOdd}, kCovered, {}};
        for (int letter = 0; letter < alphabet_.size(); ++letter) {
            const Stitch& other = (*chart_.stitches)[stitchOf(letter)];
            double log = rowBeliefs.of(x)[letter] - rowBeliefs.of(x)[drawn];
            if (letter == drawn) continue;
            if (isSelvedge(x)) log = std::min(log, kSelvedge);
            if (other.takes != held.takes || other.makes != held.makes) continue;
            if (log > cell.cell.weight) cell = {{row, x + 1, log}, stitchOf(letter), {}};
        }
        if (cell.rather != kCovered) odd.push_back(std::move(cell));
    }
    if (rowBeliefs.outOfPlace < kOutOfPlace || cellsForShifts_ < chart_.width) return odd;
    cellsForShifts_ -= chart_.width;
    const RowCase* rowCase = caseOf(row);
    if (rowCase == nullptr || rowCase->shifts().empty()) return odd;
    for (const RowShift& shift : rowCase->shifts()) {
        const double weight =
            shift.logOdds - RowCase::logOfAnySlip(alphabet_.size()) - rowBeliefs.inPlace;
        if (weight > 0) odd.push_back({{row, shift.column, weight}, shift.stitch, shift});
    }
    return odd;
}

std::vector<CulpritSearch::OddCell> CulpritSearch::oddCells() {
    std::vector<OddCell> odd;
    for (int row = 0; row < chart_.height(); ++row) {
        if (involved(row)) continue;
        const Beliefs* beliefs = beliefsAt(row);
        if (beliefs == nullptr) break;
        for (OddCell& cell : oddInRow(row, *beliefs)) odd.push_back(std::move(cell));
    }
    std::stable_sort(odd.begin(), odd.end(), [](const OddCell& a, const OddCell& b) {
        return a.cell.weight > b.cell.weight;
    });
    return odd;
}

}  // namespace lacewright
