#pragma once

#include <vector>

#include "core/check/alphabet.h"

// Exact inference over the cells of one row that are counted together. Each cell may have been
// meant to hold another letter, at certain odds; every set of changes that moves what the row takes
// and makes by a given amount is weighed, none is left out. Dynamic programming over cells x loops
// taken x loops made: cells x changes x (2 reach + 1)^2 steps.
namespace lacewright {

// Another letter for a cell, with the difference it makes and its odds against the drawn one.
struct Alternative {
    Alphabet::Letter letter = 0;
    int takes = 0;
    int makes = 0;
    double odds = 0;
    double alone = 1;  // times as likely where it is the only change of the row
};

struct CellAlternatives {
    int column = 1;
    std::vector<Alternative> others;  // those that change a count
};

struct LetterChange {
    int column = 1;
    Alphabet::Letter letter = 0;
    bool operator==(const LetterChange&) const = default;
};

// Changes that together have the wanted effect, and their odds as a logarithm.
struct LetterRepair {
    std::vector<LetterChange> changes;  // by column
    double logOdds = 0;
};

class RowOdds {
 public:
    // `reach`: the largest change of either count that is looked at, in loops.
    RowOdds(std::vector<CellAlternatives> cells, int reach);

    int reach() const { return reach_; }
    // Logarithm of the summed odds of all sets of changes with this effect; the drawn row has odds
    // 1. Minus infinity when no set has it. Requires: both within the reach.
    double logSum(int takes, int makes) const;
    // For every cell, the share of those sets that change it. Order of the cells given.
    std::vector<double> shares(int takes, int makes) const;
    // The likeliest sets, at most `count`, no two alike.
    std::vector<LetterRepair> best(int takes, int makes, std::size_t count) const;
    const std::vector<CellAlternatives>& cells() const { return cells_; }

 private:
    // Weights over (change of takes, change of makes), with a common factor taken out.
    using Layer = std::vector<double>;
    struct Layers {
        std::vector<Layer> from;        // from[i]: what the cells before i do together
        std::vector<Layer> to;          // to[i]: what the cells from i on do together
        std::vector<double> fromScale;  // logarithms of the factors
        std::vector<double> toScale;
    };
    enum class Combine { Sum, Best };
    // Changes that have the effect by themselves.
    struct Single {
        std::size_t cell = 0;
        const Alternative* other = nullptr;
    };
    std::vector<Single> singles(int takes, int makes) const;
    double logOfSets(int takes, int makes) const;
    Layers layersOf(Combine combine) const;
    Layer step(const Layer& layer, const CellAlternatives& cell, Combine combine) const;
    bool within(int takes, int makes) const;
    std::size_t slot(int takes, int makes) const;
    double valueAt(const Layer& layer, int takes, int makes) const;
    void traceBack(const std::vector<Layer>& layers, bool down, std::size_t i, int takes, int makes,
                   std::vector<LetterChange>& changes) const;

    std::vector<CellAlternatives> cells_;
    int reach_;
    Layers sums_;
    Layers bests_;
};

}  // namespace lacewright
