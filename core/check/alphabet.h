#pragma once

#include <cstdint>
#include <vector>

#include "core/chart/chart.h"

namespace lacewright {

// What a letter is for. Each keeps to symmetries of its own: purl columns run straight up where
// eyelets wander.
enum class LetterKind : std::uint8_t { Ground, Texture, Shaping, Gap };
inline constexpr std::size_t kLetterKinds = 4;

// The stitches of a chart as a few small numbers, for statistics over its cells. Only stitches one
// cell wide take part: those the chart holds, the mirror images of them, and a yarn over, two
// leaning decreases and a double one that could be missing altogether. A cell without a stitch has
// a letter too.
struct Alphabet {
    using Letter = std::int8_t;
    static constexpr Letter kNone = -1;  // wide and covered cells
    static constexpr int kMaxLetters = 16;

    std::vector<StitchIndex> stitches;  // by letter, the most frequent first
    std::vector<Letter> mirrors;        // by letter
    std::vector<bool> centred;          // by letter: a decrease that leans to neither side
    std::vector<LetterKind> kinds;      // by letter
    std::vector<double> counts;    // of each letter, with a few cells as charts usually have them
    std::vector<double> shares;    // of each letter among the figures; for letter 0 of all cells
    std::vector<Letter> letterOf;  // by stitch index
    Letter noStitch = kNone;       // the letter of cells without a stitch, if there are any

    // The ground of the fabric: the most frequent stitch. Every other stitch is a figure.
    static constexpr Letter kGround = 0;

    // Where the lists hold a letter. Requires: letter >= 0.
    static std::size_t placeOf(Letter letter) { return static_cast<unsigned char>(letter); }

    // The share of a letter among the figures but one that is drawn as `without`.
    double shareWithout(Letter letter, Letter without) const;

    // Rows that are mostly purl in a knitted ground, or the other way round: in them the two
    // letters change places, so that plain rows are ground on whichever side they are knitted.
    std::vector<bool> turned;    // by row index
    Letter otherGround = kNone;  // the letter that changes places with the ground
    Letter turnedIn(int row, Letter letter) const {
        if (!turned[static_cast<std::size_t>(row)] || (letter != kGround && letter != otherGround))
            return letter;
        return letter == kGround ? otherGround : kGround;
    }
    Letter letterIn(int row, StitchIndex stitch) const { return turnedIn(row, letterOf[stitch]); }
    StitchIndex stitchIn(int row, Letter letter) const {
        return stitches[placeOf(turnedIn(row, letter))];
    }

    int size() const { return static_cast<int>(stitches.size()); }
};

Alphabet alphabetOf(const Chart& chart);

// Letters of a span of rows, x = column - 1, y = row index - firstRow.
class LetterGrid {
 public:
    LetterGrid(const Chart& chart, const Alphabet& alphabet, int firstRow, int lastRow);

    int width() const { return width_; }
    int height() const { return height_; }
    int firstRow() const { return firstRow_; }
    int lastRow() const { return firstRow_ + height_ - 1; }
    bool holds(int row) const { return row >= firstRow_ && row <= lastRow(); }
    Alphabet::Letter at(int x, int y) const {
        return letters_[static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
                        static_cast<std::size_t>(x)];
    }
    bool isFigure(int x, int y) const {
        return at(x, y) > Alphabet::kGround && at(x, y) != noStitch_;
    }

 private:
    int width_ = 0;
    int height_ = 0;
    int firstRow_ = 0;
    Alphabet::Letter noStitch_ = Alphabet::kNone;
    std::vector<Alphabet::Letter> letters_;
};

}  // namespace lacewright
