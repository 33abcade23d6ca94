#pragma once

#include <vector>

#include "core/check/overlay.h"
#include "core/check/symmetry.h"

namespace lacewright {

// What one symmetry of a chart says about the cells of a row: each by the letter of its image. How
// far it is to be believed is learnt from the other rows alone, so that no row vouches for itself.
// A symmetry holds for a pair of rows or not at all: where the rest of a row has nothing to do with
// its image, what the image says about one more cell counts for nothing.
class Testimony {
 public:
    // Requires: grid and alphabet outlive it.
    Testimony(const LetterGrid& grid, const Alphabet& alphabet, SymmetryMap map);

    const SymmetryMap& map() const { return map_; }
    // What is known about row `y` from the others.
    struct View {
        std::vector<float> odds;  // log P(image v | cell z) / P(v), at [v * letters + z]
        double holds = 0;         // how often the symmetry holds for a pair of rows
        // By x: the letter in another row that the cell is carried to, and comes from; or, where
        // the symmetry stays within the row, the x it is carried to and comes from. kNone or -1:
        // nowhere. Nothing comes from where it is carried to: that is the same witness.
        std::vector<Alphabet::Letter> images, origins;
        std::vector<int> to, from;
    };
    View viewOn(int y) const;
    // Adds log odds for every letter of every cell of row `y` of the grid, the other cells as
    // drawn, at [x * letters + letter]. Requires here and below: view = viewOn(y).
    void addTo(int y, const View& view, std::vector<float>& weights) const;
    // Log odds of the row with these letters in place of those drawn.
    double weightOf(const View& view, const std::vector<Alphabet::Letter>& letters) const;

 private:
    std::size_t at(Alphabet::Letter image, Alphabet::Letter cell) const;
    int originRow(int y) const;
    Overlay overlayOf(int y) const;
    double agreement(int y, const std::vector<float>& odds) const;
    std::vector<Alphabet::Letter> lettersOf(int y) const;
    double sumFromRow(const View& view, const std::vector<Alphabet::Letter>& others,
                      const std::vector<Alphabet::Letter>& letters) const;
    double pairOdds(const View& view, Alphabet::Letter image, Alphabet::Letter cell) const;
    double cellWithinRow(const View& view, const std::vector<Alphabet::Letter>& letters,
                         std::size_t x, Alphabet::Letter cell) const;
    double sumWithinRow(const View& view, const std::vector<Alphabet::Letter>& letters) const;
    void addFromRow(const std::vector<Alphabet::Letter>& drawn,
                    const std::vector<Alphabet::Letter>& others, const View& view,
                    std::vector<float>& weights) const;
    void addWithinRow(const std::vector<Alphabet::Letter>& drawn, const View& view,
                      std::vector<float>& weights) const;

    const LetterGrid& grid_;
    const Alphabet& alphabet_;
    SymmetryMap map_;
    bool bothEnds_;                  // within a row every pair is seen from both of its ends
    std::vector<Overlay> overlays_;  // by the row that is carried; without figures: empty
    std::vector<double> holds_;      // how well the map holds for each of them
};

}  // namespace lacewright
