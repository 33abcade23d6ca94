#include <algorithm>
#include <cmath>

#include "core/check/culprits.h"
#include "core/check/log_odds.h"
#include "core/check/slips.h"

// Cells of rows that fit, but look out of place.
namespace lacewright {
namespace {

// Log odds that no stitch at the edge of the fabric goes beyond: edges are slipped, knitted or
// purled by a habit of their own.
constexpr double kSelvedge = 5.0;
constexpr double kLeanSwapped = 2.8;  // log odds for a stitch that only leans the other way
constexpr double kShiftsRarer = 3.0;  // log odds against a shift, where no count tells of it

}  // namespace

CulpritSearch::OddCell CulpritSearch::oddCell(int row, int column, int group, bool selvedge,
                                              const Beliefs& beliefs, const float* weights,
                                              const RowMirror& mirror) const {
    const auto drawn = beliefs.grid().at(column - 1, row - beliefs.grid().firstRow());
    OddCell odd{{row, column, kImpossible}, kCovered, {}, kImpossible};
    if (drawn < 0) return odd;
    const auto stitchOf = [&](Alphabet::Letter letter) -> const Stitch& {
        return (*chart_.stitches)[alphabet_.stitchIn(row, letter)];
    };
    double likeliest = kImpossible;
    std::vector<StitchIndex> cells = chart_.row(row).cells();
    const double mirrored = mirror.odds(cells);
    for (int i = 0; i < alphabet_.size(); ++i) {
        const auto letter = static_cast<Alphabet::Letter>(i);
        const GroupMove move{stitchOf(letter).takes - stitchOf(drawn).takes,
                             stitchOf(letter).makes - stitchOf(drawn).makes};
        if (letter == drawn || !ends_.allow(row, group, move)) continue;
        double belief = weights[letter] - weights[drawn];
        cells[static_cast<std::size_t>(column - 1)] = alphabet_.stitchIn(row, letter);
        belief += mirror.odds(cells) - mirrored;
        if (selvedge) belief = std::min(belief, kSelvedge);
        const bool leanSwapped = alphabet_.mirrors[Alphabet::placeOf(letter)] == drawn ||
                                 alphabet_.mirrors[Alphabet::placeOf(drawn)] == letter;
        const double log =
            belief + std::log(slipsIn(alphabet_, letter)) + (leanSwapped ? kLeanSwapped : 0) +
            ends_.closingOdds(row, {{group, move}}) + balance_.odds(row, group, move);
        odd.cell.weight = logAdd(odd.cell.weight, log);
        if (log <= likeliest) continue;
        likeliest = log;
        odd.rather = alphabet_.stitchIn(row, letter);
        odd.sure = move == GroupMove{} ? belief : kImpossible;
    }
    return odd;
}

void CulpritSearch::addShifted(int row, double inPlace, std::vector<OddCell>& odd) {
    const int work = chart_.width * chart_.width;
    if (workForShifts_ < work) return;
    workForShifts_ -= work;
    const RowCase* rowCase = caseOf(row);
    if (rowCase == nullptr) return;
    for (const RowShift& shift : rowCase->shifts()) {
        if (!shift.movesCells) continue;  // an odd cell
        const double evidence = shift.logOdds - logOfAnyShift(alphabet_.size());
        const double log = evidence - kShiftsRarer + ends_.closingOdds(row, shift.moves) +
                           balance_.odds(row, shift.moves);
        if (log < kLeastOdd) break;
        odd.push_back({{row, shift.column, log},
                       shift.stitch,
                       shift,
                       shift.moves.empty() ? evidence - inPlace : kImpossible});
    }
}

std::vector<CulpritSearch::OddCell> CulpritSearch::oddInRow(int row, const Beliefs& beliefs) {
    const RowBeliefs rowBeliefs = beliefs.of(row);
    const auto groups = groupsOf(pathOn(chart_, row, nullptr), chart_.width);
    const RowMirror mirror(*chart_.stitches, alphabet_, groups);
    std::vector<OddCell> odd;
    for (int column = 1; column <= chart_.width; ++column) {
        const int group = groups[static_cast<std::size_t>(column - 1)];
        const bool selvedge = (column == 1 || column == chart_.width) && group == kOutsideRepeats;
        OddCell cell =
            oddCell(row, column, group, selvedge, beliefs, rowBeliefs.of(column - 1), mirror);
        if (cell.cell.weight >= kLeastOdd) odd.push_back(std::move(cell));
    }
    addShifted(row, rowBeliefs.inPlace, odd);
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
