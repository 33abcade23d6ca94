#pragma once

#include <vector>

#include "core/check/testimony.h"

// What each cell ought to hold, judged by the rest of the chart: log odds of every letter.
// Evidence in one currency: how plain the row and its kind of rows are, how frequent a stitch is,
// plain edges, the stitches beside it (a yarn over and its decrease), and the testimony of the
// chart's symmetries (diagonals and repeats of a motif among them). The sum takes the witnesses as
// independent, which they are not: good for ranking cells, too sure as a probability.
namespace lacewright {

// Log weights of all letters for the cells of one row: at [x * letters + letter].
struct RowBeliefs {
    int letters = 0;
    std::vector<float> apart;            // habits alone, the cell itself left out of them
    std::vector<float> asRow;            // habits alone, to compare whole rows with one another
    std::vector<float> all;              // the rest of the row, as drawn, taken into account
    std::vector<Testimony::View> views;  // on the row, of every symmetry
    std::vector<float> asGap;            // by x: log odds for no stitch against one; may be empty
    double inPlace = 0;                  // log odds for the row as a whole, of symmetries it keeps

    const float* of(int x) const { return &all[static_cast<std::size_t>(x * letters)]; }
};

class Beliefs {
 public:
    // The rows around `centreRow`, as many as symmetriesOf can afford.
    Beliefs(const Chart& chart, const Alphabet& alphabet, int centreRow);

    const LetterGrid& grid() const { return grid_; }
    const Alphabet& alphabet() const { return alphabet_; }
    // Rows whose neighbourhood is known well enough to judge them.
    bool covers(int row) const;
    // Requires: grid().holds(row).
    RowBeliefs of(int row) const;
    // Log weight of a row with these letters in place of those drawn, up to a term that is the same
    // for all of them, by the strongest `most` symmetries. Requires: beliefs = of(the row).
    double weightOf(const RowBeliefs& beliefs, const std::vector<Alphabet::Letter>& letters,
                    std::size_t most = kMaxMaps) const;

    // The places a symmetry carries a cell to or from whose letter speaks for `letter`, the
    // strongest symmetry first.
    struct Witness {
        GridPlace place;  // of the grid
        bool mirror = false;
    };
    std::vector<Witness> witnesses(int row, int column, Alphabet::Letter letter) const;

 private:
    void countNeighbours();
    enum class Habits { OfOthers, OfAll };  // the cell itself left out, or taken in
    std::vector<float> habits(int y, Habits of) const;
    void addNeighbours(int y, std::vector<float>& weights) const;
    double pairOdds(std::size_t letter, std::size_t beside, int offset) const {
        const auto count = static_cast<std::size_t>(alphabet_.size());
        return pairOdds_[(static_cast<std::size_t>(offset + kReach) * count + letter) * count +
                         beside];
    }
    // How often `letter` stands `offset` columns to the left of `beside`, the pair left out if it
    // is counted already, against its usual share; a logarithm.
    double besideOdds(std::size_t letter, std::size_t beside, int offset, int leftOut) const;

    static constexpr int kReach = 3;  // columns to either side that count as beside
    const Alphabet& alphabet_;
    int chartHeight_ = 0;
    bool everyRowDrawn_ = true;
    LetterGrid grid_;
    std::vector<Testimony> testimonies_;
    std::vector<int> figuresInRow_;
    std::vector<int> figuresInColumn_;
    std::vector<int> knownInRow_;
    std::vector<double> pairs_;     // [distance - 1][right letter][left letter]
    std::vector<double> pairOdds_;  // besideOdds with nothing left out
};

}  // namespace lacewright
